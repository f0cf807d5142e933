import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Attenuator } from "#component/attenuator";
import { rateAndCheck } from "../balance.test-data.ts";
import { rateSection } from "../rate-section.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { shippedCatalogue, valuesOfText } from "../shipped.test-data.ts";
import { attenuatorFields } from "./design.ts";
import { attenuator } from "./kind.ts";

const design = (text: string) => attenuator.prepare(valuesOfText(attenuatorFields, text), sampleFrame);
const at = sampleSectionCondition();
const room = { frame: sampleFrame, absorption: Array<number>(8).fill(0.05) };
const narrow = "attenuator: typical baffles 8 in with 4 in passages\n";

describe("attenuator", () => {
  it("sets as many baffles as come nearest to the record's open share", () => {
    // 2.4 m over 16 in pitch is 5.9: six baffles, passages of 0.4 − 0.2032 m.
    const wide = design("baffle length: 5 ft");
    expect(wide.baffles).toBe(6);
    expect(wide.passageWidth).toBeCloseTo(0.4 - 0.2032, 9);
    expect(wide.openShare).toBeCloseTo(1 - (6 * 0.2032) / 2.4, 9);
    expect(wide.length).toBeCloseTo((60 + 12 + 24) * 0.0254, 9);
  });

  it("has the pressure of a hand calculation", () => {
    const out = rateAndCheck(attenuator, design("baffle length: 5 ft"), sampleAir(at.condition, 10), at);
    // Open share 0.492. Sharp contraction and sudden expansion of the handbook (Idelchik; Borda and Carnot), a fifth and
    // four fifths of them, and friction 0.03 over twice the passage.
    const share = 1 - (6 * 0.2032) / 2.4;
    const coefficient = 0.2 * 0.5 * (1 - share) + (0.03 * 1.524) / (2 * 0.1968) + 0.8 * (1 - share) ** 2;
    expect(out.passageVelocity).toBeCloseTo(out.faceVelocity / share, 9);
    expect(out.totalPressureLoss).toBeCloseTo(coefficient * 0.5 * out.density * out.passageVelocity ** 2, 6);
  });

  it("takes more of the sound that comes against the air than of what goes with it", () => {
    const made = design(narrow);
    const out = rateAndCheck(attenuator, made, sampleAir(at.condition, 12), at);
    const { downstream, upstream } = attenuator.sound!(made, out, room);
    downstream.forEach((loss, band) => {
      expect(upstream[band]!).toBeGreaterThan(loss);
      // Mach numbers of passages stay below 0.06: both within a quarter of one another.
      expect(upstream[band]! / loss).toBeLessThan(1.25);
    });
  });

  it("is never louder when it is longer, at any flow", () => {
    const length = fc.double({ min: 0.95, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        length,
        length,
        fc.double({ min: 1, max: 20, noNaN: true }),
        fc.boolean(),
        (one, other, flow, isNarrow) => {
          const soundOf = (metres: number) => {
            const made = design(`${isNarrow ? narrow : ""}baffle length: ${metres} m`);
            const out = attenuator.createRating();
            rateSection(attenuator, made, sampleAir(at.condition, flow), at, out);
            return attenuator.sound!(made, out, room);
          };
          const [short, long] = [soundOf(Math.min(one, other)), soundOf(Math.max(one, other))];
          long.downstream.forEach((loss, band) => {
            expect(loss).toBeGreaterThanOrEqual(short.downstream[band]! - 1e-9);
            expect(long.upstream[band]!).toBeGreaterThanOrEqual(short.upstream[band]! - 1e-9);
            expect(long.made!.downstream[band]!).toBeLessThanOrEqual(short.made!.downstream[band]! + 1e-9);
          });
        },
      ),
      { numRuns: 60 },
    );
  });

  it("hisses by the sixth power of velocity at low frequencies, or nearly", () => {
    const made = design("");
    const noiseAt = (flow: number) => {
      const out = rateAndCheck(attenuator, made, sampleAir(at.condition, flow), at);
      return attenuator.sound!(made, out, room).made!.downstream[0]!;
    };
    // 60 lg 2 = 18 dB for each doubling of velocity (dipole sources, any textbook of acoustics).
    expect(noiseAt(20) - noiseAt(10)).toBeGreaterThan(17.5);
    expect(noiseAt(20) - noiseAt(10)).toBeLessThan(19);
  });

  it("balances from 0.5 % to 150 % of flow, and is drawn with keys that differ", () => {
    for (const flow of [0.05, 1, 10, 15]) rateAndCheck(attenuator, design(narrow), sampleAir(at.condition, flow), at);
    const made = design(narrow);
    const items = attenuator.picture(made, sampleFrame, "attenuator");
    expect(new Set(items.map((item) => item.key)).size).toBe(items.length);
    for (const item of items) {
      if (item.shape !== "line") continue;
      item.points.forEach((value, index) => {
        expect(value).toBeGreaterThanOrEqual(0);
        expect(value).toBeLessThanOrEqual(1000 * (index % 2 === 0 ? made.length : sampleFrame.height));
      });
    }
  });

  it.each([
    ["baffle length: 2 ft", "baffleLength"],
    ["baffle length: 12 ft", "baffleLength"],
    ["baffles: 12", "baffles"],
    ["baffles: 2", "baffles"],
  ])("refuses what its record does not hold for: %s", (text, field) => {
    expect(() => design(text)).toThrow(expect.objectContaining({ field }));
  });
});

describe("the shipped baffles", () => {
  const names = shippedCatalogue.names("attenuator");
  const records = names.map((name) => shippedCatalogue.component("attenuator", name) as Attenuator);

  it("take no more per metre than Piening's rule allows a perfect lining, but for what their ends reflect", () => {
    expect(records.length).toBeGreaterThan(1);
    for (const { lengths, passageWidth } of records) {
      for (const { length, insertionLoss } of lengths) {
        // Piening (1937), from memory: 1.5 α (lined edge over area) per metre; a tall passage has 2/g. Ends: up to 3 dB.
        const most = (1.5 * 2 * length) / passageWidth + 3;
        for (const loss of insertionLoss) expect(loss).toBeLessThanOrEqual(most);
      }
    }
  });
});
