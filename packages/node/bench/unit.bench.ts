import { join } from "node:path";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { readJob } from "@oncethrough/engine/job/read-job";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";
import { readTextFile } from "../src/files/read-text.ts";
import { readCatalogueFolder, shippedFolders } from "../src/files/shipped.ts";

const examples = ["marine-biology-wing", "high-country-soils-laboratory", "large-vivarium"];
const catalogue = readCatalogue(await readCatalogueFolder(shippedFolders.catalogue));

/** Tasks of one example: reading its text, and solving it over and over in one record. */
async function tasksOf(name: string) {
  const text = await readTextFile(join(shippedFolders.examples, `${name}.yaml`));
  const { job } = readJob(text, catalogue);
  if (job === undefined) throw new Error(`the example ${name} has errors`);
  const { unit, conditions } = job;
  const deciding = conditions.find(({ key }) => key === "wet-bulb-day-0.5");
  if (deciding === undefined) throw new Error(`the example ${name} has no wet-bulb day`);
  const rating = createUnitRating(unit, deciding);
  return [
    { name: `${name}: read the job text`, run: () => void readJob(text, catalogue) },
    { name: `${name}: solve the wet-bulb day`, run: () => void rateUnit(unit, deciding, rating) },
    {
      name: `${name}: solve all conditions, each`,
      operations: conditions.length,
      run: () => {
        for (const condition of conditions) rateUnit(unit, condition, rating);
      },
    },
  ];
}

/** The unit as a whole: the figure that a person waits for. */
export const suite = { title: "unit", tasks: (await Promise.all(examples.map(tasksOf))).flat() };
