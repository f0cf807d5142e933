import { describe, expect, it } from "vitest";
import { findRootNear } from "./find-root-near.ts";

describe("root near a guess", () => {
  it("finds roots known in closed form, and leaves the next search little to do", () => {
    const guess = { at: 2, slope: 3 };
    expect(findRootNear((x) => Math.exp(x) - 10, guess, -5, 5, 1e-12)).toBeCloseTo(Math.LN10, 12);
    let count = 0;
    const f = (x: number) => {
      count++;
      return Math.exp(x) - 10.1;
    };
    expect(findRootNear(f, guess, -5, 5, 1e-9)).toBeCloseTo(Math.log(10.1), 9);
    expect(count).toBeLessThanOrEqual(4);
    count = 0;
    findRootNear(f, guess, -5, 5, 1e-9);
    expect(count).toBe(1);
  });

  it("evaluates at the root last, so that what the function sets stands", () => {
    let last = Number.NaN;
    const root = findRootNear(
      (x) => {
        last = x;
        return x ** 3 - 8;
      },
      { at: 3, slope: 20 },
      0,
      10,
      1e-9,
    );
    expect(root).toBe(last);
    expect(root).toBeCloseTo(2, 8);
  });

  it("gives no number where the function runs the other way, has no root, or the guess is none", () => {
    expect(findRootNear((x) => 4 - x * x, { at: 1.8, slope: 4 }, 0, 5, 1e-9)).toBeNaN();
    expect(findRootNear((x) => x * x + 1, { at: 1, slope: 2 }, 0, 5, 1e-9)).toBeNaN();
    expect(findRootNear((x) => x, { at: 7, slope: 1 }, 0, 5, 1e-9)).toBeNaN();
    expect(findRootNear((x) => x, { at: Number.NaN, slope: 1 }, 0, 5, 1e-9)).toBeNaN();
    expect(findRootNear((x) => x, { at: 1, slope: 0 }, 0, 5, 1e-9)).toBeNaN();
  });

  it("does not leave its ends", () => {
    const seen: number[] = [];
    const f = (x: number) => {
      seen.push(x);
      return Math.exp(x) - 2;
    };
    expect(findRootNear(f, { at: 2, slope: 0.5 }, 0.5, 5, 1e-10)).toBeCloseTo(Math.LN2, 9);
    expect(Math.min(...seen)).toBe(0.5);
  });
});
