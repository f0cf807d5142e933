import { describe, expect, it } from "vitest";
import type { QuantityKind, UnitSystem } from "./kind.ts";
import { kindTable } from "./kind-table.ts";
import { displayUnit, fromDisplay, printInUnit, printNumber, printQuantity, toDisplay } from "./print.ts";

describe("printed quantities", () => {
  const shown: [number, QuantityKind, UnitSystem, string][] = [
    [8.68383295, "airflow", "ip", "18,400 cfm"],
    [8.68383295, "airflow", "si", "8.684 m³/s"],
    [684.9945, "pressureDifference", "ip", "2.75 in.wg"],
    [684.9945, "pressureDifference", "si", "685 Pa"],
    [36.6667, "temperature", "ip", "98.0 °F"],
    [-40, "temperature", "si", "-40.0 °C"],
    [10, "temperatureDifference", "ip", "18.0 F°"],
    [0.85, "share", "si", "85.0 %"],
    [45, "angle", "ip", "45.0°"],
    [4.4e-5, "foulingResistance", "si", "0.0000440 m²K/W"],
    [1234567, "energy", "si", "0.3429 kWh"],
    [0, "energy", "si", "0 kWh"],
    [125050, "money", "ip", "1,250.50"],
    [-125050, "money", "si", "-1,250.50"],
    [-0.00001, "temperature", "si", "0.0 °C"],
    [472.44, "pitch", "ip", "12.0 per in"],
    [2.5e-8, "mass", "si", "2.500e-8 kg"],
    [1e22, "mass", "si", "1.000000e+22 kg"],
    [Number.NaN, "mass", "si", "— kg"],
    [Number.POSITIVE_INFINITY, "angle", "ip", "—°"],
  ];
  it.each(shown)("%d as %s in %s is %s", (value, kind, system, text) => {
    expect(printQuantity(value, kind, system)).toBe(text);
  });

  it("are number and unit put together", () => {
    for (const kind of Object.keys(kindTable) as QuantityKind[]) {
      for (const system of ["ip", "si"] as const) {
        const together = `${printNumber(3, kind, system)} ${displayUnit(kind, system)}`.trim().replace(" °", "°");
        expect(printQuantity(3, kind, system).replace(" °", "°")).toBe(together);
      }
    }
  });

  it("are shown and taken back unrounded", () => {
    expect(toDisplay(36.6667, "temperature", "ip")).toBeCloseTo(98.00006, 10);
    expect(fromDisplay(toDisplay(36.6667, "temperature", "ip"), "temperature", "ip")).toBeCloseTo(36.6667, 12);
    expect(fromDisplay(12, "length", "ip")).toBeCloseTo(0.3048, 15);
  });

  it("are printed in the unit that was typed", () => {
    expect(printInUnit(0.508, "velocity", "fpm")).toBe("100 fpm");
    expect(printInUnit(0.508, "velocity", "m/s")).toBe("0.508 m/s");
    expect(printInUnit(0.0889, "length", "ft")).toBe("0.291667 ft");
    expect(printInUnit(1e9, "power", "W")).toBe("1000000000 W");
    expect(printInUnit(125050, "money", "$")).toBe("$1,250.5");
    expect(printInUnit(125050, "money", "")).toBe("1,250.5");
    expect(printInUnit(45, "angle", "°")).toBe("45°");
    expect(printInUnit(1, "length", "cubit")).toBe("39.3701 in");
  });
});
