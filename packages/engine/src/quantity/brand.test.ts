import { describe, expect, expectTypeOf, it } from "vitest";
import {
  type AbsolutePressure,
  type ActualAirflow,
  absoluteFromGaugePressure,
  absolutePressure,
  actualAirflow,
  actualFromStandardAirflow,
  type CoreArea,
  coreArea,
  differenceOfTemperatures,
  dryAirFlowFromStandardAirflow,
  type FreeArea,
  freeArea,
  type GaugePressure,
  type GrossArea,
  gaugeFromAbsolutePressure,
  gaugePressure,
  grossArea,
  type StandardAirflow,
  standardAirflow,
  standardFromActualAirflow,
  type Temperature,
  type TemperatureDifference,
  temperature,
  temperatureDifference,
} from "./brand.ts";
import { standardAirDensity } from "./standard-air.ts";

describe("brands", () => {
  it("are the numbers they mark", () => {
    const marks = [gaugePressure, absolutePressure, temperature, temperatureDifference, actualAirflow, standardAirflow];
    expect([...marks, grossArea, freeArea, coreArea].map((mark, at) => mark(at))).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it("are no two alike, so that none is taken for another", () => {
    type Brands = [
      GaugePressure,
      AbsolutePressure,
      Temperature,
      TemperatureDifference,
      ActualAirflow,
      StandardAirflow,
      GrossArea,
      FreeArea,
      CoreArea,
    ];
    type Alike<List extends unknown[]> = {
      [A in keyof List]: { [B in keyof List]: B extends A ? false : List[A] extends List[B] ? true : false }[number];
    }[number];
    expectTypeOf<Alike<Brands>>().toEqualTypeOf<false>();
    expectTypeOf<GaugePressure>().toExtend<number>();
    expectTypeOf<number>().not.toExtend<GaugePressure>();
  });

  it("turn gauge into absolute at the site's pressure and back", () => {
    // 15 psig at 5000 ft, where the standard atmosphere has 12.23 psia (handbook table): 27.23 psia.
    const psi = 6894.757;
    const absolute = absoluteFromGaugePressure(gaugePressure(15 * psi), absolutePressure(12.23 * psi));
    expect(absolute / psi).toBeCloseTo(27.23, 10);
    expect(gaugeFromAbsolutePressure(absolute, absolutePressure(12.23 * psi))).toBeCloseTo(15 * psi, 6);
    expect(differenceOfTemperatures(temperature(20), temperature(5))).toBe(15);
  });

  it("turn standard into actual airflow by density and back", () => {
    // 0.075 lb/ft³ is 1.2014 kg/m³ (AMCA and ASHRAE standard air); half the density is twice the volume.
    expect(standardAirDensity).toBeCloseTo(1.2014, 4);
    const actual = actualFromStandardAirflow(standardAirflow(8), standardAirDensity / 2);
    expect(actual).toBeCloseTo(16, 12);
    expect(standardFromActualAirflow(actual, standardAirDensity / 2)).toBeCloseTo(8, 12);
    expect(dryAirFlowFromStandardAirflow(standardAirflow(1))).toBe(standardAirDensity);
  });
});
