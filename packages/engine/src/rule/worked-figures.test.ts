import { describe, expect, it } from "vitest";
import { leakageFluxFromClass } from "#component/casing-leakage";
import { damperLeakage } from "#component/damper";
import { standardPressure } from "#fluid/atmosphere";
import { density, enthalpyFromHumidityRatio } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import { humidityRatioFromWetBulb } from "#fluid/wet-bulb";
import { metresPerInch, pascalsPerInchOfWater } from "#quantity/inch-pound";
import { standardAirDensity } from "#quantity/standard-air";
import { createAir } from "#section/air";
import { filamentBehind } from "#section/mixing-box/rate";

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const fahrenheit = (degrees: number) => degrees * 1.8 + 32;
const foot = 12 * metresPerInch;
const cfm = foot ** 3 / 60;
const sea = 101_325;

// Figures that go with the list of requirements, TV-n: read in a publication or worked out by hand beforehand from what was
// read there. The others of that list are held where they belong: TV-1, 2, 4 with casing and traps, TV-5, 15, 16 with the
// steam side, TV-7, 17 with springs and fans, TV-8 with the fan section, TV-9 with the fan power limit, TV-14 with steam coils.
describe("figures worked beforehand", () => {
  it("TV-3: class 3 leaks 9.61 cfm for each 100 ft² at 6 in.wg, by the power of 0.65", () => {
    const flux = leakageFluxFromClass(3, 6 * pascalsPerInchOfWater);
    expect((flux / cfm) * 100 * foot ** 2).toBeCloseTo(9.61, 2);
  });

  it("TV-6: 70 % of air at 10 °F with return air at 72 °F is 28.6 °F, and between 19.3 and 50.3 °F where half is mixed", () => {
    const [outside, back] = [celsius(10), celsius(72)];
    const mixed = 0.7 * outside + 0.3 * back;
    expect(fahrenheit(mixed)).toBeCloseTo(28.6, 6);
    const air = { ...createAir(), dryBulb: outside, coldestFilament: outside };
    expect(fahrenheit(filamentBehind(0.5, air, true, back, mixed))).toBeCloseTo(19.3, 1);
    // The warmest stands off the mean by the same share of what it was.
    expect(fahrenheit(mixed + 0.5 * (back - mixed))).toBeCloseTo(50.3, 1);
  });

  it("TV-10: a damper that leaks 3 cfm/ft² at 1 in.wg leaks 6 at 4", () => {
    const leakage = (inches: number) => damperLeakage("1A", inches * pascalsPerInchOfWater) / (cfm / foot ** 2);
    expect(leakage(1)).toBeCloseTo(3, 6);
    expect(leakage(4)).toBeCloseTo(6, 6);
  });

  it("TV-11: on the wet-bulb day of Jacksonville a coil that leaves 52 °F saturated has 1.20 times the dry-bulb day's load", () => {
    const leaving = enthalpyFromHumidityRatio(celsius(52), saturationHumidityRatio(celsius(52), sea));
    const load = (dryBulb: number, wetBulb: number) =>
      enthalpyFromHumidityRatio(celsius(dryBulb), humidityRatioFromWetBulb(celsius(dryBulb), celsius(wetBulb), sea)) -
      leaving;
    // Climatic design data of 0.4 %: 95.8/76.8 °F, and a wet bulb of 80.4 °F; its dry bulb hardly moves the enthalpy.
    for (const dryBulb of [86, 92]) expect(Math.abs(load(dryBulb, 80.4) / load(95.8, 76.8) - 1.2)).toBeLessThan(0.015);
  });

  it.each([
    [2000, 0.943, 0.93],
    [4000, 0.888, 0.864],
    [6000, 0.836, 0.801],
  ])(
    "TV-12: at %i ft density is %f of sea level's by the atmosphere's own temperature, pressure %f",
    (feet, dense, thin) => {
      const pressure = standardPressure(feet * foot);
      expect(pressure / sea).toBeCloseTo(thin, 3);
      // The atmosphere cools 6.5 K for each km from 15 °C.
      const ratio = density(15 - 0.0065 * feet * foot, 0, pressure) / density(15, 0, sea);
      expect(Math.abs(ratio - dense)).toBeLessThan(1.1e-3);
      // At one temperature density goes with pressure alone: the two must not be taken for each other.
      expect(density(21, 0, pressure) / density(21, 0, sea)).toBeCloseTo(thin, 3);
    },
  );

  it("TV-13: 20,000 cfm of standard air dried by 0.0122 drains 132 gph", () => {
    const drained = 20_000 * cfm * standardAirDensity * (0.0205 - 0.0083);
    const gallonsPerHour = (drained / 998 / 0.003785411784) * 3600;
    expect(Math.abs(gallonsPerHour - 132)).toBeLessThan(1);
  });
});
