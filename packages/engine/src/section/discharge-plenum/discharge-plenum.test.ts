import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sampleAir, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { actualAirflow, enthalpyFlow, settleStaticPressure, velocityPressure, waterFlow } from "../station.ts";
import { type DischargePlenumDesign, dischargePlenumFields } from "./design.ts";
import { dischargePlenum } from "./kind.ts";
import { createDischargePlenumRating, type DischargePlenumRating, rateDischargePlenum } from "./rate.ts";

const frame = { width: 2, height: 2, hand: "right" } as const;

function designOf(text: string): DischargePlenumDesign {
  return dischargePlenum.prepare(valuesOfText(dischargePlenumFields, text), frame);
}

/** Air that comes through `area` m², at `total` Pa. */
function rated(design: DischargePlenumDesign, flow: number, area: number, total = 800): DischargePlenumRating {
  const air = sampleAir(sampleSectionCondition().condition, flow, { totalPressure: total, freeLiquid: 0.001 });
  settleStaticPressure(air, area);
  const out = createDischargePlenumRating();
  rateDischargePlenum(design, air, out);
  return out;
}

const texts = [
  "outlet width: 1.2 m\noutlet height: 1 m",
  "outlet width: 1.2 m\noutlet height: 0.8 m\ndirection: up\nedge: rounded",
  "outlet width: 0.8 m\noutlet height: 0.8 m\ndirection: down\noutlets: 2\nedge: bell mouth",
];

describe("discharge plenum", () => {
  // Sudden expansion to twice the area, computed with an open library of fluid mechanics (fluids 1.0.22, sharp diffuser):
  // a quarter of the velocity pressure at which the stream comes.
  it("loses a quarter of the velocity pressure where the area doubles", () => {
    const out = rated(designOf(texts[0]!), 9, 2);
    expect(out.plenumVelocity / out.entryVelocity).toBeCloseTo(0.5, 6);
    expect(out.expansionLoss / velocityPressure(out.entering, 2)).toBeCloseTo(0.25, 6);
  });

  it("loses nothing by spreading when the stream fills the plenum already", () => {
    const out = rated(designOf(texts[0]!), 9, frame.width * frame.height);
    expect(out.expansionLoss).toBeLessThan(1e-12);
  });

  // Rennels' sharp-edged entrance, 0.57 of the duct's velocity pressure, holds for a wall without end; an outlet in the
  // side wall is one.
  it("costs 0.57 velocity pressures at a sharp edge in the side wall", () => {
    const out = rated(designOf("outlet width: 1 m\noutlet height: 1 m\ndirection: up"), 9, 4);
    const duct = 0.5 * out.density * (actualAirflow(out.entering) / 1) ** 2;
    expect(out.ductEntryLoss / duct).toBeCloseTo(0.57, 9);
    expect(out.turnLoss).toBeGreaterThan(0);
  });

  it("keeps its balances to 1e-9 and hands over static pressure at the duct's area", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...texts.map(designOf)),
        fc.double({ min: 0.04, max: 20, noNaN: true }),
        fc.double({ min: 0.3, max: 4, noNaN: true }),
        (design, flow, area) => {
          const { entering, leaving, ...out } = rated(design, flow, area);
          expect(leaving.dryAirFlow).toBe(entering.dryAirFlow);
          expect(waterFlow(leaving)).toBe(waterFlow(entering));
          expect(enthalpyFlow(leaving)).toBe(enthalpyFlow(entering));
          expect(leaving.totalPressure).toBeCloseTo(entering.totalPressure - out.totalPressureLoss, 9);
          expect(leaving.totalPressure - leaving.staticPressure).toBeCloseTo(
            velocityPressure(leaving, design.ductArea),
            5,
          );
          expect(out.totalPressureLoss).toBeGreaterThan(0);
          for (const line of dischargePlenum.working) {
            const shown = out[line.figure as keyof typeof out] as number;
            expect(Math.abs(line.evaluate({ entering, leaving, ...out }, design) - shown)).toBeLessThanOrEqual(
              1e-12 * Math.abs(shown),
            );
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it.each([
    ["outlet width: 3 m\noutlet height: 1 m", "outletWidth"],
    ["outlet width: 1.1 m\noutlet height: 1 m\noutlets: 2", "outletWidth"],
    ["outlet width: 1 m\noutlet height: 2.2 m", "outletHeight"],
    ["outlet width: 1 m\noutlet height: 1.5 m\ndirection: up\nlength: 4 ft", "outletHeight"],
  ])("refuses an opening that does not fit: %s", (text, field) => {
    expect(() => designOf(text)).toThrow(expect.objectContaining({ field }));
  });

  it("opens and is drawn where the duct leaves", () => {
    for (const text of texts) {
      const design = designOf(text);
      const opening = dischargePlenum.layout(design, frame).openings![0]!;
      expect(opening.face).toBe({ horizontal: "exit", up: "top", down: "bottom" }[design.direction]);
      expect(opening.to - opening.from).toBeCloseTo(design.outletHeight, 9);
      const items = dischargePlenum.picture(design, frame, "discharge");
      expect(new Set(items.map((item) => item.key)).size).toBe(items.length);
      expect(items.some((item) => item.reference.part === "duct")).toBe(true);
    }
  });
});
