import { describe, expect, it } from "vitest";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleFrame, sampleSectionCondition } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { enteredLoss, specialFields } from "./design.ts";
import { special } from "./kind.ts";

const head = "what: sound attenuator by others\nlength: 5 ft\nmass: 900 lb\nsource: quotation of the supplier\n";
const design = (curve: string) => special.prepare(valuesOfText(specialFields, `${head}curve:\n${curve}`), sampleFrame);
const point = (airflow: string, loss: string) => `  - airflow: ${airflow}\n    pressure loss: ${loss}\n`;
const square = design(point("4 m³/s", "20 Pa") + point("8 m³/s", "80 Pa") + point("12 m³/s", "180 Pa"));

describe("special", () => {
  it("passes through the entered points and follows the power between and beyond them", () => {
    // The points lie on 1.25 Q²: every flow does.
    for (const flow of [0.05, 2, 4, 6, 8, 10, 12, 18])
      expect(enteredLoss(square, flow)).toBeCloseTo(1.25 * flow * flow, 8);
  });

  it("takes a single point for the square of flow", () => {
    expect(enteredLoss(design(point("8 m³/s", "80 Pa")), 4)).toBeCloseTo(20, 9);
  });

  it("carries the curve to the air's own density", () => {
    const at = sampleSectionCondition({ barometricPressure: 80_000 });
    const out = rateAndCheck(special, square, sampleAir(at.condition, 7), at);
    expect(out.totalPressureLoss).toBeCloseTo((1.25 * out.actualAirflow ** 2 * out.density) / 1.201384, 3);
  });

  it("says what is not computed, and when the curve is carried on", () => {
    const at = sampleSectionCondition();
    const notes = (flow: number) => {
      const out = rateAndCheck(special, square, sampleAir(at.condition, flow), at);
      return special.notes?.(square, out, at) ?? [];
    };
    expect(notes(9)).toHaveLength(1);
    expect(notes(0.5)).toHaveLength(2);
  });

  it("refuses a curve that turns back, naming the point", () => {
    expect(() => design(point("8 m³/s", "80 Pa") + point("4 m³/s", "90 Pa"))).toThrow(
      expect.objectContaining({ field: "curve[1].airflow" }),
    );
    expect(() => design(point("8 m³/s", "80 Pa") + point("9 m³/s", "70 Pa"))).toThrow(
      expect.objectContaining({ field: "curve[1].pressureLoss" }),
    );
  });
});
