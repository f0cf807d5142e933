import { flowCoefficientFromFlow, tipSpeedFromSpeed } from "#component/fan-performance";
import { interpolate, monotoneTable } from "#numerics/interpolate";
import type { FanTestProblem, FanTestRow } from "./fan-test-row.ts";

/** Rows tested at one speed, in rising flow. */
export interface SpeedGroup {
  /** rev/s, mean. */
  readonly speed: number;
  readonly rows: readonly FanTestRow[];
  /** The first line at which the flow turns around; undefined when it only rises or only falls. */
  readonly turns: number | undefined;
}

/** Speeds so near one another are one nominal speed. */
const sameSpeed = 0.02;

/** Rows put together by their speed, slowest first. */
export function groupSpeeds(rows: readonly FanTestRow[]): readonly SpeedGroup[] {
  const found: FanTestRow[][] = [];
  for (const row of rows) {
    const group = found.find((each) => Math.abs(row.speed / each[0]!.speed - 1) <= sameSpeed);
    if (group === undefined) found.push([row]);
    else group.push(row);
  }
  return found
    .map((group) => ({
      speed: group.reduce((sum, row) => sum + row.speed, 0) / group.length,
      rows: group.toSorted((one, other) => one.flow - other.flow),
      turns: turnOf(group),
    }))
    .sort((one, other) => one.speed - other.speed);
}

/** Line of the first row that breaks the direction in which the flow goes, or repeats a flow. */
function turnOf(rows: readonly FanTestRow[]): number | undefined {
  const steps = rows.slice(1).map((row, index) => Math.sign(row.flow - rows[index]!.flow));
  const rising = steps.filter((step) => step > 0).length >= steps.length / 2;
  const odd = steps.findIndex((step) => step !== (rising ? 1 : -1));
  return odd === -1 ? undefined : rows[odd + 1]!.line;
}

/** Most efficient fans there are; over 1 would be more air power than shaft power. */
const highestEfficiency = 0.92;
const fewestPoints = 4;

/** Everything about the table that no fan could have done, by line. */
export function shapeProblems(
  rows: readonly FanTestRow[],
  groups: readonly SpeedGroup[],
  diameter: number,
): readonly FanTestProblem[] {
  if (rows.length < fewestPoints) return [tooFew(rows)];
  const single = rows.flatMap(rowProblems);
  if (single.length > 0) return single;
  const shapes = groups.flatMap(groupProblems);
  if (shapes.length > 0) return shapes;
  const sizes = sizeProblems(rows, diameter);
  return sizes.length > 0 ? sizes : crossings(groups);
}

function tooFew(rows: readonly FanTestRow[]): FanTestProblem {
  return {
    line: rows[rows.length - 1]?.line ?? 1,
    problem: `${rows.length === 0 ? "no point" : rows.length === 1 ? "a single point" : `${rows.length} points`} of test`,
    needed: `${fewestPoints} points or more, from near no flow to near no pressure`,
  };
}

function rowProblems(row: FanTestRow): readonly FanTestProblem[] {
  const say = (problem: string, needed: string) => [{ line: row.line, problem, needed }];
  if (!(row.speed > 0)) return say("the speed is not above 0", "the speed of the wheel");
  if (!(row.density > 0.3 && row.density < 2)) {
    return say(`an air density of ${row.density.toPrecision(3)} kg/m³`, "0.3 to 2 kg/m³ (0.019 to 0.125 lb/ft³)");
  }
  if (!(row.flow >= 0)) return say("negative flow", "the actual airflow at the fan's inlet, 0 or more");
  if (!(row.pressure >= 0)) {
    return say("negative static pressure", "points up to free delivery only; with total pressure, the right outlet");
  }
  if (!(row.shaftPower > 0)) return say("shaft power is not above 0", "power at the fan's shaft, more than 0");
  const efficiency = (row.flow * row.pressure) / row.shaftPower;
  if (efficiency > highestEfficiency) {
    const share = `static efficiency would be ${(100 * efficiency).toFixed(0)} %`;
    return say(
      efficiency > 1 ? `${share}: more air power than shaft power` : `${share}: more than any fan has`,
      "the right units of flow, pressure and power, and power at the shaft",
    );
  }
  return [];
}

function groupProblems({ rows, turns, speed }: SpeedGroup): readonly FanTestProblem[] {
  if (turns !== undefined) {
    return [
      {
        line: turns,
        problem: `flow turns around or repeats at ${rpm(speed)}`,
        needed: "the rows of a speed in rising, or in falling flow, each flow once",
      },
    ];
  }
  return rows.slice(1).flatMap((row, index) => {
    const before = rows[index]!;
    const perFlow = (each: FanTestRow) => each.pressure / (each.density * each.flow ** 2);
    if (before.flow === 0 || perFlow(row) < perFlow(before)) return [];
    return [
      {
        line: row.line,
        problem: "pressure rises faster than the square of flow: one system would cross this curve twice",
        needed: "a reading of flow and pressure taken at the same time",
      },
    ];
  });
}

/** Figures without dimension far from any centrifugal fan's: units or diameter are wrong. */
function sizeProblems(rows: readonly FanTestRow[], diameter: number): readonly FanTestProblem[] {
  const largest = (of: (row: FanTestRow) => number) =>
    rows.reduce((best, row) => (of(row) > of(best) ? row : best), rows[0]!);
  const pressure = (row: FanTestRow) =>
    (2 * row.pressure) / (row.density * tipSpeedFromSpeed(diameter, row.speed) ** 2);
  const flow = (row: FanTestRow) => flowCoefficientFromFlow(row.flow, diameter, row.speed);
  const efficiency = (row: FanTestRow) => (row.flow * row.pressure) / row.shaftPower;
  const checks = [
    ["highest pressure over ρu²/2 (u the tip speed)", pressure, 0.1, 3.5],
    ["largest flow over πD²u/4", flow, 0.03, 2],
    ["best static efficiency", efficiency, 0.15, 1],
  ] as const;
  return checks.flatMap(([words, of, low, high]) => {
    const row = largest(of);
    const value = of(row);
    if (value >= low && value <= high) return [];
    return [
      {
        line: row.line,
        problem: `${words} comes to ${value.toPrecision(3)}, where centrifugal fans have ${low} to ${high}`,
        needed: "the right units of flow, pressure, power and speed, and the diameter of the wheel tested",
      },
    ];
  });
}

/** A faster wheel gives more pressure at every flow; more than a hundredth of the peak less is a crossing. */
function crossings(groups: readonly SpeedGroup[]): readonly FanTestProblem[] {
  return groups.slice(1).flatMap((fast, index) => {
    const slow = groups[index]!;
    if (slow.rows.length < 2) return [];
    const perDensity = (row: FanTestRow) => row.pressure / row.density;
    const table = monotoneTable(
      slow.rows.map((row) => row.flow),
      slow.rows.map(perDensity),
    );
    const margin = 0.01 * Math.max(...slow.rows.map(perDensity));
    const [first, last] = [table.x[0]!, table.x[table.x.length - 1]!];
    const crossed = fast.rows.find(
      (row) => row.flow >= first && row.flow <= last && perDensity(row) < interpolate(table, row.flow) - margin,
    );
    if (crossed === undefined) return [];
    return [
      {
        line: crossed.line,
        problem: `less pressure at ${rpm(fast.speed)} than at ${rpm(slow.speed)} for the same flow: the curves cross`,
        needed: "each row beside its own speed; a faster wheel gives more at every flow",
      },
    ];
  });
}

function rpm(speed: number): string {
  return `${(60 * speed).toFixed(0)} rpm`;
}
