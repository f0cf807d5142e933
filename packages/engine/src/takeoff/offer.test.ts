import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { arrangeRunning } from "#arrangement/weigh";
import { readJob } from "#job/read-job";
import { shippedCatalogue } from "#section/shipped.test-data";
import { ratingsOf } from "#unit/rate-unit";
import { boughtSets } from "./bought-set.ts";
import { offerOf, pricedUnit } from "./offer.ts";
import { orderData } from "./order-data.ts";
import { shippedBooks } from "./shop.test-data.ts";

const demo = readFileSync(new URL("../../../../examples/marine-biology-wing.yaml", import.meta.url), "utf8");
const books = shippedBooks();

function jobOf(text: string) {
  const { job, problems } = readJob(text, shippedCatalogue);
  if (job === undefined) throw new Error(JSON.stringify(problems));
  return job;
}

describe("an offer with options", () => {
  const job = jobOf(demo);
  const offer = offerOf(job, books);

  it("adds to the base price what the changed machine costs more, and what was entered", () => {
    const walls = jobOf(demo.replace("panel thickness: 2 in", "panel thickness: 3 in"));
    const alone = pricedUnit(walls.base, arrangeRunning(walls.base, walls.duty, walls.conditions), books);
    const [first, , last] = offer.adders;
    expect(first?.cents).toBe(alone.price.price - offer.base.price.price);
    expect(first?.mass).toBeCloseTo(alone.masses.dry - offer.base.masses.dry, 6);
    expect(first!.cents).toBeGreaterThan(0);
    expect(last).toMatchObject({ changes: 0, entered: 480_000, cents: 480_000, mass: 0 });
    expect(offer.total).toBe(offer.base.price.price);
    expect(offer.ordered).toBe(offer.base);
  });

  it("sums up to the cent what is taken, whatever options share", () => {
    const all = demo.replaceAll(/^ {2}- name: (.*)$/gm, "  - name: $1\n    taken: yes");
    const taken = offerOf(jobOf(all.replace("price: $4,800", "price: $4,800\n    mass: 10 lb")), books);
    const adders = taken.adders.reduce((sum, { cents }) => sum + cents, 0);
    expect(taken.adders.every((each) => each.taken)).toBe(true);
    expect(taken.total).toBe(taken.base.price.price + adders + taken.together);
    expect(taken.total).toBe(taken.ordered.price.price + 480_000);
    expect(taken.enteredMass).toBeCloseTo(4.5359, 3);
    // Copper has three times the density of aluminium and more: the order is heavier by far more than the walls.
    expect(taken.ordered.masses.dry - taken.base.masses.dry).toBeGreaterThan(400);
  });

  it("says what an option brings that has no price", () => {
    const prices = shippedBooks({
      prices: readFileSync(new URL("../../../../shop/prices.yaml", import.meta.url), "utf8").replace(
        /.*typical MERV 11,.*\n/,
        "",
      ),
    });
    const change = "    changes: [{ part: filters, field: prefilter, value: typical MERV 11 pleated 4 in }]\n";
    const [found] = offerOf(jobOf(`${demo}  - name: better prefilters\n${change}`), prices).adders.slice(-1);
    expect(found?.missing).toEqual([
      { owner: "filters", what: "typical MERV 11 pleated 4 in", amount: 12, unit: "each" },
    ]);
  });

  it("weighs the sections and the rest as the whole", () => {
    const { masses, price } = offer.base;
    expect([...masses.owners.values()].reduce((sum, mass) => sum + mass, 0)).toBeCloseTo(masses.dry, 6);
    expect([...masses.owners.keys()]).toEqual(price.owners.map(({ owner }) => owner));
    expect(masses.operating).toBeGreaterThan(masses.dry);
  });
});

describe("what is bought", () => {
  const { unit, duty, conditions } = jobOf(demo);
  const sets = boughtSets(arrangeRunning(unit, duty, conditions).whole);
  const count = (words: string) => sets.filter(({ item }) => item.startsWith(words)).map((each) => each.count);

  it("is counted as it is ordered: one fan of many pieces, two dampers, four springs, panels by size", () => {
    expect(count("typical airfoil housed")).toEqual([1]);
    expect(count("typical airfoil opposed")).toEqual([1, 1]);
    expect(count("typical spring").reduce((sum, each) => sum + each, 0)).toBe(4);
    const [panels] = sets.filter(({ item }) => item.startsWith("typical MERV 14"));
    // Twelve of 24 by 24 in, 12 in deep.
    expect(panels).toMatchObject({ count: 12, size: [305, 610, 610] });
  });

  it("is ordered by figures at the hardest condition, and by the declared rating where there is one", () => {
    const running = conditions.filter(({ flow }) => flow.mode !== "fan stopped");
    const orders = orderData(unit, ratingsOf(unit, running));
    const fan = orders.find(({ owner }) => owner === "fan");
    // Filters at change-out ask the fan for most.
    expect(fan?.condition).toMatch(/change-out/);
    expect(fan?.figures.map(({ name }) => name)).toContain("fan static pressure");
    expect(fan?.declared).toBeUndefined();
    expect(fan?.build).toContainEqual({
      name: "motor power, each",
      quantity: "shaftPower",
      value: unit.sections.find(({ name }) => name === "fan")!.values.motorPower,
    });
    // Every coil is ordered by what it is to be built as, the air that meets it, and what it has to do with it.
    const coils = orders.filter(({ build }) => build.some(({ name }) => name === "rows"));
    expect(coils.map(({ owner }) => owner)).toEqual(["preheat coil", "cooling coil"]);
    for (const { figures } of coils) {
      const names = figures.map(({ name }) => name);
      expect(names).toEqual(
        expect.arrayContaining(["entering airflow", "entering dry bulb", "entering wet bulb", "air pressure loss"]),
      );
    }
    // The wet-bulb day of a warm coast, 25 to 28 °C, mixed with a little room air.
    const wetBulb = coils[1]?.figures.find(({ name }) => name === "entering wet bulb")?.value;
    expect(wetBulb).toBeGreaterThan(20);
    expect(wetBulb).toBeLessThan(28);
    const rated = demo.replace(
      "      drive: belt\n",
      `      drive: belt
      declared rating: { number: Q-17, revision: B, airflow: 18000 cfm, static pressure: 6 in.wg, density: 0.075 lb/ft3, speed: 2150 rpm, shaft power: 23 hp }
`,
    );
    const { unit: ordered } = jobOf(rated);
    const declared = orderData(ordered, ratingsOf(ordered, running.slice(0, 1))).find(
      ({ owner }) => owner === "fan",
    )?.declared;
    expect(declared).toMatchObject({ number: "Q-17", revision: "B" });
    const power = declared?.figures.find(({ quantity }) => quantity === "shaftPower")?.value;
    // One horsepower is 745.7 W.
    expect(power).toBeCloseTo(23 * 745.7, -1);
  });

  it("holds a coil's declared rating against ours at its own point, and says in what it differs, before anyone orders", () => {
    const running = conditions.filter(({ flow }) => flow.mode !== "fan stopped");
    const point =
      "number: C-4, revision: A, airflow: 16000 cfm, entering dry bulb: 80 °F, entering wet bulb: 67 °F, flow: 150 gpm, entering liquid: 44 °F, capacity: 700 MBH, circuits: 46";
    const rated = demo.replace("      circuits: 92\n", `      circuits: 92\n      declared rating: { ${point} }\n`);
    expect(rated).not.toBe(demo);
    const { unit: ordered } = jobOf(rated);
    const declared = orderData(ordered, ratingsOf(ordered, running)).find(
      ({ owner }) => owner === "cooling coil",
    )?.declared;
    expect(declared).toMatchObject({ number: "C-4", revision: "A" });
    const [capacity] = declared!.figures;
    // 700 MBH is 205.15 kW.
    expect(capacity!.value / 1000).toBeCloseTo(205.15, 1);
    expect(capacity!.ours).toBeGreaterThan(50_000);
    const notes = declared!.notes.join("\n");
    for (const said of [
      /over ours at its own point/,
      /circuits/,
      /does not cover this condition/,
      /entering dry bulb/,
    ]) {
      expect(notes).toMatch(said);
    }
  });
});
