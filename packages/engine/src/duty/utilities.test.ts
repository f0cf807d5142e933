import { describe, expect, it } from "vitest";
import { standardPressure } from "#fluid/atmosphere";
import { boilingProblem } from "./utilities.ts";

const psi = 6894.757;
const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

describe("water in a loop", () => {
  // Steam tables: 212.0 °F at 14.696 psia, 250.3 °F at 30 psia, 227.9 °F at 19.9 psia (5 psig: 227 °F in trade charts).
  it.each([
    [0, 14.696, 212.0],
    [15.304, 14.696, 250.3],
    [5, 14.696, 227.1],
  ])("under %d psig where the barometer stands at %d psia boils at %d °F", (gauge, barometric, boils) => {
    const at = (fahrenheit: number) => boilingProblem(celsius(fahrenheit), gauge * psi, barometric * psi);
    expect(at(boils - 0.2)).toBeUndefined();
    expect(at(boils + 0.2)?.problem).toMatch(/water boils at/);
  });

  it("boils sooner on a mountain: handbooks give 202.4 °F in an open vessel at 5000 ft", () => {
    const open = (fahrenheit: number) => boilingProblem(celsius(fahrenheit), 0, standardPressure(1524));
    expect(open(201.9)).toBeUndefined();
    expect(open(203.2)).toBeDefined();
  });

  it("says at what temperature, under what pressure, and what would do", () => {
    const found = boilingProblem(celsius(250), 12 * psi, 14.696 * psi);
    expect(found?.problem).toMatch(/24[34]\.\d °F \(11[78]\.\d °C\) under the loop's 12\.0? ?psig|12 psig/);
    expect(found?.allowed).toMatch(/pressure/);
  });
});
