import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sumOfLevels, weightedLevel } from "#component/fan-sound";
import { readJob } from "#job/read-job";
import type { FanSectionRating } from "#section/fan/rate";
import { shippedCatalogue } from "#section/shipped.test-data";
import cases from "../../../../reference/cases/fan_sound.json" with { type: "json" };
import { createUnitRating, rateUnit } from "./rate-unit.ts";
import type { UnitRating } from "./rating.ts";
import { limitOutcome, soundOf, type UnitSound } from "./sound.ts";
import type { Unit } from "./unit.ts";

const text = readFileSync(new URL("../../../../examples/marine-biology-wing.yaml", import.meta.url), "utf8");

/** The marine wing, with pieces of its text replaced, solved on the wet-bulb day. */
function solved(...changes: readonly (readonly [string, string])[]): { unit: Unit; rating: UnitRating } {
  const changed = changes.reduce((before, [from, to]) => {
    expect(before).toContain(from);
    return before.replace(from, to);
  }, text);
  const reading = readJob(changed, shippedCatalogue);
  expect(reading.problems).toEqual([]);
  const { unit, conditions } = reading.job!;
  const condition = conditions.find(({ key }) => key === "wet-bulb-day-1")!;
  return { unit, rating: rateUnit(unit, condition, createUnitRating(unit, condition)) };
}

function heard(...changes: readonly (readonly [string, string])[]): UnitSound {
  const { unit, rating } = solved(...changes);
  return soundOf(unit, rating)!;
}

const plenum = "    - kind: discharge plenum";
const withBaffles = (length: string) =>
  [plenum, `    - kind: attenuator\n      baffle length: ${length}\n\n${plenum}`] as const;
/** The pressure of baffles changes the fan's point; to look at sound alone its sound power is held against the plain unit's. */
function againstFan(sound: UnitSound): readonly number[] {
  return sound.discharge.levels.map((level, band) => level - sound.fan.downstream[band]!);
}

describe("sound of a unit", () => {
  const { unit, rating } = solved();
  const sound = soundOf(unit, rating)!;

  it("is what the sections make, less what they take, on both ways", () => {
    // From section to section by energy, worked here anew from the steps that are shown.
    const along = (steps: typeof sound.steps, way: "upstream" | "downstream", band: number) =>
      steps.reduce((level, { loss, made }) => {
        const left = level - loss[band]!;
        return made === undefined ? left : sumOfLevels([left, made[way][band]!]);
      }, sound.fan[way][band]!);
    const place = sound.steps.findIndex(({ direction }) => direction === "at the fan");
    for (const band of sound.fan.upstream.keys()) {
      const intake = along(sound.steps.slice(0, place).reverse(), "upstream", band) - sound.endReflection[band]!;
      expect(sound.intake.levels[band]!).toBeCloseTo(intake, 9);
      // What dampers and blades before the fan send down the air goes through it as well: here less than a hundredth of a dB.
      const behind = along(sound.steps.slice(place + 1), "downstream", band);
      expect(sound.discharge.levels[band]!).toBeGreaterThanOrEqual(behind - 1e-9);
      expect(sound.discharge.levels[band]!).toBeLessThan(behind + 0.01);
    }
    expect(sound.steps.map((step) => step.section)).toEqual(unit.sections.map(({ name }) => name));
    expect(sound.intake.weighted).toBeCloseTo(weightedLevel(sound.intake.levels), 9);
  });

  it("knows the dampers' flow noise as far below the fan's, with a wider band", () => {
    const box = sound.steps.find((step) => step.section === "mixing box")!;
    expect(box.made!.upstream[0]!).toBeLessThan(box.inside[0]! - 20);
    expect(box.made!.uncertainty).toBeGreaterThan(sound.fan.uncertainty);
  });

  it("starts from the handbook's sound power at the fan's point", () => {
    // Long, Architectural Acoustics, tables 13.5-13.8, small wheels, worked here anew from the table.
    const fan = rating.sections[unit.sections.findIndex(({ name }) => name === "fan")] as FanSectionRating;
    const specific = cases.K_F.values.airfoil_BC_BI_lt_36in[4]!;
    const volume = 10 * Math.log10(fan.flowPerFan / (0.3048 ** 3 / 60));
    const pressure = 20 * Math.log10(fan.fanTotalPressure / 249.088_91);
    const beyond = sound.fan.downstream[4]! - (specific + volume + pressure);
    // Off best efficiency the table adds 0, 3, 6 … 16 dB.
    expect(
      [0, 3, 6, 9, 12, 15, 16].some((each) => Math.abs(each - beyond) < 0.05),
      String(beyond),
    ).toBe(true);
  });

  it("shares what goes towards the intake with the return opening, energy for energy", () => {
    const box = sound.steps.find((step) => step.section === "mixing box")!;
    sound.returnOpening!.levels.forEach((level, band) => {
      const ofFan = 10 * Math.log10(10 ** (level / 10) - 10 ** (box.made!.toReturn![band]! / 10));
      const both = sumOfLevels([ofFan, box.inside[band]! - box.loss[band]!]);
      expect(both).toBeCloseTo(box.inside[band]!, 9);
    });
  });

  it("radiates from the casing the energetic sum of its sections, less than is inside", () => {
    sound.casing.levels.forEach((level, band) => {
      const parts = sound.steps.flatMap((step) => (step.radiated === undefined ? [] : [step.radiated[band]!]));
      expect(level).toBeCloseTo(sumOfLevels(parts), 9);
      expect(level).toBeLessThan(sumOfLevels([sound.fan.upstream[band]!, sound.fan.downstream[band]!]));
    });
    // The fan's cabinet and what is next to it lead; the hood stands outside and radiates by its opening alone.
    expect(sound.steps.find((step) => step.section === "intake hood")?.radiated).toBeUndefined();
    // Common practice, no source: at 1000 Hz a 2 in double wall keeps the casing 15 to 45 dB below the fan.
    const kept = sound.fan.downstream[4]! - sound.casing.levels[4]!;
    expect(kept).toBeGreaterThan(15);
    expect(kept).toBeLessThan(45);
  });

  it("is uncertain by the fan's band and the path's together", () => {
    expect(sound.fan.uncertainty).toBe(5);
    // What else makes noise on the way is far below the fan: a tenth of a dB is the most that its wider band may add.
    expect(sound.discharge.uncertainty).toBeCloseTo(Math.sqrt(25 + 9), 1);
    expect(sound.casing.uncertainty).toBeGreaterThan(sound.discharge.uncertainty);
  });

  it("holds a limit for certain only beyond the uncertainty", () => {
    const outlet = { levels: [], weighted: 80, uncertainty: 6 };
    expect([73.9, 74.1, 85.9, 86].map((limit) => limitOutcome(outlet, limit))).toEqual([
      "exceeded",
      "not certain",
      "not certain",
      "held",
    ]);
  });

  it("gets quieter inside and outside with perforated inner skins and with thicker panels", () => {
    const lined = heard(["    rail height: 10 in", "    rail height: 10 in\n    inner skin: perforated"]);
    const thick = heard(["panel thickness: 2 in", "panel thickness: 4 in"]);
    sound.discharge.levels.forEach((level, band) => {
      expect(lined.discharge.levels[band]!).toBeLessThanOrEqual(level + 1e-9);
      expect(thick.casing.levels[band]!).toBeLessThan(sound.casing.levels[band]!);
    });
    expect(lined.discharge.weighted).toBeLessThan(sound.discharge.weighted - 1);
    expect(lined.casing.weighted).toBeLessThan(sound.casing.weighted);
  });

  it("is never louder behind longer baffles, for the same sound of the fan", () => {
    const foot = fc.double({ min: 3.1, max: 9.9, noNaN: true });
    fc.assert(
      fc.property(foot, foot, (one, other) => {
        const short = againstFan(heard(withBaffles(`${Math.min(one, other)} ft`)));
        const long = againstFan(heard(withBaffles(`${Math.max(one, other)} ft`)));
        // Flow noise lies far below here; what the little more of fan speed changes in it stays under a hundredth of a dB.
        for (const [band, level] of long.entries()) expect(level).toBeLessThanOrEqual(short[band]! + 0.01);
      }),
      { numRuns: 8 },
    );
    const baffled = heard(withBaffles("7 ft"));
    expect(baffled.discharge.weighted).toBeLessThan(sound.discharge.weighted - 8);
    expect(baffled.steps.find((step) => step.section === "attenuator")?.made?.downstream).toHaveLength(8);
  });

  it("is not told when the fan stands", () => {
    const stopped = readJob(text, shippedCatalogue).job!;
    const condition = stopped.conditions.find(({ flow }) => flow.mode === "fan stopped")!;
    const still = rateUnit(stopped.unit, condition, createUnitRating(stopped.unit, condition));
    expect(soundOf(stopped.unit, still)).toBeUndefined();
  });
});
