import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { proveJob } from "#mending/smallest-fix";
import { readProfiles } from "#rule/profile";
import { rules } from "#rule/rules";
import { shippedCatalogue } from "#section/shipped.test-data";
import { digestOf } from "./digest.ts";

const root = new URL("../../../../", import.meta.url);
const profiles = readdirSync(new URL("profiles", root)).map((path) => ({
  path,
  text: readFileSync(new URL(`profiles/${path}`, root), "utf8"),
}));
const profile = readProfiles(profiles, rules).byName.get("common practice")!;
const demo = readFileSync(new URL("examples/marine-biology-wing.yaml", root), "utf8");

function digest(text: string) {
  const proof = proveJob(text, { catalogue: shippedCatalogue, profile, books: undefined })!;
  return { proof, ...digestOf(proof, "ip") };
}

describe("the digest of a unit", () => {
  const one = digest(demo);
  const value = (of: typeof one, key: string) => of.figures.find((figure) => figure.key === key)!.value;

  it("is what the solved and judged unit says: the largest of all running conditions, the least margin that decides", () => {
    const running = one.proof.check.ratings.filter(({ solved, operation }) => solved && operation.fansRunning);
    expect(value(one, "fanPower")).toBe(Math.max(...running.map((rating) => rating.fanElectricPower)));
    expect(value(one, "price")).toBeUndefined();
    expect(value(one, "operating")).toBeGreaterThan(value(one, "dry")!);
    // The example is kept to its owner's rules.
    expect(one.against).toEqual([]);
    const tight = digest(demo.replace("fins: 12 per in", "fins: 6 per in"));
    expect(tight.against.join("; ")).toMatch(/cooling coil/);
    expect(value(tight, "failing")).toBe(tight.against.length);
    const deciding = one.proof.check.findings.filter(
      ({ entry, outcome }) => entry.decides && entry.waiver === undefined && outcome === "pass",
    );
    expect(Math.min(...deciding.map(({ margin }) => margin))).toBeGreaterThanOrEqual(one.tightest!.margin);
  });

  it("shows what a deeper coil changes: mass and pressure up, length up, the load as before", () => {
    const deeper = digest(demo.replace(/rows: 8\b/, "rows: 10"));
    for (const key of ["dry", "operating", "fanPressure", "length"]) {
      expect(value(deeper, key), key).toBeGreaterThan(value(one, key)!);
    }
    // The same leaving air is held; only fan heat differs, by less than a hundredth.
    expect(value(deeper, "cooling")! / value(one, "cooling")!).toBeCloseTo(1, 2);
  });
});
