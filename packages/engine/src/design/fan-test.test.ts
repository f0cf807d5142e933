import { describe, expect, it } from "vitest";
import cases from "../../../../reference/cases/fans.json" with { type: "json" };
import { type FanTest, reduceFanTest } from "./fan-test.ts";
import type { FanTestRow } from "./fan-test-row.ts";

/** The published field supply fan of Englander and Norford (1992), 12 points; wheel and speed of it are ours. */
const published = cases.fan_curves.curves.EnglanderNorford1992;
const diameter = 1.5;

function rowsAt(speed: number, density: number, firstLine: number): FanTestRow[] {
  const [n, r] = [speed / 15, density / 1.2];
  return published.map((point, index) => ({
    line: firstLine + index,
    flow: point.V_m3_s * n,
    pressure: point.dp_Pa * r * n ** 2,
    shaftPower: point.P_W * r * n ** 3,
    speed,
    density,
  }));
}

function testOf(
  rows: readonly FanTestRow[],
  ...more: Parameters<typeof reduceFanTest> extends [unknown, unknown, ...infer R] ? R : never
): FanTest {
  const found = reduceFanTest(rows, diameter, ...more);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.test;
}

function problemsOf(rows: readonly FanTestRow[]) {
  const found = reduceFanTest(rows, diameter);
  if (found.ok) throw new Error("the table was taken");
  return found.problems;
}

const rows = rowsAt(15, 1.2, 2);
const changed = (index: number, change: Partial<FanTestRow>) =>
  rows.map((row, at) => (at === index ? { ...row, ...change } : row));

describe("a fan test", () => {
  it("becomes a curve with the published efficiencies, and no point stands out", () => {
    const test = testOf(rows);
    expect(test.points).toHaveLength(12);
    expect(test.tested.filter((point) => point.outlier !== "")).toEqual([]);
    // Efficiency does not depend on the wheel; beside the published figures it stands with four digits.
    test.points.forEach((point, index) => {
      expect((point.flow * point.pressure) / point.power).toBeCloseTo(published[index]!.eta, 3);
    });
    expect(test.curve.bestEfficiency).toBeGreaterThan(0.74);
    // The pressure falls from the first point on: the smallest tested flow is all that is known to be steady.
    expect(test.stableFrom).toBe("first point");
  });

  it("gives the same curve from several speeds and densities that obey the fan laws", () => {
    const test = testOf([...rows, ...rowsAt(12, 1.05, 20), ...rowsAt(9, 1.2, 40)]);
    const alone = testOf(rows);
    expect(test.scatter).toHaveLength(2);
    for (const each of test.scatter) {
      expect(Math.abs(each.pressureFarthest)).toBeLessThan(1e-9);
      expect(Math.abs(each.powerFarthest)).toBeLessThan(1e-9);
      expect(each.points).toBeGreaterThanOrEqual(10);
    }
    expect(test.points).toHaveLength(12);
    test.points.forEach((point, index) => {
      expect(point.flow).toBeCloseTo(alone.points[index]!.flow, 9);
      expect(point.power).toBeCloseTo(alone.points[index]!.power, 9);
    });
  });

  it("tells the scatter of a speed that does not obey them", () => {
    const weak = rowsAt(12, 1.2, 20).map((row) => ({ ...row, pressure: 0.96 * row.pressure }));
    const [scatter] = testOf([...rows, ...weak.slice(0, 10)]).scatter;
    // 4 % less where pressure is at its peak, less of the peak elsewhere.
    expect(scatter!.pressureFarthest).toBeGreaterThan(-0.0401);
    expect(scatter!.pressureFarthest).toBeLessThan(-0.038);
    expect(scatter!.pressure).toBeLessThan(0.04);
    expect(scatter!.power).toBeLessThan(1e-9);
  });

  it("marks a reading that departs from its neighbours, and that one alone", () => {
    const test = testOf(changed(5, { shaftPower: 1.15 * rows[5]!.shaftPower }));
    const marked = test.tested.filter((point) => point.outlier !== "");
    expect(marked.map((point) => point.line)).toEqual([7]);
    expect(marked[0]!.outlier).toMatch(/^power \+1\d\.\d % of its peak/);
  });

  it("takes the outlet's velocity pressure off a total pressure", () => {
    const outletArea = 2;
    const total = rows.map((row) => ({ ...row, pressure: row.pressure + 0.6 * (row.flow / outletArea) ** 2 }));
    const test = testOf(total, { is: "total", outletArea });
    testOf(rows).points.forEach((point, index) => {
      expect(test.points[index]!.pressure).toBeCloseTo(point.pressure, 9);
    });
  });
});

describe("a fan test that no fan has done", () => {
  const swapped = [...rows];
  [swapped[3], swapped[6]] = [swapped[6]!, swapped[3]!];
  // The slow speed begins at less flow than the fast one: the second row is the first that can be compared.
  // The rows of the slow speed written down as those of a fast one, and the other way round.
  const slow = rowsAt(12, 1.2, 20);
  const crossing = [...slow.map((row) => ({ ...row, speed: 15 })), ...rows.map((row) => ({ ...row, speed: 12 }))];
  it.each([
    ["a single point", rows.slice(0, 1), /a single point/, 2],
    ["negative power", changed(4, { shaftPower: -100 }), /power is not above 0/, 6],
    ["negative flow", changed(0, { flow: -1 }), /negative flow/, 2],
    ["more air power than shaft power", changed(4, { shaftPower: 15_000 }), /18\d %: more air power/, 6],
    ["flow that turns around", swapped, /flow turns around.*900 rpm/, 6],
    ["crossing curves", crossing, /curves cross/, 21],
    [
      "pressure in the unit of another column",
      rows.map((row) => ({ ...row, pressure: row.pressure / 249 })),
      /best static efficiency|highest pressure/,
      2,
    ],
    ["a system crossed twice", changed(2, { pressure: 100 }), /rises faster than the square/, 5],
    ["air that is none", changed(1, { density: 12 }), /density/, 3],
  ])("is refused for %s, with its line", (_, table, words, line) => {
    const problems = problemsOf(table);
    const found = problems.find((each) => words.test(each.problem));
    expect(found, JSON.stringify(problems)).toBeDefined();
    expect(found!.needed).not.toBe("");
    expect(found!.line).toBe(line);
  });
});
