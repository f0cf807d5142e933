import type { ChartState, PsychrometricFrame } from "./psychrometric-frame.ts";

/** `pieces` + 1 numbers from `low` to `high`, evenly spaced. */
export function samples(low: number, high: number, pieces: number): readonly number[] {
  return Array.from({ length: pieces + 1 }, (_, index) => low + ((high - low) * index) / pieces);
}

/** True when a state lies on the plane of the chart. */
export function isShown(frame: PsychrometricFrame, state: ChartState): boolean {
  return (
    state.humidityRatio >= 0 &&
    state.humidityRatio <= frame.wettest * (1 + 1e-9) &&
    state.dryBulb >= frame.coldest - 1e-9 &&
    state.dryBulb <= frame.warmest + 1e-9
  );
}

/** The points of a curve on the page, cut where the curve leaves the plane of the chart. */
export function pointsInside(frame: PsychrometricFrame, states: readonly ChartState[]): readonly number[] {
  const inside = (state: ChartState) => isShown(frame, state);
  const kept: ChartState[] = [];
  for (let index = 0; index < states.length; index += 1) {
    const state = states[index]!;
    const before = states[index - 1];
    if (before !== undefined && inside(state) !== inside(before)) kept.push(crossing(before, state, inside));
    if (inside(state)) kept.push(state);
  }
  return kept.flatMap((state) => [frame.x(state.dryBulb), frame.y(state.humidityRatio)]);
}

/** The last state on the straight line between two that is still inside the plane. */
function crossing(from: ChartState, to: ChartState, inside: (state: ChartState) => boolean): ChartState {
  let [good, bad] = inside(from) ? [from, to] : [to, from];
  for (let halving = 0; halving < 40; halving += 1) {
    const middle = {
      dryBulb: (good.dryBulb + bad.dryBulb) / 2,
      humidityRatio: (good.humidityRatio + bad.humidityRatio) / 2,
    };
    if (inside(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
