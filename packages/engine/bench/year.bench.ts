import { readdirSync, readFileSync } from "node:fs";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { readJob } from "@oncethrough/engine/job/read-job";
import { prepareJudge } from "@oncethrough/engine/rule/judge";
import { readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { timesToFreeze } from "@oncethrough/engine/year/freeze-time";
import { planYear } from "@oncethrough/engine/year/plan";
import { representativeHours, solveRepresentative } from "@oncethrough/engine/year/representative";
import { syntheticYearOfDuty } from "@oncethrough/engine/year/synthetic-duty";
import { solveTrial } from "@oncethrough/engine/year/uncertainty";
import { startYear, stepYear } from "@oncethrough/engine/year/year-hours";

// The suites run bundled, from the project's root.
const textsOf = (folder: string) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((path) => ({ path, text: readFileSync(`${folder}/${path}`, "utf8") }));

const catalogue = readCatalogue(textsOf("catalogue"));
const profile = readProfiles(textsOf("profiles"), rules).byName.get("common practice")!;
const name = "marine-biology-wing";
const { job } = readJob(readFileSync(`examples/${name}.yaml`, "utf8"), catalogue);
if (job === undefined) throw new Error(`${name} does not read`);
const { unit, duty, waivers } = job;
const judge = prepareJudge(unit, duty, rules, profile, waivers);
const weather = syntheticYearOfDuty(duty);
const plan = planYear({ unit, duty, weather, judge });
const hours = representativeHours(plan, 48);

/** A year of the demo's unit, rules included, and what else is asked of a year. */
export const suite = {
  title: "year",
  samples: 3,
  tasks: [
    {
      name: `${name}: an hour of a synthetic year, rules included`,
      operations: 8760,
      run: () => void stepYear(startYear({ unit, duty, weather, judge }), Number.POSITIVE_INFINITY),
    },
    { name: `${name}: make a year ready`, run: () => void planYear({ unit, duty, weather, judge }) },
    { name: `${name}: time to freeze`, run: () => void timesToFreeze(plan) },
    { name: `${name}: 48 hours that stand for it`, run: () => void solveRepresentative(plan, hours) },
    { name: `${name}: one trial of uncertainty`, run: () => void solveTrial(plan, hours, 1, 1) },
  ],
};
