import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { filterBankFields } from "./design.ts";
import { filterBank } from "./kind.ts";
import { fillLength, isStandardPanel, layOutFlat, layOutLeaning, metres, panelSides } from "./panel-layout.ts";

const prepare = (text: string, frame = sampleFrame) => filterBank.prepare(valuesOfText(filterBankFields, text), frame);
const pleated = "medium: typical MERV 8 pleated 4 in\n";
const inch = 0.0254;

describe("panel layout", () => {
  it("fills a length with the fewest panels", () => {
    expect(fillLength(60 * inch, [24, 12])).toEqual([24, 24, 12]);
    expect(fillLength(45 * inch, [12, 16, 20, 24])).toEqual([24, 20]);
    expect(fillLength(11 * inch, [12, 24])).toEqual([]);
  });

  it("lays out an 8 by 8 ft section as any shop does: sixteen 24 by 24 panels", () => {
    const grid = layOutFlat(96 * inch, 96 * inch, panelSides["24 in and 12 in"]);
    expect(grid).toEqual({ columns: [24, 24, 24, 24], rows: [24, 24, 24, 24] });
  });

  it("never uses a face that the trade does not keep, never sticks out, and leaves less than one panel's side", () => {
    const size = fc.double({ min: 0.62, max: 6, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        fc.constantFrom("24 in and 12 in" as const, "all standard sizes" as const),
        (w, h, which) => {
          const grid = layOutFlat(w, h, panelSides[which])!;
          expect(metres(grid.columns)).toBeLessThanOrEqual(w + 1e-6);
          expect(metres(grid.rows)).toBeLessThanOrEqual(h + 1e-6);
          for (const column of grid.columns)
            for (const row of grid.rows) expect(isStandardPanel(column, row)).toBe(true);
          expect(w - metres(grid.columns)).toBeLessThan(24 * inch);
          expect(h - metres(grid.rows)).toBeLessThan(24 * inch);
        },
      ),
    );
  });

  it("leans panels within height and length (geometry of a turned rectangle)", () => {
    const leaning = layOutLeaning(2.4, 2.2, 0.75, 0.1, 22.5, panelSides["24 in and 12 in"])!;
    const angle = (22.5 * Math.PI) / 180;
    expect(leaning.pitch).toBeCloseTo(24 * inch * Math.sin(angle) + 0.1 * Math.cos(angle), 12);
    expect(leaning.rows.length * leaning.pitch).toBeLessThanOrEqual(2.2);
    expect(leaning.rows.length).toBe(Math.floor(2.2 / leaning.pitch));
    expect(layOutLeaning(2.4, 2.2, 0.1, 0.1, 22.5, panelSides["24 in and 12 in"])).toBeUndefined();
  });
});

describe("filter bank", () => {
  it("has three velocities, each on its own area", () => {
    const bank = prepare(`${pleated}rack: angled\n`);
    const at = sampleSectionCondition();
    const out = rateAndCheck(filterBank, bank, sampleAir(at.condition, 9), at);
    // An angled rack has more face than the section: slower on the panels than in the section, faster in the gaps.
    expect(out.panelVelocity).toBeLessThan(out.sectionVelocity);
    expect(out.gapVelocity).toBeGreaterThan(out.sectionVelocity);
    expect(out.mediaVelocity).toBeCloseTo(out.panelVelocity / 7.5, 12);
    // By hand: a row takes 0.327 m, so six of them, three full columns and a half one in 2.4 m.
    expect(bank.panelCount).toBe(24);
    expect(bank.panelArea).toBeCloseTo(6 * 24 * 84 * inch * inch, 9);
  });

  it("at rated velocity in standard air has the record's resistances, clean, half and at change-out", () => {
    // 8 × 8 ft of sixteen panels at 500 fpm of standard air: dry air at 21.1 °C and the pressure that makes it 0.075 lb/ft³.
    const pressure = 1.201384 * 287.042 * 294.25;
    const frame = { width: 96 * inch, height: 96 * inch, hand: "right" } as const;
    const bank = prepare(`${pleated}crack width: 0 mm\n`, frame);
    for (const [filterLoading, expected] of [
      [0, 0.27],
      [0.5, 0.635],
      [1, 1.0],
    ] as const) {
      const at = sampleSectionCondition({ barometricPressure: pressure, filterLoading });
      const flow = 500 * 0.00508 * (96 * inch) ** 2 * 1.201384;
      const air = sampleAir(at.condition, flow, { dryBulb: 21.1, humidityRatio: 0, coldestFilament: 21.1 });
      const out = rateAndCheck(filterBank, bank, air, at);
      expect(out.filterLoss / 249.08891).toBeCloseTo(expected, 3);
      expect(out.gapLoss).toBe(0);
    }
  });

  it("is bypassed little by a good rack, and by a tenth or more through a centimetre (trade article)", () => {
    const at = sampleSectionCondition({ filterLoading: 1 });
    const share = (crack: string) =>
      rateAndCheck(filterBank, prepare(`${pleated}crack width: ${crack}\n`), sampleAir(at.condition, 9), at)
        .bypassShare;
    expect(share("0.1 mm")).toBeLessThan(0.005);
    expect(share("1 mm")).toBeLessThan(0.05);
    expect(share("10 mm")).toBeGreaterThan(0.15);
    expect(share("10 mm")).toBeLessThan(0.4);
  });

  it("lets the crack and the panels see one pressure", () => {
    const at = sampleSectionCondition({ filterLoading: 0.7 });
    const bank = prepare(`${pleated}crack width: 2 mm\n`);
    const out = rateAndCheck(filterBank, bank, sampleAir(at.condition, 9), at);
    const crack = 0.6 * bank.crackArea * Math.sqrt((2 * out.filterLoss) / out.density);
    expect(crack / (out.bypassShare * out.actualAirflow)).toBeCloseTo(1, 8);
  });

  it("adds a prefilter in the same frames", () => {
    const at = sampleSectionCondition({ filterLoading: 0 });
    const rated = (text: string) =>
      rateAndCheck(filterBank, prepare(`${text}crack width: 0 mm\n`), sampleAir(at.condition, 9), at).filterLoss;
    const both = rated("medium: typical MERV 14 rigid 12 in\nprefilter: typical MERV 8 pleated 2 in\n");
    expect(both).toBeCloseTo(
      rated("medium: typical MERV 14 rigid 12 in\n") + rated("medium: typical MERV 8 pleated 2 in\n"),
      6,
    );
  });

  it("balances at every flow and loading, and takes more when it is loaded more", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 14, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.constantFrom("flat", "angled"),
        (flow, filterLoading, rack) => {
          const bank = prepare(`${pleated}rack: ${rack}\n`);
          const loss = (loading: number) => {
            const at = sampleSectionCondition({ filterLoading: loading });
            const air = sampleAir(at.condition, flow, { peakToMeanVelocity: 1.6, freeLiquid: 0.001 });
            return rateAndCheck(filterBank, bank, air, at);
          };
          const now = loss(filterLoading);
          expect(loss(filterLoading + 0.1).totalPressureLoss).toBeGreaterThan(now.totalPressureLoss);
          expect(now.leaving.peakToMeanVelocity).toBeLessThan(1.2);
        },
      ),
      { numRuns: 60 },
    );
  });

  it("refuses a cabinet without room for a panel, and panels that do not fit the length", () => {
    expect(() => prepare(pleated, { width: 0.5, height: 0.5, hand: "right" })).toThrow(/no standard panel/);
    expect(() => prepare(`${pleated}rack: angled\nlength: 10 in`)).toThrow(
      expect.objectContaining({ field: "length" }),
    );
  });
});
