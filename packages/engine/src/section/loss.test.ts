import { describe, expect, it } from "vitest";
import { filterBankFields } from "./filter-bank/design.ts";
import { filterBank } from "./filter-bank/kind.ts";
import type { Loss } from "./loss.ts";
import { louverFields } from "./louver/design.ts";
import { louver } from "./louver/kind.ts";
import { rateSection } from "./rate-section.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "./sample.test-data.ts";
import { valuesOfText } from "./shipped.test-data.ts";
import { shutOffDamperFields } from "./shut-off-damper/design.ts";
import { shutOffDamper } from "./shut-off-damper/kind.ts";
import { actualAirflow } from "./station.ts";

/** What a line would be with another coefficient, velocity and density: the square law that a ledger line stands for. */
function scaled({ pressure, velocity, density }: Loss, ownFactor: number, factor: number, to: number): number {
  return (pressure * factor * to * to * 1.2) / (ownFactor * velocity * velocity * density);
}

const at = sampleSectionCondition();
const air = sampleAir(at.condition, 6);

describe("a loss in the ledger", () => {
  it("of a louver stands on its free area: 3.5 velocity pressures at 3.6 m/s are 27.22 Pa", () => {
    const design = louver.prepare(valuesOfText(louverFields, "louver: typical drainable 6 in"), sampleFrame);
    const out = louver.createRating();
    louver.rate(design, air, at, out);
    const [blades] = louver.losses?.(design, out) ?? [];
    expect(blades?.plane).toBe("free");
    // Worked illustration of a ledger with the trade's usual coefficient; to its own last digit.
    expect(scaled(blades as Loss, design.louver.lossCoefficient, 3.5, 3.6)).toBeCloseTo(27.22, 1);
    expect((blades?.velocity ?? 0) * (blades?.area ?? 0)).toBeCloseTo(actualAirflow(air), 9);
  });

  it("of an open damper stands on its face: 0.45 velocity pressures at 5 m/s are 6.75 Pa", () => {
    const text = "damper: typical airfoil opposed class 1A\nwidth: 1.5 m\nheight: 1.2 m";
    const design = shutOffDamper.prepare(valuesOfText(shutOffDamperFields, text), sampleFrame);
    const out = shutOffDamper.createRating();
    shutOffDamper.rate(design, air, at, out);
    const [blades, wall] = shutOffDamper.losses?.(design, out) ?? [];
    expect(blades?.bladeAngle).toBe(90);
    expect(scaled(blades as Loss, design.part.damper.openLossCoefficient, 0.45, 5)).toBeCloseTo(6.75, 2);
    // Borda and Carnot behind the wall: (1 − σ)²; ½ (1 − σ) before it.
    const ratio = design.part.area / design.cabinetArea;
    const head = 0.5 * out.density * out.faceVelocity ** 2;
    expect((wall?.pressure ?? 0) / head).toBeCloseTo(0.5 * (1 - ratio) + (1 - ratio) ** 2, 9);
  });

  it("of a filter says between what it lies: half loaded is the mean of clean and change-out", () => {
    const text = "medium: typical MERV 14 rigid 12 in\nprefilter: typical MERV 8 pleated 2 in";
    const design = filterBank.prepare(valuesOfText(filterBankFields, text), sampleFrame);
    const out = filterBank.createRating();
    rateSection(filterBank, design, air, at, out);
    const spans = (filterBank.losses?.(design, out) ?? []).filter((loss) => loss.span !== undefined);
    expect(spans.map((loss) => loss.part)).toEqual(["prefilter, pleated, MERV 8", "filter, rigid, MERV 14"]);
    for (const { pressure, span } of spans) {
      // 0.39 in. clean and 1.00 in. final have the mean 0.695: common practice for a schedule's mean.
      const way = (pressure - (span?.least ?? 0)) / ((span?.most ?? 0) - (span?.least ?? 0));
      expect(0.39 + way * 0.61).toBeCloseTo(0.695, 9);
    }
  });
});
