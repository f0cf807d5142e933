import type { ConditionOutput } from "./rate-output.ts";

/** The condition that an engineer wants to see in full first, and why. */
export interface Deciding {
  readonly condition: ConditionOutput;
  readonly why: string;
}

/**
 * What could not be solved comes first, then what misses most of what is asked; when all is met, the day with the
 * most work for the coils, at the filter loading that takes the most fan power.
 */
export function decidingCondition(conditions: readonly ConditionOutput[]): Deciding | undefined {
  const unsolved = conditions.find((condition) => !condition.solved);
  if (unsolved !== undefined) return { condition: unsolved, why: "it could not be solved" };
  const misses = greatest(conditions, missing);
  if (misses !== undefined && misses.shortfalls.length > 0) {
    return { condition: misses, why: "it misses the most of what is asked" };
  }
  const running = conditions.filter((condition) => condition.flow !== "fan stopped" && condition.fansOut === 0);
  const cools = running.some((condition) => condition.cooling > 0);
  const work = (condition: ConditionOutput) => (cools ? condition.cooling : condition.heating);
  const hardest = greatest(running, work);
  if (hardest === undefined) return undefined;
  const sameDay = running.filter(
    ({ outdoors }) =>
      outdoors.dryBulb === hardest.outdoors.dryBulb && outdoors.humidityRatio === hardest.outdoors.humidityRatio,
  );
  const condition = greatest(sameDay, (each) => each.fan.electricPower) ?? hardest;
  return { condition, why: `the day with the most ${cools ? "cooling" : "heating"}, at its highest fan power` };
}

/** A tie goes to the day with more work for coils and fan. */
function missing({ shortfalls, cooling, heating, fan }: ConditionOutput): number {
  return shortfalls.length * 1e9 + cooling + heating + fan.electricPower;
}

function greatest<Item>(items: readonly Item[], measure: (item: Item) => number): Item | undefined {
  let best: Item | undefined;
  for (const item of items) if (best === undefined || measure(item) > measure(best)) best = item;
  return best;
}
