import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readProfiles } from "#rule/profile";
import { rules } from "#rule/rules";
import { shippedCatalogue } from "#section/shipped.test-data";
import { readShop } from "#takeoff/read-shop";
import { type Bench, type Proof, proveJob, smallestFix } from "./smallest-fix.ts";

const root = new URL("../../../../", import.meta.url);
const textsOf = (folder: string) =>
  readdirSync(new URL(folder, root)).map((name) => ({
    path: name,
    text: readFileSync(new URL(`${folder}/${name}`, root), "utf8"),
  }));
const profile = readProfiles(textsOf("profiles"), rules).byName.get("common practice")!;
const shopFile = (name: string) => ({ path: name, text: readFileSync(new URL(`shop/${name}`, root), "utf8") });
const { books } = readShop({
  prices: shopFile("prices.yaml"),
  rates: shopFile("rates.yaml"),
  stock: shopFile("stock.yaml"),
});
const bench: Bench = { catalogue: shippedCatalogue, profile, books };
const demo = readFileSync(new URL("examples/marine-biology-wing.yaml", root), "utf8");

function proved(text: string): Proof {
  const proof = proveJob(text, bench);
  if (proof === undefined) throw new Error("the job does not read");
  return proof;
}

function findingOf(proof: Proof, rule: string) {
  return proof.check.findings.find(({ entry }) => entry.rule.id === rule)!;
}

/** Lines in which two texts differ. */
function changedLines(before: string, after: string): readonly string[] {
  const old = before.split("\n");
  const lines = after.split("\n");
  expect(lines.length).toBe(old.length);
  return lines.filter((line, index) => line !== old[index]);
}

describe("smallestFix", () => {
  it("deepens a hood that is too shallow by no more than it needs, and changes nothing else", () => {
    const proof = proved(demo.replace("projection: 54 in", "projection: 30 in"));
    const finding = findingOf(proof, "intake hood velocity");
    expect(finding.outcome).toBe("fail");
    const fix = smallestFix(proof, finding, bench)!;
    expect(fix.path).toMatch(/projection|width/);
    expect(changedLines(proof.text, fix.text)).toHaveLength(1);
    // About 18 500 acfm pass 102 in of hood at the highest speed on clean filters; 475 fpm, a twentieth under the limit, take
    // 55 in at most, and the limit itself 44 in at least even at the 15 700 acfm of outside air at design.
    expect(Number.parseFloat(fix.value)).toBeGreaterThan(43);
    expect(Number.parseFloat(fix.value)).toBeLessThan(55);
    const after = proved(fix.text);
    expect(findingOf(after, "intake hood velocity").outcome).toBe("pass");
    expect([...after.against].filter((each) => !proof.against.has(each))).toEqual([]);
    expect(fix.priceChange).toBe(after.price! - proof.price!);
    expect(fix.massChange).toBeGreaterThan(0);
  });

  it("gives none where nothing that the rule names may be turned", () => {
    const proof = proved(demo.replace("projection: 54 in", "projection: 30 in"));
    const finding = findingOf(proof, "intake hood velocity");
    const fixed = { ...finding, entry: { ...finding.entry, rule: { ...finding.entry.rule, mends: [] } } };
    expect(smallestFix(proof, fixed, bench)).toBeUndefined();
  });

  it("does not follow one advice by leaving another: filters that take less, and clean less, are no fix", () => {
    const proof = proved(demo);
    const finding = findingOf(proof, "clean filter resistance");
    expect(finding.outcome).toBe("advice");
    const coarse = proved(demo.replace("medium: typical MERV 14 rigid 12 in", "medium: typical MERV 8 pleated 2 in"));
    expect(findingOf(coarse, "clean filter resistance").outcome).toBe("pass");
    expect(findingOf(coarse, "laboratory filter efficiency").outcome).toBe("advice");
    expect(smallestFix(proof, finding, bench)?.value ?? "").not.toContain("MERV 8");
  });

  it("proves nothing of a text that does not read", () => {
    expect(proveJob("format: oncethrough job 1", bench)).toBeUndefined();
  });
});
