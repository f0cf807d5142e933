import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { interpolate, monotoneTable } from "./interpolate.ts";

const rising = fc
  .array(
    fc.record({ dx: fc.double({ min: 0.01, max: 5, noNaN: true }), dy: fc.double({ min: 0, max: 10, noNaN: true }) }),
    { minLength: 2, maxLength: 20 },
  )
  .map((steps) => {
    let x = 0;
    let y = 0;
    return steps.map(({ dx, dy }) => {
      x += dx;
      y += dy;
      return [x, y] as const;
    });
  });

describe("monotone table", () => {
  it("passes through its entries and never turns where they rise", () => {
    fc.assert(
      fc.property(rising, (pairs) => {
        const table = monotoneTable(
          pairs.map(([x]) => x),
          pairs.map(([, y]) => y),
        );
        for (const [x, y] of pairs) expect(Math.abs(interpolate(table, x) - y)).toBeLessThan(1e-9);
        const [start] = pairs[0]!;
        const [end] = pairs.at(-1)!;
        let before = interpolate(table, start);
        for (let i = 1; i <= 200; i++) {
          const value = interpolate(table, start + ((end - start) * i) / 200);
          expect(value).toBeGreaterThanOrEqual(before - 1e-9);
          before = value;
        }
      }),
      { numRuns: 60 },
    );
  });

  it("is exact for a straight line and close for a smooth curve", () => {
    const x = [0, 0.7, 1, 2.2, 3];
    const line = monotoneTable(
      x,
      x.map((each) => 4 - 2 * each),
    );
    expect(interpolate(line, 1.5)).toBeCloseTo(1, 12);
    const knots = Array.from({ length: 11 }, (_, i) => i / 10);
    const curve = monotoneTable(knots, knots.map(Math.exp));
    // Cubic pieces of width 0.1 with second-order slopes: h² / 12 times the third derivative, 2e-3, bounds the error amply.
    for (let v = 0; v <= 1; v += 0.013) expect(Math.abs(interpolate(curve, v) - Math.exp(v))).toBeLessThan(1e-3);
  });

  it("holds its end values outside and keeps two pairs straight", () => {
    const table = monotoneTable([0, 2], [1, 5]);
    expect([interpolate(table, -1), interpolate(table, 0.5), interpolate(table, 3)]).toEqual([1, 2, 5]);
  });

  it("refuses tables that are none", () => {
    expect(() => monotoneTable([0], [1])).toThrow(/at least two/);
    expect(() => monotoneTable([0, 1], [1])).toThrow(/2 arguments but 1 values/);
    expect(() => monotoneTable([0, 0], [1, 2])).toThrow(/does not rise/);
    expect(() => monotoneTable([0, 1], [1, Number.NaN])).toThrow(/pair 2/);
  });
});
