import { readdirSync, readFileSync } from "node:fs";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Condition } from "@oncethrough/engine/duty/condition";
import type { Job } from "@oncethrough/engine/job/job";
import { readJob } from "@oncethrough/engine/job/read-job";
import { checkUnit } from "@oncethrough/engine/rule/check";
import { readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";

// The suites run bundled, from the project's root.
const textsOf = (folder: string) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((path) => ({ path, text: readFileSync(`${folder}/${path}`, "utf8") }));

const catalogue = readCatalogue(textsOf("catalogue"));
const profile = readProfiles(textsOf("profiles"), rules).byName.get("common practice")!;

function exampleJob(name: string): Job {
  const { job, problems } = readJob(readFileSync(`examples/${name}.yaml`, "utf8"), catalogue);
  if (job === undefined) throw new Error(`${name} does not read: ${JSON.stringify(problems)}`);
  return job;
}

/** Mornings that follow one another: the outdoor air goes up and down by a few kelvin, as in hours of a year. */
function hoursOf({ conditions }: Job): readonly Condition[] {
  const day = conditions.find(({ key }) => key === "winter-0.5") ?? conditions[0]!;
  return Array.from({ length: 24 }, (_, hour) => ({
    ...day,
    outdoor: { ...day.outdoor, dryBulb: day.outdoor.dryBulb + 6 + 6 * Math.sin((hour / 12) * Math.PI) },
  }));
}

function tasksOf(name: string) {
  const job = exampleJob(name);
  const { unit, duty, conditions, waivers } = job;
  const kept = createUnitRating(unit, conditions[0]!);
  const design = conditions.find(({ key }) => key === "wet-bulb-day-0.5") ?? conditions[0]!;
  const hours = hoursOf(job);
  const rateAll = (each: readonly Condition[]) => {
    for (const condition of each) rateUnit(unit, condition, kept);
  };
  return [
    {
      name: `${name}: one condition, cold`,
      run: () => void rateUnit(unit, design, createUnitRating(unit, design)),
    },
    { name: `${name}: one condition after the others`, operations: conditions.length, run: () => rateAll(conditions) },
    { name: `${name}: an hour after an hour`, operations: hours.length, run: () => rateAll(hours) },
    {
      name: `${name}: all conditions, arranged and checked`,
      run: () => void checkUnit(unit, duty, conditions, rules, profile, waivers),
    },
  ];
}

export const suite = {
  title: "the whole unit",
  tasks: ["marine-biology-wing", "high-country-soils-laboratory", "large-vivarium"].flatMap(tasksOf),
};
