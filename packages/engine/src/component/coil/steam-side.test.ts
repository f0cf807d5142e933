import { describe, expect, it } from "vitest";
import {
  steamLatentHeat,
  steamLiquidConductivity,
  steamLiquidSpecificVolume,
  steamLiquidViscosity,
  steamSaturationPressure,
} from "#fluid/steam";
import { condensingCoefficient, drainTemperature, stallAirTemperature, steamTemperatureNeeded } from "./steam-side.ts";

const fahrenheit = (celsius: number) => celsius * 1.8 + 32;
const celsius = (value: number) => (value - 32) / 1.8;
/** °F of saturated steam at a gauge pressure at sea level; the tables' own rounding is 0.1 °F. */
const steamAt = (psig: number) => fahrenheit(drainTemperature(101_325 + psig * 6894.757, 0));

/** Stall onset of a coil sized 1:1 for the rise: °F of entering air. */
function onset(coldest: number, leaving: number, psig: number, drain: number, surplus = 1): number {
  const effectiveness = (surplus * (leaving - coldest)) / (steamAt(psig) - coldest);
  return fahrenheit(stallAirTemperature(celsius(leaving), effectiveness, celsius(drain)));
}

// steam-stall-example: a published 0 to 80 °F coil at 25 psig, and the same relation of constant effectiveness evaluated
// beforehand for other coils, all printed to 0.1 °F.
describe("stall of a modulated steam coil", () => {
  it.each([
    [0, 50, 5, 4.3],
    [0, 50, 15, 9.5],
    [0, 50, 25, 12.7],
    [0, 80, 5, 8.2],
    [0, 80, 15, 17.9],
    [0, 80, 25, 23.6],
    [-10, 55, 5, -4.3],
  ])("a %i to %i °F coil at %i psig stalls above %f °F", (coldest, leaving, psig, published) => {
    expect(Math.abs(onset(coldest, leaving, psig, 212) - published)).toBeLessThan(0.15);
  });

  it("needs 103 °F steam at 70 °F outdoors, a published field example", () => {
    const effectiveness = 80 / steamAt(25);
    const needed = fahrenheit(steamTemperatureNeeded(celsius(70), celsius(80), effectiveness));
    expect(Math.abs(needed - 103)).toBeLessThan(0.7);
  });

  it.each([
    [1, 4.3],
    [1.15, -4.9],
    [1.3, -15],
  ])("stalls in colder air with surplus surface: effectiveness × %f", (surplus, published) => {
    expect(Math.abs(onset(0, 50, 5, 212, surplus) - published)).toBeLessThan(0.25);
  });

  it.each([
    [0, 12.7],
    [1.5, 11.7],
    [5, 9.2],
  ])("stalls in colder air against %f psig of condensate return", (back, published) => {
    expect(Math.abs(onset(0, 50, 25, steamAt(back)) - published)).toBeLessThan(0.2);
  });
});

describe("the condensate film", () => {
  it("is that of the steam functions, put into Nusselt's formula term by term: as near as these are to their equations", () => {
    for (let temperature = 10; temperature <= 203; temperature += 0.7) {
      const p = steamSaturationPressure(temperature);
      const group =
        (steamLiquidConductivity(p) ** 3 * 9.80665 * steamLatentHeat(p)) /
        (steamLiquidSpecificVolume(p) ** 2 * steamLiquidViscosity(p) * 0.02 * 5);
      expect(condensingCoefficient(temperature, 0.02, 5) / (0.612 * group ** 0.25) - 1).toBeCloseTo(0, 5);
    }
  });
});
