import { describe, expect, it } from "vitest";
import { createQuasiNewton, quasiNewtonStep } from "./quasi-newton.ts";

describe("quasi-Newton steps", () => {
  it("solve linear equations in one step when the slopes are right", () => {
    // 2x + y = 5, x − 3y = −1: x = 2, y = 1.
    const state = createQuasiNewton(2);
    state.slopes.set([2, 1, 1, -3]);
    expect(quasiNewtonStep(state, [-5, 1], 100)).toBe(true);
    expect(state.at[0]).toBeCloseTo(2, 14);
    expect(state.at[1]).toBeCloseTo(1, 14);
  });

  it("solve curved equations from slopes that are somewhat wrong, faster and faster", () => {
    // x² + y² = 25 and x y = 12: x = 4, y = 3.
    const state = createQuasiNewton(2);
    state.at.set([4.3, 2.6]);
    state.slopes.set([9, 5, 2.5, 4.5]);
    const misses: number[] = [];
    for (let k = 0; k < 12; k++) {
      const [x, y] = state.at as unknown as [number, number];
      const value = [x * x + y * y - 25, x * y - 12];
      misses.push(Math.max(...value.map(Math.abs)));
      if ((misses.at(-1) as number) < 1e-12) break;
      expect(quasiNewtonStep(state, value, 1)).toBe(true);
    }
    expect(state.at[0]).toBeCloseTo(4, 11);
    expect(state.at[1]).toBeCloseTo(3, 11);
    expect(misses.length).toBeLessThan(11);
  });

  it("shorten a step that is too long, and move nothing when the slopes say nothing", () => {
    const state = createQuasiNewton(2);
    state.slopes.set([1, 0, 0, 1]);
    quasiNewtonStep(state, [-30, -10], 3);
    expect([...state.at]).toEqual([3, 1]);
    const flat = createQuasiNewton(2);
    flat.slopes.set([1, 2, 2, 4]);
    expect(quasiNewtonStep(flat, [1, 1], 3)).toBe(false);
    expect([...flat.at]).toEqual([0, 0]);
  });
});
