import { describe, expect, it } from "vitest";
import { steamSaturationPressure, steamSaturationTemperature } from "#fluid/steam";
import { rateAndCheck } from "../balance.test-data.ts";
import { sampleAir, sampleCondition, sampleFrame, sampleOperation } from "../sample.test-data.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { prepareSteamCoil, steamCoilSectionFields } from "./design.ts";
import { steamCoil } from "./kind.ts";
import type { SteamCoilRating } from "./rate.ts";

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const psig = (pressure: number) => 101_325 + pressure * 6894.757;

const design = (text = "{}") => prepareSteamCoil(valuesOfText(steamCoilSectionFields, text), sampleFrame);

function at(pressure: number, leaving: number | undefined, changes: object = {}, operation: object = {}) {
  const steam = { pressure, condensateReturnPressure: 101_325, valveFails: "open" as const, ...changes };
  const utilities = { steam, chilledWater: undefined, heatingWater: undefined };
  return {
    condition: sampleCondition({ season: "heating", utilities }),
    operation: sampleOperation({ coolingLeaving: undefined, heatingLeaving: leaving, ...operation }),
  };
}

/** Rates the coil of `text` in winter air of `entering` °C. */
function rate(text: string, entering: number, where: ReturnType<typeof at>, changes: object = {}): SteamCoilRating {
  const air = sampleAir(where.condition, 8, {
    dryBulb: entering,
    coldestFilament: entering,
    humidityRatio: 0.0005,
    ...changes,
  });
  return rateAndCheck(steamCoil, design(text), air, where);
}

describe("steam coil on a modulating valve", () => {
  it("throttles to its set point, and the steam needed follows from the effectiveness", () => {
    const out = rate("fins: 7 per in", -20, at(psig(15), 8), { dryAirFlow: 13 });
    expect(out.leavingDryBulb).toBeCloseTo(8, 5);
    expect(out.neededSteamTemperature).toBeCloseTo(-20 + 28 / out.effectiveness, 4);
    expect(out.loadShare).toBeLessThan(1);
  });

  it("gives condensate at the latent heat of the coil's own pressure: 1 m³/s from 10 to 30 °C takes 0.0107 kg/s", () => {
    // A published worked example rounds to 0.011 kg/s: 1 m³/s of 1.204 kg/m³ air, atmospheric steam, 2257 kJ/kg.
    const out = rate("rows: 4\nfins: 12 per in\nfinned height: 12 in\nfinned length: 30 in", 10, at(psig(1), 30), {
      dryAirFlow: 1.204,
      humidityRatio: 0,
    });
    expect(out.leavingDryBulb).toBeCloseTo(30, 4);
    expect(out.condensate).toBeGreaterThan(0.01);
    expect(out.condensate).toBeLessThan(0.011);
  });

  it("opens its vacuum breaker where the load asks for less than the atmosphere: part of the surface works", () => {
    const out = rate("rows: 4\nfins: 10 per in", -5, at(psig(5), 8));
    expect(out.activeShare).toBeGreaterThan(0.1);
    expect(out.activeShare).toBeLessThan(1);
    expect(out.warmEnd).toBeGreaterThan(out.leavingDryBulb);
    expect(out.coldEnd).toBe(-5);
    expect(out.coldestTubeWall).toBe(-5);
    expect(out.activeShare * (out.warmEnd + 5)).toBeCloseTo(13, 4);
    expect(out.steamGaugePressure).toBeGreaterThan(-1000);
    expect(out.stalled).toBe(0);
  });

  it("without a vacuum breaker draws a vacuum and stalls against the return, with the tubes as cold as the air", () => {
    const out = rate("rows: 4\nfins: 10 per in\nvacuum breaker: no", -5, at(psig(5), 8));
    expect(out.activeShare).toBe(1);
    expect(out.steamGaugePressure).toBeLessThan(-20_000);
    expect(out.stalled).toBe(1);
    expect(out.freezeMargin).toBe(-5);
    expect(steamCoil.notes?.(design(), out, at(psig(5), 8)).some((note) => /stalled.*burst/.test(note.what))).toBe(
      true,
    );
  });

  it("stalls where its steam is no warmer than the return's saturation, and nowhere else", () => {
    // The coil's own effectiveness at this airflow puts the onset where `stallAirTemperature` says.
    const text = "fins: 7 per in\nvacuum breaker: no\ndrop leg: 0 in";
    const stalledAt = (entering: number) => rate(text, entering, at(psig(15), 8), { dryAirFlow: 13 });
    const onset = stalledAt(-20).stallAirTemperature;
    expect(onset).toBeGreaterThan(-20);
    expect(onset).toBeLessThan(8);
    expect(stalledAt(onset - 0.6).stalled).toBe(0);
    expect(stalledAt(onset + 0.6).stalled).toBe(1);
  });

  it.each([
    ["vacuum breaker: no", "stallAirTemperature"],
    ["vacuum breaker: yes", "breakerAirTemperature"],
  ] as const)("stalls, or opens its breaker, in colder air the more surface it has (%s)", (text, figure) => {
    const onset = (fins: number) => rate(`rows: 2\nfins: ${fins} per in\n${text}`, -20, at(psig(5), 10))[figure];
    expect(onset(10)).toBeLessThan(onset(8));
    expect(onset(12)).toBeLessThan(onset(10));
  });

  it("never stalls while its breaker lets it drain to the atmosphere, and stalls in warmer air the lower the return", () => {
    expect(rate("rows: 2", -20, at(psig(5), 10)).stallAirTemperature).toBeCloseTo(10, 6);
    const against = (back: number) =>
      rate("rows: 2", -20, at(psig(5), 10, { condensateReturnPressure: psig(back) })).stallAirTemperature;
    expect(against(2)).toBeLessThan(against(1));
    expect(against(1)).toBeLessThan(10);
  });

  it("tells how long condensate that stands has to the first ice, and what the return asks of the leg", () => {
    const stalled = rate("rows: 4\nfins: 10 per in\nvacuum breaker: no", -5, at(psig(5), 8));
    expect(stalled.iceAsItStands).toBeGreaterThan(20);
    expect(stalled.iceAsItStands).toBeLessThan(3600);
    expect(stalled.coldestFluid).toBe(-5);
    // A tube that stands full has more to give up than one that has drained.
    const draining = rate("rows: 1\nfins: 6 per in", -20, at(psig(15), 20));
    expect(draining.iceAsItStands).toBe(86_400);
    expect(draining.coldestFluid).toBeGreaterThan(95);
    expect(draining.iceAfterFlowLoss).toBeLessThan(600);
    expect(draining.frozenAfterFlowLoss).toBeGreaterThan(draining.iceAfterFlowLoss);
    // The valve fails open: steam stays in the tubes when the fan stops.
    expect(draining.iceAfterFanLoss).toBe(86_400);
    const shut = rate("rows: 1\nfins: 6 per in", -20, at(psig(15), 20, { valveFails: "closed" }));
    expect(shut.iceAfterFanLoss).toBeGreaterThan(shut.iceAfterFanLossOpen);
    expect(shut.iceAfterFanLossOpen).toBeGreaterThan(shut.iceAfterFlowLoss);
    // steam-coil-guide: 14 in. of leg give about half a psi, 12 in. is the least.
    expect(draining.dropLegHead / 6894.757).toBeCloseTo(0.49, 1);
    expect(stalled.neededDropLeg).toBeGreaterThan(1);
    expect(draining.neededDropLeg).toBeCloseTo(0.305, 9);
  });

  it("asks a foot of freezestat for each square foot of face, and says when it would trip", () => {
    // freezestat-guide: 20 ft of element for 20 ft².
    const where = at(psig(15), 8);
    const out = rate("finned height: 48 in\nfinned length: 60 in", -20, where, { coldestFilament: -25 });
    expect(out.freezestatLength / 0.3048).toBeCloseTo(20, 0);
    // TV-14: 42 ft of it for a face of 42 ft², three elements of 20 ft.
    const large = rate("finned height: 72 in\nfinned length: 84 in", -20, where, { coldestFilament: -25 });
    expect(large.freezestatLength / 0.3048).toBeCloseTo(42, 0);
    const cold = rate("rows: 1\nfins: 4 per in", -25, at(psig(2), 2));
    expect(cold.freezestatMargin).toBeLessThan(0);
    const notes = steamCoil.notes?.(design(), cold, at(psig(2), 2)) ?? [];
    expect(notes.some(({ what }) => /freezestat trips/.test(what))).toBe(true);
  });

  it("says what is missed when the coil is too small", () => {
    const where = at(psig(2), 40);
    const out = rate("rows: 1\nfins: 4 per in", -25, where);
    expect(out.loadShare).toBeCloseTo(1, 9);
    expect(steamCoil.shortfalls?.(design(), out, where)[0]?.wanted).toBe(40);
  });
});

describe("steam coil on a two-position valve", () => {
  const text = "control: two-position valve\nrows: 1";

  it("is full on in cold air and off in mild air", () => {
    const cold = rate(text, -10, at(psig(5), 5));
    // Steam of 5 psig at the connection, less what inner tubes and orifices take.
    expect(cold.distributorLoss).toBeGreaterThan(0);
    expect(cold.connectionGaugePressure / (psig(5) - 101_325)).toBeCloseTo(1, 3);
    expect(cold.steamTemperature).toBeCloseTo(steamSaturationTemperature(psig(5) - cold.distributorLoss), 3);
    expect(cold.leavingDryBulb).toBeGreaterThan(5);
    const mild = rate(text, 7, at(psig(5), 10));
    expect(mild.capacity).toBe(0);
    expect(mild.leavingDryBulb).toBeCloseTo(7, 9);
  });

  // Its steam stays at what the line gives: the load does not throttle it, so no weather makes it stall; a return above
  // the line's own pressure does, whatever the weather.
  it("does not stall by the weather, and always against a return above its steam", () => {
    for (const entering of [-20, 0, 3]) {
      const out = rate(`${text}\nvacuum breaker: no`, entering, at(psig(5), 5, { condensateReturnPressure: psig(2) }));
      expect(out.stalled).toBe(0);
      expect(out.stallAirTemperature).toBeGreaterThan(100);
    }
    const where = at(psig(5), 5, { condensateReturnPressure: psig(8) });
    const against = rate(text, -10, where);
    expect(against.stalled).toBe(1);
    expect(against.stallAirTemperature).toBe(-10);
    const said = (steamCoil.notes?.(design(text), against, where) ?? []).map(({ what }) => what).join("\n");
    expect(said).toMatch(/stalled: .*freezing; tubes burst/);
  });

  it("says that freezing air meets a shut valve where it opens below freezing only", () => {
    const said = (more: string) => {
      const where = at(psig(5), 5);
      const out = rate(`${text}\n${more}`, -10, where);
      return (steamCoil.notes?.(design(`${text}\n${more}`), out, where) ?? []).map(({ what }) => what).join("\n");
    };
    expect(said("opens below: 25 °F")).toMatch(/opens below 25\.0 °F .* freezing air meets a coil without steam/);
    expect(said("opens below: 40 °F")).not.toMatch(/without steam/);
    expect(said("opens below: 40 °F")).toMatch(/heats the air .* above what is wanted/);
  });
});

describe("customary ranges of certified steam ratings", () => {
  // From memory of the published standard: air -20–100 °F, 200–1500 fpm; steam 2–250 psig.
  it.each([
    [-20, 5, 8, false],
    [-30, 5, 8, true],
    [-20, 1, 8, true],
    [-20, 5, 1.5, true],
  ])("air of %d °C, steam of %d psig, %d kg/s: outside %s", (entering, steam, dryAirFlow, isOutside) => {
    const where = at(psig(steam), 60);
    const out = rate("rows: 2", entering, where, { dryAirFlow });
    const notes = steamCoil.notes?.(design("rows: 2"), out, where) ?? [];
    expect(notes.some(({ what }) => /customarily certified/.test(what))).toBe(isOutside);
  });
});

describe("steam coil when things fail", () => {
  it.each([0.04, 0.5, 8])("keeps its balances with the fan stopped at %f kg/s of air", (dryAirFlow) => {
    for (const valveFails of ["open", "closed"] as const) {
      const where = at(psig(5), undefined, { valveFails }, { fansRunning: false });
      const out = rate("{}", -18, where, { dryAirFlow });
      expect(out.capacity > 0).toBe(valveFails === "open");
      if (valveFails === "closed") expect(out.coldestTubeWall).toBe(-18);
    }
  });

  it("keeps its balances where snow enters", () => {
    for (const entering of [-12, -0.5, 1]) rate("rows: 2", entering, at(psig(5), 4), { freeLiquid: 0.01 });
  });
});

describe("steam coil, filament and saturation", () => {
  it("heats the coldest filament at least as much as the mean", () => {
    const out = rate("rows: 2\nvacuum breaker: no", -10, at(psig(15), 20), { coldestFilament: -22 });
    expect(out.leaving.coldestFilament + 22).toBeGreaterThanOrEqual(out.leaving.dryBulb + 10);
  });

  it("has a saturated coil: temperature and pressure belong together", () => {
    const out = rate("rows: 2", celsius(0), at(psig(25), celsius(50)));
    expect(out.steamPressure / steamSaturationPressure(out.steamTemperature)).toBeCloseTo(1, 9);
  });
});

describe("inner tubes of a steam coil", () => {
  const open = (text: string) => rate(`control: two-position valve\nrows: 1\n${text}`, -10, at(psig(15), 5));
  const notes = (text: string) => {
    const out = open(text);
    return (steamCoil.notes?.(design(text), out, at(psig(15), 5)) ?? []).map(({ what }) => what).join("\n");
  };

  it("with finer or fewer orifices take more of the pressure, and give the air less", () => {
    const usual = open("");
    for (const text of ["orifice: 0.09 in", "orifice pitch: 18 in"]) {
      expect(open(text).orificeDrop).toBeGreaterThan(usual.orificeDrop);
      expect(open(text).capacity).toBeLessThan(usual.capacity);
    }
    expect(open("inner tube: 3/4 in").innerTubeVelocity).toBeLessThan(usual.innerTubeVelocity);
    expect(open("inner tube wall: 0.05 in").innerTubeVelocity).toBeGreaterThan(usual.innerTubeVelocity);
  });

  it("says where steam is spread unevenly, where orifices throttle, and where they are far apart", () => {
    expect(notes("orifice: 0.25 in")).toMatch(/spread the steam unevenly/);
    expect(notes("orifice: 0.06 in")).toMatch(/take .* off the steam's pressure/);
    expect(notes("orifice pitch: 15 in")).toMatch(/guides ask for 9 to 12 in/);
  });

  it("refuses an inner tube that does not fit", () => {
    expect(() => design("inner tube: 1 in")).toThrow(/leaves condensate no way out/);
    expect(() => design("inner tube: 1/4 in\ninner tube wall: 0.09 in")).toThrow(/no bore left/);
  });
});
