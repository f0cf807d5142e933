import { describe, expect, it } from "vitest";
import { printFigure, sectionFigures, unitFigures } from "./figures.ts";
import { unmetOf, unsolvedOf } from "./findings.ts";
import { sampleBench } from "./sample-job.test-data.ts";
import { tellConditions } from "./tell-conditions.ts";

describe("figures", () => {
  it("are printed with their units, counts and factors without", () => {
    expect(printFigure(8.6834, "airflow", "ip")).toBe("18,399 cfm");
    expect(printFigure(-249.08891, "pressureDifference", "ip")).toBe("−1.00 in.wg");
    expect(printFigure(12, "count", "ip")).toBe("12");
    expect(printFigure(0.123456, "factor", "si")).toBe("0.1235");
    expect(printFigure(Number.NaN, "factor", "si")).toBe("—");
  });

  it("of a section and of the unit are those of the rating, and workings end at the very figure", () => {
    const { sound } = sampleBench();
    const rating = sound!.book.rating("wet-bulb-day-0.5")!;
    const { unit } = sound!.job;
    for (const [index, section] of unit.sections.entries()) {
      const figures = sectionFigures(unit, rating, index, "si");
      expect(figures.map((figure) => figure.key)).toEqual(section.behaviour.figures.map((line) => line.figure));
      for (const figure of figures) {
        if (figure.working === undefined) continue;
        expect(printFigure(figure.working.result, figure.working.quantity, "si"), figure.name).toBe(figure.value);
      }
    }
    const supply = unitFigures(unit, rating, "ip").find((figure) => figure.key === "supplyStandardAirflow");
    expect(supply?.value).toBe("6,000 scfm");
  });
});

describe("what is not met", () => {
  it("is found over the conditions that are solved, each thing once at its worst", () => {
    const { book } = sampleBench().sound!;
    expect(unmetOf(book)).toEqual([]);
    book.take(tellConditions(book));
    expect(book.tried).toBe(book.job.conditions.length);
    const unmet = unmetOf(book);
    expect(new Set(unmet.map((each) => `${each.section} ${each.what}`)).size).toBe(unmet.length);
    for (const each of unmet) expect(book.known(each.condition.key)).toBeDefined();
    for (const each of unsolvedOf(book)) expect(each.reason).not.toBe("");
  });
});
