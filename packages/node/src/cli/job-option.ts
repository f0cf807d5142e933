import type { Condition } from "@oncethrough/engine/duty/condition";
import { nearestName } from "@oncethrough/engine/form/nearest-name";
import type { Job } from "@oncethrough/engine/job/job";
import { UsageProblem } from "./exit-code.ts";
import { type Given, optionText } from "./session.ts";

/** The condition that was asked for by `--condition`, by its key or its name; undefined where none was. */
export function conditionOption(given: Given, job: Job): Condition | undefined {
  const wanted = optionText(given, "condition");
  if (wanted === undefined) return undefined;
  const found = job.conditions.find(({ key, name }) => key === wanted || name === wanted);
  if (found !== undefined) return found;
  throw unknownName(
    "--condition",
    wanted,
    "a condition of this job",
    job.conditions.map(({ key }) => key),
  );
}

/** The section that was asked for by `--working`; undefined where none was. */
export function workingOption(given: Given, job: Job): string | undefined {
  const wanted = optionText(given, "working");
  const names = job.unit.sections.map(({ name }) => name);
  if (wanted === undefined || names.includes(wanted)) return wanted;
  throw unknownName("--working", wanted, "a section of this unit", names);
}

function unknownName(option: string, wanted: string, what: string, known: readonly string[]): UsageProblem {
  const nearest = nearestName(wanted, known);
  const meant = nearest === undefined ? "" : ` (did you mean "${nearest}"?)`;
  return new UsageProblem(`${option} "${wanted}" is not ${what}${meant}; allowed: ${known.join(", ")}`);
}
