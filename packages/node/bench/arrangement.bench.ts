import { join } from "node:path";
import { arrangeUnit } from "@oncethrough/engine/arrangement/arrange";
import { massOf } from "@oncethrough/engine/arrangement/mass";
import { arrangementTask } from "@oncethrough/engine/arrangement/task";
import { arrangeRunning, weighUnit } from "@oncethrough/engine/arrangement/weigh";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { readJob } from "@oncethrough/engine/job/read-job";
import { pricedUnit } from "@oncethrough/engine/takeoff/offer";
import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { readTextFile } from "../src/files/read-text.ts";
import { readCatalogueFolder, shippedFolders } from "../src/files/shipped.ts";
import { readShopFolder } from "../src/files/shop-folder.ts";

const catalogue = readCatalogue(await readCatalogueFolder(shippedFolders.catalogue));
const { books } = readShop(await readShopFolder(undefined));

async function tasksOf(name: string) {
  const { job } = readJob(await readTextFile(join(shippedFolders.examples, `${name}.yaml`)), catalogue);
  if (job === undefined || books === undefined) throw new Error(`the example ${name} or the books have errors`);
  const { unit, duty, conditions } = job;
  const task = arrangementTask(duty);
  const { running } = arrangeRunning(unit, duty, conditions);
  return [
    { name: `${name}: arranged`, run: () => void arrangeUnit(unit, task, running) },
    {
      name: `${name}: arranged, masses and centre`,
      run: () => void massOf(arrangeUnit(unit, task, running).whole, "operating"),
    },
    {
      name: `${name}: arranged, masses and price`,
      run: () => void pricedUnit(unit, arrangeUnit(unit, task, running), books),
    },
    { name: `${name}: weighed at every condition`, run: () => void weighUnit(unit, duty, conditions) },
  ];
}

/** The unit in millimetres and kilograms: what follows every edit. The vivarium is the largest example. */
export const suite = {
  title: "arrangement",
  tasks: (await Promise.all(["large-vivarium", "marine-biology-wing"].map(tasksOf))).flat(),
};
