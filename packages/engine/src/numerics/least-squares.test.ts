import { lusolve, multiply, transpose } from "mathjs";
import { describe, expect, it } from "vitest";
import { leastSquares } from "./least-squares.ts";

describe("least squares", () => {
  // A straight problem has its answer in the normal equations, which a general library solves.
  it("is that of the normal equations where the residuals are straight", () => {
    const a = [
      [1, 2],
      [2, -1],
      [0.5, 3],
      [4, 1],
    ];
    const b = [3, 1, 4, 2];
    const fit = leastSquares((v) => a.map((row, i) => row[0]! * v[0]! + row[1]! * v[1]! - b[i]!), [0, 0], 1e-4);
    const want = lusolve(multiply(transpose(a), a), multiply(transpose(a), b)) as unknown as number[][];
    expect(fit.converged).toBe(true);
    expect(fit.values[0]).toBeCloseTo(want[0]![0]!, 8);
    expect(fit.values[1]).toBeCloseTo(want[1]![0]!, 8);
  });

  // Rosenbrock's valley as residuals: least at (1, 1) by its definition.
  it("finds the end of a bent valley", () => {
    const fit = leastSquares(([x = 0, y = 0]) => [10 * (y - x * x), 1 - x], [-1.2, 1], 1e-5);
    expect(fit.values[0]).toBeCloseTo(1, 6);
    expect(fit.values[1]).toBeCloseTo(1, 6);
  });

  it("says when the values are not told apart", () => {
    expect(leastSquares(([a = 0, b = 0]) => [a + b - 1, 2 * a + 2 * b - 3], [0, 0], 1e-4).inverse).toBeUndefined();
  });
});
