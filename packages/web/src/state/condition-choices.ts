import type { Condition } from "@oncethrough/engine/duty/condition";

/** A condition to pick, at every filter loading for which it stands in the job. */
export interface ConditionChoice {
  readonly name: string;
  /** Lightest loading first; one entry where the loading is no choice. */
  readonly loadings: readonly { readonly loading: number; readonly key: string }[];
}

/** Choices that belong together. */
export interface ConditionSet {
  readonly name: string;
  readonly choices: readonly ConditionChoice[];
}

/** The conditions of a job as a person picks them: day by filter loading, minimum flow, fan stopped, own. */
export function conditionSets(conditions: readonly Condition[]): readonly ConditionSet[] {
  const sets = new Map<string, Map<string, { loading: number; key: string }[]>>();
  for (const condition of conditions) {
    const { set, name } = placeOf(condition);
    const choices = sets.get(set) ?? new Map<string, { loading: number; key: string }[]>();
    sets.set(set, choices);
    choices.set(name, [...(choices.get(name) ?? []), { loading: condition.filterLoading, key: condition.key }]);
  }
  return [...sets].map(([name, choices]) => ({
    name,
    choices: [...choices].map(([choice, loadings]) => ({ name: choice, loadings: sortedByLoading(loadings) })),
  }));
}

/** The choice that holds a condition, and the conditions at its lightest and heaviest filter loading. */
export function choiceOf(sets: readonly ConditionSet[], key: string): ConditionChoice | undefined {
  return sets.flatMap((set) => set.choices).find((choice) => choice.loadings.some((each) => each.key === key));
}

/** The condition of a choice whose loading is nearest. */
export function nearestLoading(choice: ConditionChoice, loading: number): string {
  const sorted = choice.loadings.toSorted(
    (one, other) => Math.abs(one.loading - loading) - Math.abs(other.loading - loading),
  );
  return sorted[0]?.key ?? "";
}

function placeOf({ key, name }: Condition): { readonly set: string; readonly name: string } {
  if (key.startsWith("own-")) return { set: "own", name };
  if (key.startsWith("minimum-flow-")) return { set: "minimum flow", name: name.replace(/^minimum flow, /, "") };
  if (key === "one-fan-out") {
    return { set: "one fan out", name: name.replace(/^one fan out, /, "").replace(/, filters .*$/, "") };
  }
  if (key.startsWith("fan-stopped-")) return { set: "fan stopped", name: name.replace(/^fan stopped in winter, /, "") };
  return { set: "design", name: name.replace(/, filters .*$/, "") };
}

function sortedByLoading<Loading extends { readonly loading: number }>(loadings: readonly Loading[]): Loading[] {
  return loadings.toSorted((one, other) => one.loading - other.loading);
}
