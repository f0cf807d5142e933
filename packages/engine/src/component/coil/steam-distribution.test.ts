import { describe, expect, it } from "vitest";
import { steamVapourSpecificVolume, steamVapourViscosity } from "#fluid/steam";
import { sampleCoil } from "./sample-coil.test-data.ts";
import { createSteamPerformance, createSteamWork } from "./steam-coil.ts";
import { createSteamDistribution, type SteamDistributor, steamDistribution } from "./steam-distribution.ts";
import { solveSteamSupply } from "./steam-supply.ts";
import { tubeFriction } from "./tube-side.ts";

const distributor: SteamDistributor = { tubes: 20, length: 2.4, bore: 0.015, orificeDiameter: 0.0032, orifices: 10 };
const pressure = 135_800;

function at(massFlow: number, changes: Partial<SteamDistributor> = {}) {
  const out = createSteamDistribution();
  steamDistribution({ ...distributor, ...changes }, massFlow, pressure, out);
  return out;
}

describe("steam along an inner tube", () => {
  // Momentum of a pipe that loses its flow evenly, in a thousand slices: friction of the local velocity head, and the regain of
  // one inlet head (perry-handbook-1997, K = ½) as the steam comes to rest.
  it("has the pressure that slices of it give", () => {
    const density = 1 / steamVapourSpecificVolume(pressure);
    const inlet = 0.1 / 20 / (density * (Math.PI / 4) * 0.015 ** 2);
    const friction = tubeFriction((density * inlet * 0.015) / steamVapourViscosity(pressure));
    let lost = 0;
    for (let slice = 0; slice < 1000; slice++) {
      const velocity = inlet * (1 - (slice + 0.5) / 1000);
      const change = inlet / 1000;
      lost += ((friction * 2.4) / 1000 / 0.015) * 0.5 * density * velocity ** 2 - density * velocity * change;
    }
    expect(at(0.1).alongTube / lost).toBeCloseTo(1, 4);
    expect(at(0.1).velocity).toBeCloseTo(inlet, 9);
  });

  // perry-handbook-1997: orifices that take ten times the larger of velocity head and change along the pipe leave 5 %.
  it("is 5 % uneven where the orifices take ten times the rest", () => {
    const base = at(0.1);
    const head = 0.5 * base.velocity ** 2 * (1 / steamVapourSpecificVolume(pressure));
    const rest = Math.max(head, Math.abs(base.alongTube));
    const orificeDiameter = distributor.orificeDiameter * (base.orificeDrop / (10 * rest)) ** 0.25;
    expect(at(0.1, { orificeDiameter }).unevenness).toBeCloseTo(0.05, 2);
    expect(at(0.1, { orificeDiameter: 0.008 }).unevenness).toBe(1);
  });

  it("takes a quarter of the drop over orifices at half the load, and stays about as even", () => {
    expect(at(0.05).orificeDrop / at(0.1).orificeDrop).toBeCloseTo(0.25, 9);
    expect(Math.abs(at(0.05).unevenness - at(0.1).unevenness)).toBeLessThan(0.02);
    expect(at(0)).toEqual(createSteamDistribution());
  });
});

describe("a coil on steam of a pressure at its connection", () => {
  const coil = sampleCoil({ rows: 1, circuits: 24 });
  const room = () => ({
    steam: createSteamWork(),
    performance: createSteamPerformance(),
    distribution: createSteamDistribution(),
  });
  const air = { dryBulb: -15, humidityRatio: 0.0008, coldestFilament: -15 };

  it("gives less as its orifices get smaller, never more than on steam of the whole pressure", () => {
    let before = Number.POSITIVE_INFINITY;
    for (const orificeDiameter of [0.05, 0.004, 0.003, 0.002, 0.0015]) {
      const found = room();
      const { steam, distribution, performance } = found;
      const fine = { ...distributor, tubes: 24, orificeDiameter };
      const temperature = solveSteamSupply(coil, fine, 4, air, 170_000, steam, distribution, performance);
      expect(temperature).toBeLessThan(115.2);
      expect(found.performance.heat).toBeLessThan(before);
      expect(Number.isFinite(found.performance.heat)).toBe(true);
      before = found.performance.heat;
    }
  });
});
