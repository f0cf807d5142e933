import { join } from "node:path";
import { syntheticYear } from "@oncethrough/engine/weather/synthetic";
import { hourFigures } from "@oncethrough/engine/year/hour-figures";
import { beforeAll, describe, expect, it } from "vitest";
import { readTextFile } from "#files/read-text";
import { readCatalogueFolder, shippedFolders } from "#files/shipped";
import { bundleSources } from "../../../../tools/sources.mjs";
import { solveTrials, solveYears, YearStopped } from "./year-pool.ts";
import type { YearSetup } from "./year-setup.ts";

let worker = "";
let setup: YearSetup;
beforeAll(async () => {
  ({ worker = "" } = await bundleSources("year-worker-test", {
    worker: "packages/node/src/worker/year-worker.ts",
  }));
  const text = await readTextFile(join(shippedFolders.examples, "marine-biology-wing.yaml"));
  setup = {
    jobs: [{ text, profile: "common practice" }],
    catalogue: await readCatalogueFolder(shippedFolders.catalogue),
    profiles: [{ path: "common", text: await readTextFile(join(shippedFolders.profiles, "common-practice.yaml")) }],
    weather: fewHours(),
  };
}, 60_000);

/** Two days, of winter and of summer, of a made-up year, as if they were all of it: so that the test is short. */
function fewHours() {
  const whole = syntheticYear({
    dryBulbDay: { dryBulb: 34, humidityRatio: 0.014 },
    wetBulbDay: { dryBulb: 31, humidityRatio: 0.019 },
    dewPointDay: { dryBulb: 28, humidityRatio: 0.02 },
    winter: { dryBulb: -14, humidityRatio: 0.001 },
    pressure: 100_500,
  });
  const hours = 48;
  const pick = (list: Float64Array) => list.filter((_, hour) => Math.floor(hour / 24) % 190 === 10);
  return {
    ...whole,
    hours,
    dryBulb: pick(whole.dryBulb),
    humidityRatio: pick(whole.humidityRatio),
    pressure: pick(whole.pressure),
    windSpeed: pick(whole.windSpeed),
  };
}

describe("the pool of a year", { timeout: 60_000 }, () => {
  it("gives the same figures to the last digit with one, two and three threads, and tells how far it is", async () => {
    const [alone] = await solveYears(setup, { workers: 1 });
    for (const workers of [2, 3]) {
      const shares: number[] = [];
      const [shared] = await solveYears(setup, { workers, worker, progress: (share) => shares.push(share) });
      for (const name of hourFigures) expect(shared!.lists[name]).toEqual(alone!.lists[name]);
      expect(shared!.freezeMargins).toEqual(alone!.freezeMargins);
      expect(shared!.tally).toEqual(alone!.tally);
      expect(shared!.misses).toEqual(alone!.misses);
      expect(shares).toEqual(shares.toSorted((a, b) => a - b));
      expect(shares.at(-1)).toBe(1);
    }
  });

  it("tells the same of trials with one thread and with two", async () => {
    const asked = { count: 4, seed: 9, hours: [[0, 20, 40].map((hour) => ({ hour, weight: 16 }))] };
    const alone = await solveTrials(setup, asked, { workers: 1 });
    const [uncertainty] = alone;
    expect(uncertainty).toMatchObject({ trials: 4, seed: 9, unsolved: 0 });
    const plain = (list: typeof alone) => list.map(({ rules, ...rest }) => [rest, rules.map((each) => each.spread)]);
    expect(plain(await solveTrials(setup, asked, { workers: 2, worker }))).toEqual(plain(alone));
  });

  it.each([1, 2])("stops when it is told to, with %i at work, and gives nothing then", async (workers) => {
    const stop = new AbortController();
    const shares: number[] = [];
    const solving = solveYears(setup, {
      workers,
      worker,
      signal: stop.signal,
      progress: (share) => {
        shares.push(share);
        stop.abort();
      },
    });
    await expect(solving).rejects.toBeInstanceOf(YearStopped);
    expect(shares[0]).toBeLessThan(0.5);
    await expect(solveYears(setup, { workers, worker, signal: AbortSignal.abort() })).rejects.toBeInstanceOf(
      YearStopped,
    );
  });

  it("tells what went wrong in a thread", async () => {
    const wrong = { ...setup, jobs: [setup.jobs[0]!, { text: "tag: x", profile: "common practice" }] };
    await expect(solveYears(wrong, { workers: 2, worker })).rejects.toThrow(/has errors now/);
  });
});
