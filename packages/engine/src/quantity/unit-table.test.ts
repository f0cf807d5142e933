import { evaluate, unit as generalUnit } from "mathjs";
import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import published from "../../../../reference/cases/nist_sp811_factors.json" with { type: "json" };
import type { QuantityKind } from "./kind.ts";
import { kindTable } from "./kind-table.ts";
import { parseQuantity, unitOf } from "./parse.ts";
import { canonicalUnit } from "./spelling.ts";

const kinds = Object.keys(kindTable) as QuantityKind[];

describe("factors", () => {
  // Seven digits are printed, so half of the seventh is all that may differ; a factor of leading digit 1 has the
  // coarsest last digit, 5e-7.
  it.each(published.cases)("of $unit ($kind) are those of SP 811", ({ kind, unit, factor }) => {
    const of = unitOf(unit, kind as QuantityKind);
    expect(of?.factor).toBeDefined();
    expect(Math.abs((of?.factor ?? 0) / factor - 1)).toBeLessThan(5e-7);
  });

  // The same units written for a general library that computes them from definitions of its own. It rounds the
  // pound-force and the horsepower in the tenth digit, hence 1e-9.
  const general: [QuantityKind, string, string, string][] = [
    ["airflow", "cfm", "ft^3/minute", "m^3/s"],
    ["airflow", "m³/h", "m^3/hour", "m^3/s"],
    ["airflow", "L/s", "L/s", "m^3/s"],
    ["velocity", "fpm", "ft/minute", "m/s"],
    ["velocity", "mph", "mile/hour", "m/s"],
    ["velocity", "in/h", "in/hour", "m/s"],
    ["pressureDifference", "psi", "psi", "Pa"],
    ["pressureDifference", "psf", "lbf/ft^2", "Pa"],
    ["pressureDifference", "bar", "bar", "Pa"],
    ["pressureDifference", "atm", "atm", "Pa"],
    ["power", "Btu/h", "BTU/hour", "W"],
    ["power", "hp", "hp", "W"],
    ["power", "tons", "12000 BTU/hour", "W"],
    ["energy", "Btu", "BTU", "J"],
    ["energy", "kWh", "kWh", "J"],
    ["massFlow", "lb/h", "lbm/hour", "kg/s"],
    ["liquidFlow", "gpm", "gallon/minute", "m^3/s"],
    ["humidityRatio", "gr/lb", "grain", "lbm"],
    ["enthalpyDifference", "Btu/lb", "BTU/lbm", "J/kg"],
    ["specificHeat", "Btu/lb·°F", "BTU/(lbm degF)", "J/(kg K)"],
    ["density", "lb/ft³", "lbm/ft^3", "kg/m^3"],
    ["specificVolume", "ft³/lb", "ft^3/lbm", "m^3/kg"],
    ["length", "in", "in", "m"],
    ["length", "ft", "ft", "m"],
    ["length", "mil", "mil", "m"],
    ["area", "ft²", "ft^2", "m^2"],
    ["volume", "gal", "gallon", "m^3"],
    ["mass", "lb", "lbm", "kg"],
    ["mass", "oz", "oz", "kg"],
    ["mass", "short tons", "ton", "kg"],
    ["force", "lbf", "lbf", "N"],
    ["massPerArea", "lb/ft²", "lbm/ft^2", "kg/m^2"],
    ["conductance", "Btu/h·°F", "BTU/(hour degF)", "W/K"],
    ["heatTransferCoefficient", "Btu/h·ft²·°F", "BTU/(hour ft^2 degF)", "W/(m^2 K)"],
    ["thermalConductivity", "Btu/h·ft·°F", "BTU/(hour ft degF)", "W/(m K)"],
    ["thermalConductivity", "Btu·in/h·ft²·°F", "BTU inch/(hour ft^2 degF)", "W/(m K)"],
    ["foulingResistance", "h·ft²·°F/Btu", "hour ft^2 degF/BTU", "m^2 K/W"],
    ["leakageFlux", "cfm/ft²", "ft^3/(minute ft^2)", "m/s"],
    ["torque", "lbf·in", "lbf inch", "N m"],
    ["stiffness", "lbf/inch", "lbf/inch", "N/m"],
    ["concentration", "gr/1000 ft³", "grain/(1000 ft^3)", "kg/m^3"],
    ["angle", "rad", "rad", "deg"],
    ["time", "d", "day", "s"],
  ];
  it.each(general)("of %s: %s are those of a general library", (kind, unit, written, si) => {
    const expected = evaluate(`1 * (${written})`).toNumber(si);
    expect(Math.abs((unitOf(unit, kind)?.factor ?? 0) / expected - 1)).toBeLessThan(1e-9);
  });

  it.each([
    [98, "98 °F"],
    [-40, "-40 °F"],
    [671.67, "671.67 °R"],
    [310.15, "310.15 K"],
  ])("of temperatures are those of a general library: %d", (reading, typed) => {
    const unit = typed.split(" ")[1]?.replace("°", "deg") ?? "";
    const expected = generalUnit(reading, unit).toNumber("degC");
    const parsed = parseQuantity(typed, "temperature");
    expect(parsed.ok && Math.abs(parsed.value - expected)).toBeLessThan(1e-10);
  });

  it("of enthalpy count from where inch-pound tables count", () => {
    // psychrolib's inch-pound relation 0.240 t + W (1061 + 0.444 t) and its SI relation 1.006 t + W (2501 + 1.86 t)
    // round their constants, worth up to 0.04 Btu/lb here; without the offset the difference would be 7.7.
    psychrolib.SetUnitSystem(psychrolib.IP);
    for (const [dryBulb, ratio] of [
      [32, 0],
      [55, 0.009],
      [95, 0.0168],
      [0, 0.0005],
    ] as const) {
      const celsius = ((dryBulb - 32) * 5) / 9;
      const si = 1006 * celsius + ratio * (2_501_000 + 1860 * celsius);
      const unit = unitOf("Btu/lb", "enthalpy");
      const shown = si / (unit?.factor ?? 1) + (unit?.zero ?? 0);
      expect(Math.abs(shown - psychrolib.GetMoistAirEnthalpy(dryBulb, ratio))).toBeLessThan(0.04);
    }
  });
});

describe("spellings", () => {
  it("are looked up in the form that the look-up gives them", () => {
    const twisted = kinds.flatMap((kind) =>
      kindTable[kind].units.flatMap((unit) =>
        unit.spellings.filter((spelling) => canonicalUnit(spelling) !== spelling),
      ),
    );
    expect(twisted).toEqual([]);
  });

  it("mean one unit each within a kind", () => {
    for (const kind of kinds) {
      const all = kindTable[kind].units.flatMap((unit) => unit.spellings);
      const doubled = all.filter((spelling, at) => all.indexOf(spelling) !== at);
      expect(doubled, kind).toEqual([]);
    }
  });

  it("are all read, each with the value of its unit", () => {
    for (const kind of kinds) {
      if (kind === "money") continue;
      for (const unit of kindTable[kind].units) {
        for (const spelling of unit.spellings) {
          const typed = `7 ${unit.mega ? spelling.replace(/^m/, "M") : spelling}`;
          const parsed = parseQuantity(typed, kind);
          expect(parsed, `${kind}: ${typed}`).toEqual({
            ok: true,
            value: (7 - unit.zero) * unit.factor,
            unit: unit.name,
          });
        }
      }
    }
  });

  it("of printed names are read as their unit", () => {
    for (const kind of kinds)
      for (const unit of kindTable[kind].units) expect(unitOf(unit.name, kind)?.name).toBe(unit.name);
  });

  it("of the examples are read", () => {
    for (const kind of kinds) expect(parseQuantity(kindTable[kind].example, kind).ok, kind).toBe(true);
  });
});
