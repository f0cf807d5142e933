import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Job } from "#job/job";
import { type Profile, readProfiles } from "#rule/profile";
import { rules } from "#rule/rules";
import { shippedCatalogue } from "#section/shipped.test-data";
import { ratingsOf } from "#unit/rate-unit";
import { soundOf } from "#unit/sound";
import { dutyText } from "./duty.test-data.ts";
import { sizeUnit } from "./size-unit.ts";

const path = "common-practice.yaml";
const text = readFileSync(new URL(`../../../../profiles/${path}`, import.meta.url), "utf8");
const commonPractice = readProfiles([{ path, text }], rules).byName.get("common practice") as Profile;

function sizedFor(limits: string) {
  const sizing = sizeUnit(dutyText({ rest: `  sound limits: ${limits}\n` }), shippedCatalogue, commonPractice);
  if (sizing.outcome !== "unit") throw new Error(JSON.stringify(sizing));
  return sizing;
}

/** dB(A), the loudest of the conditions at which the fan runs. */
function loudest({ unit, conditions }: Job, way: "intake" | "discharge"): number {
  const running = ratingsOf(unit, conditions).filter(({ operation }) => operation.fansRunning);
  return Math.max(...running.map((rating) => soundOf(unit, rating)![way].weighted));
}

const kindsOf = ({ unit }: Job) => unit.sections.map(({ kind }) => kind);

describe("attenuators", () => {
  const plain = sizedFor("{}").job;
  const discharge = loudest(plain, "discharge");
  const intake = loudest(plain, "intake");

  it("are left out where nothing limits the sound, or what limits it is kept without", () => {
    expect(kindsOf(plain)).not.toContain("attenuator");
    expect(kindsOf(sizedFor(`{ discharge: ${Math.ceil(discharge) + 1} dB }`).job)).not.toContain("attenuator");
  });

  it("stand behind the fan for the discharge, behind the filters for the intake, and the limits are kept", () => {
    const [atDischarge, atIntake] = [Math.floor(discharge) - 5, Math.floor(intake) - 4];
    const { job, choices } = sizedFor(`{ discharge: ${atDischarge} dB, intake: ${atIntake} dB }`);
    const kinds = kindsOf(job);
    expect(kinds.filter((kind) => kind === "attenuator")).toHaveLength(2);
    expect(kinds[kinds.indexOf("filter bank") + 1]).toBe("attenuator");
    expect(kinds[kinds.indexOf("fan") + 1]).toBe("attenuator");
    expect(loudest(job, "discharge")).toBeLessThanOrEqual(atDischarge);
    expect(loudest(job, "intake")).toBeLessThanOrEqual(atIntake);
    const told = choices.filter(({ of }) => of.includes("attenuator")).map(({ because }) => because);
    expect(told.join("; ")).toContain(`against ${atDischarge}`);
  });

  it("grow with what they have to take off, and with none left it is told what stays", () => {
    const lengthOf = (limit: number) => {
      const { unit } = sizedFor(`{ discharge: ${limit} dB }`).job;
      return unit.sections.find(({ kind }) => kind === "attenuator")!.layout.length;
    };
    const lengths = [2, 14, 20].map((less) => lengthOf(Math.floor(discharge) - less));
    expect(lengths[1]).toBeGreaterThan(lengths[0]!);
    expect(lengths[2]).toBeGreaterThanOrEqual(lengths[1]!);
    const { choices, job } = sizedFor("{ discharge: 45 dB }");
    expect(kindsOf(job)).toContain("attenuator");
    expect(choices.map(({ because }) => because).join("; ")).toContain("what is missed is for the duct");
  });
});
