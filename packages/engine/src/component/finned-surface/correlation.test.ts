import { describe, expect, it } from "vitest";
import { chooseCorrelation, customaryReynolds } from "./choose-correlation.ts";
import { airSideCorrelations, distanceFromRange } from "./correlation.ts";
import { type FinnedBankShape, finnedBank } from "./finned-bank.ts";

const inch = 0.0254;

/** A bank of the trade's usual pitches by tube diameter, in inches. */
function bank(tube: number, across: number, along: number, changes: Partial<FinnedBankShape> = {}) {
  return finnedBank({
    rows: 8,
    tubesPerRow: 20,
    finnedLength: 1,
    transversePitch: across * inch,
    longitudinalPitch: along * inch,
    staggered: true,
    tubeOutsideDiameter: tube * inch,
    tubeWall: 0.0005,
    finPitch: inch / 12,
    finThickness: 0.00016,
    collars: true,
    ...changes,
  });
}

const distance = (name: string, of: ReturnType<typeof bank>) =>
  distanceFromRange(airSideCorrelations.find((each) => each.name === name)!, of, customaryReynolds(of));

describe("the correlation chosen by itself", () => {
  // Ranges as the publications give them (docs/methods/finned-surface.md): 5/8-in. tubes of four rows and more are those of
  // elmahdy-mitalas-1977; 3/8- and 1/2-in. tubes to six rows those of wang-chi-chang-2000.
  it.each([
    [0.625, 1.5, 1.3, 8, "Elmahdy-Mitalas 1977"],
    [0.625, 1.5, 1.3, 4, "Elmahdy-Mitalas 1977"],
    [0.625, 1.5, 1.3, 2, "Gray-Webb 1986"],
    [0.5, 1.25, 1.083, 6, "Wang-Chi-Chang 2000"],
    [0.375, 1, 0.866, 4, "Wang-Chi-Chang 2000"],
  ] as const)(
    "for %f-in. tubes at %f × %f in., %i rows, is within its range: %s",
    (tube, across, along, rows, name) => {
      const of = bank(tube, across, along, { rows });
      expect(chooseCorrelation("plain", of).name).toBe(name);
      expect(distance(name, of)).toBe(0);
    },
  );

  it("is the nearest where none is within its range, and never the one for circular fins", () => {
    const steam = bank(1, 3, 2.598, { rows: 1, finPitch: inch / 8, finThickness: 0.00025 });
    const chosen = chooseCorrelation("plain", steam);
    expect(chosen.onlyRival).toBeUndefined();
    const plates = airSideCorrelations.filter(({ pattern, onlyRival }) => pattern === "plain" && onlyRival !== true);
    const least = Math.min(...plates.map(({ name }) => distance(name, steam)));
    expect(least).toBeGreaterThan(0);
    expect(distance(chosen.name, steam)).toBe(least);
  });

  it("is for the fins' own pattern", () => {
    expect(chooseCorrelation("wavy", bank(0.625, 1.5, 1.3)).pattern).toBe("wavy");
    expect(chooseCorrelation("lanced", bank(0.625, 1.5, 1.3)).pattern).toBe("lanced");
  });
});

describe("formed fins on 3/8-in. tubes", () => {
  // Practice and reviews of the literature call wavy fins 1.1–1.7 times plain ones in heat and 1.5–2.5 times in friction,
  // louvered ones 1.3–2.1 and 1.5–2.6 (from memory): sets of other samples are to lie there, inside their ranges.
  const among = ["wavy", "lanced"] as const;
  const spread = {
    wavy: { heat: [1, 1.75], friction: [1.2, 2.6] },
    lanced: { heat: [1.2, 2.2], friction: [1.4, 2.6] },
  };

  it.each(among)("%s ones have two published sets, both more than plain fins and near one another", (pattern) => {
    const plain = airSideCorrelations.find(({ name }) => name === "Wang-Chi-Chang 2000")!;
    const sets = airSideCorrelations.filter((each) => each.pattern === pattern);
    expect(sets).toHaveLength(2);
    for (const rows of [2, 3, 4]) {
      for (const fins of [11, 14]) {
        const of = bank(0.375, 1, 0.866, { rows, finPitch: inch / fins, finThickness: 0.00014 });
        for (const number of [1500, 3000]) {
          const heats = sets.map((each) => each.colburn(of, number) / plain.colburn(of, number));
          const frictions = sets.map((each) => each.friction!(of, number) / plain.friction!(of, number));
          for (const heat of heats) {
            expect(heat).toBeGreaterThan(spread[pattern].heat[0]!);
            expect(heat).toBeLessThan(spread[pattern].heat[1]!);
          }
          for (const friction of frictions) {
            expect(friction).toBeGreaterThan(spread[pattern].friction[0]!);
            expect(friction).toBeLessThan(spread[pattern].friction[1]!);
          }
          // Correlations of fin-and-tube surfaces are claimed within 10 to 15 %; two of different samples within twice that.
          expect(Math.max(...heats) / Math.min(...heats)).toBeLessThan(1.35);
        }
      }
    }
  });

  it("go on smoothly where the louvers' two branches meet", () => {
    const set = airSideCorrelations.find(({ name }) => name === "Wang-Lee-Chang 1999")!;
    const of = bank(0.375, 1, 0.866, { rows: 4, finPitch: inch / 12 });
    for (let number = 850; number < 1150; number += 5) {
      expect(Math.abs(set.colburn(of, number + 5) / set.colburn(of, number) - 1)).toBeLessThan(0.02);
    }
  });
});
