import { type FanCurve, type FanCurvePoint, fanCurveFromPoints } from "#component/fan-curve";
import { flowCoefficientFromFlow, tipSpeedFromSpeed } from "#component/fan-performance";
import type { FanTestPoint, FanTestProblem, FanTestRow } from "./fan-test-row.ts";
import { type FanTestScatter, markOutliers, scatterOf } from "./fan-test-scatter.ts";
import { groupSpeeds, type SpeedGroup, shapeProblems } from "./fan-test-shape.ts";

/** A test brought to one curve. */
export interface FanTest {
  readonly diameter: number;
  /** rev/s and kg/m³ to which the curve's points are brought: those of the speed with the most points. */
  readonly speed: number;
  readonly density: number;
  readonly tested: readonly FanTestPoint[];
  /** Points of the curve: tested points of nearly the same flow coefficient are one, their mean. */
  readonly points: readonly FanCurvePoint[];
  readonly curve: FanCurve;
  /** Smallest steady flow over flow at best efficiency, and what it rests on. */
  readonly stableShare: number;
  readonly stableFrom: "peak pressure" | "first point";
  /** How far other speeds lie from the one with the most points; empty with one speed. */
  readonly scatter: readonly FanTestScatter[];
}

/** What a test came to. */
export type FanTestReduction =
  | { readonly ok: true; readonly test: FanTest }
  | { readonly ok: false; readonly problems: readonly FanTestProblem[] };

/** What the table's pressure column holds; total pressure needs the area of the outlet (m²) to take off its velocity's. */
export type TestedPressure = { readonly is: "static" } | { readonly is: "total"; readonly outletArea: number };

/**
 * Brings a test table to one curve without dimension by the fan laws, after looking at the shape of every speed. Whatever
 * contradicts itself is refused with its line; points that merely stand out are marked and kept.
 */
export function reduceFanTest(
  rows: readonly FanTestRow[],
  diameter: number,
  pressure: TestedPressure = { is: "static" },
): FanTestReduction {
  const statics = pressure.is === "static" ? rows : rows.map((row) => withStatic(row, pressure.outletArea));
  const groups = groupSpeeds(statics);
  const problems = shapeProblems(statics, groups, diameter);
  const reference = groups.reduce<SpeedGroup | undefined>(
    (best, each) => (isBetter(each, best) ? each : best),
    undefined,
  );
  if (problems.length > 0 || reference === undefined) return { ok: false, problems };
  const all = groups.flatMap((group) => group.rows.map((row) => withoutDimension(row, diameter, group.speed)));
  const tested = markOutliers(all.toSorted((one, other) => one.flow - other.flow));
  const points = meanPoints(tested);
  const built = buildCurve(points, tested);
  if ("problem" in built) return { ok: false, problems: [built] };
  const density = reference.rows.reduce((sum, row) => sum + row.density, 0) / reference.rows.length;
  return {
    ok: true,
    test: {
      diameter,
      speed: reference.speed,
      density,
      tested,
      points,
      ...built,
      scatter: scatterOf(tested, reference.speed),
    },
  };
}

function isBetter(group: SpeedGroup, best: SpeedGroup | undefined): boolean {
  if (best === undefined || group.rows.length !== best.rows.length) return group.rows.length > (best?.rows.length ?? 0);
  return group.speed > best.speed;
}

function withStatic(row: FanTestRow, outletArea: number): FanTestRow {
  return { ...row, pressure: row.pressure - 0.5 * row.density * (row.flow / outletArea) ** 2 };
}

/** Each row by its own speed, so that small departures from the nominal one do no harm. */
function withoutDimension(row: FanTestRow, diameter: number, groupSpeed: number): FanTestPoint {
  const tip = tipSpeedFromSpeed(diameter, row.speed);
  const disc = 0.25 * Math.PI * diameter ** 2;
  return {
    line: row.line,
    speed: groupSpeed,
    outlier: "",
    flow: flowCoefficientFromFlow(row.flow, diameter, row.speed),
    pressure: Math.max(0, (2 * row.pressure) / (row.density * tip ** 2)),
    power: (2 * row.shaftPower) / (row.density * tip ** 3 * disc),
  };
}

/** Share of the largest flow within which tested points are one point of the curve. */
const sameFlow = 0.02;

function meanPoints(tested: readonly FanTestPoint[]): readonly FanCurvePoint[] {
  const width = sameFlow * tested[tested.length - 1]!.flow;
  const clusters: FanTestPoint[][] = [];
  for (const point of tested) {
    const last = clusters[clusters.length - 1];
    if (last !== undefined && point.flow - last[0]!.flow <= width) last.push(point);
    else clusters.push([point]);
  }
  const mean = (cluster: readonly FanTestPoint[], of: (point: FanTestPoint) => number) =>
    cluster.reduce((sum, point) => sum + of(point), 0) / cluster.length;
  return clusters.map((cluster) => ({
    flow: mean(cluster, (point) => point.flow),
    pressure: mean(cluster, (point) => point.pressure),
    power: mean(cluster, (point) => point.power),
  }));
}

/** Loss of a standing wheel while the curve is only looked at; the record has its own. */
const anyStoppedLoss = 10;

function buildCurve(
  points: readonly FanCurvePoint[],
  tested: readonly FanTestPoint[],
): Pick<FanTest, "curve" | "stableShare" | "stableFrom"> | FanTestProblem {
  try {
    const curve = fanCurveFromPoints(points, 0, anyStoppedLoss);
    const hasPeak = curve.peakPressureFlow > points[0]!.flow;
    const stable = hasPeak ? curve.peakPressureFlow : points[0]!.flow;
    const stableShare = Math.min(1, Math.max(0.1, stable / curve.bestFlow));
    return { curve, stableShare, stableFrom: hasPeak ? "peak pressure" : "first point" };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const place = Number(/^point (\d+)/.exec(error.message)?.[1] ?? points.length);
    const flow = points[place - 1]?.flow ?? 0;
    const nearest = tested.toSorted((one, other) => Math.abs(one.flow - flow) - Math.abs(other.flow - flow))[0]!;
    return {
      line: nearest.line,
      problem: `all speeds together: ${error.message.replace(/^point \d+: /, "")}`,
      needed: "speeds that agree by the fan laws; test the odd one again or leave it out",
    };
  }
}
