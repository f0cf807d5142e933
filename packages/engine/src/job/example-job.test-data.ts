import { readFileSync } from "node:fs";
import type { Condition } from "#duty/condition";
import { shippedCatalogue } from "#section/shipped.test-data";
import type { Job } from "./job.ts";
import { readJob } from "./read-job.ts";

/** An example of the project, its text changed before it is read. */
export function jobOf(name: string, change = (text: string) => text): Job {
  const text = readFileSync(new URL(`../../../../examples/${name}.yaml`, import.meta.url), "utf8");
  const { job, problems } = readJob(change(text), shippedCatalogue);
  if (job === undefined) throw new Error(problems.map((each) => each.problem).join());
  return job;
}

/** The condition of a job of that key. */
export function conditionOf(job: Job, key: string): Condition {
  const found = job.conditions.find((each) => each.key === key);
  if (found === undefined) throw new Error(key);
  return found;
}
