import { describe, expect, it } from "vitest";
import { humidityRatioFromWetBulb } from "#fluid/wet-bulb";
import type { Fields } from "#form/field";
import { readForm } from "#form/read";
import { standardAirDensity } from "#quantity/standard-air";
import { rateAndCheck } from "../balance.test-data.ts";
import { chilledWaterCoil } from "../chilled-water-coil/kind.ts";
import { misses } from "../declared.ts";
import { declaredNotes } from "../declared-notes.ts";
import { hotWaterCoil } from "../hot-water-coil/kind.ts";
import { recoveryCoil } from "../recovery-coil/kind.ts";
import { sampleAir, sampleCondition, sampleFrame, sampleOperation } from "../sample.test-data.ts";
import { shippedCatalogue, valuesOfText } from "../shipped.test-data.ts";
import { steamCoil } from "../steam-coil/kind.ts";
import { steamCoilFaceBypass } from "../steam-coil-face-bypass/kind.ts";

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const cfm = 0.3048 ** 3 / 60;
const gpm = (231 * 0.0254 ** 3) / 60;
const mbh = 293.07107;

const declared = (lines: readonly string[]) => `declared rating:\n${lines.map((line) => `  ${line}`).join("\n")}`;

/** 16 000 scfm of 90/78 °F air on 44 °F water, 230 gpm: invented. */
const coolingPoint = [
  "number: Q-4471",
  "revision: 2",
  "airflow: 16000 cfm",
  "entering dry bulb: 90 °F",
  "entering wet bulb: 78 °F",
  "flow: 230 gpm",
  "entering liquid: 44 °F",
  "capacity: 1300 MBH",
];

const chilledWater = {
  liquid: { substance: "water", massFraction: 0 } as const,
  supplyTemperature: celsius(44),
  temperatureChange: undefined,
  massFlow: undefined,
  valveFails: "closed" as const,
  pumpRunsWhenStopped: false,
};
const utilities = { steam: undefined, chilledWater, heatingWater: undefined };

/** The chilled-water coil with its valve open at a state of air, and its declared rating beside. */
function cooled(rating: readonly string[], dryBulb = 90, wetBulb = 78, flow = 16_000, more = "") {
  const text = `full flow: 230 gpm\n${more}${declared(rating)}`;
  const design = chilledWaterCoil.prepare(valuesOfText(chilledWaterCoil.fields, text), sampleFrame);
  const air = {
    dryBulb: celsius(dryBulb),
    coldestFilament: celsius(dryBulb),
    humidityRatio: humidityRatioFromWetBulb(celsius(dryBulb), celsius(wetBulb), 101_325),
  };
  const at = { condition: sampleCondition({ utilities }), operation: sampleOperation({ coolingLeaving: -20 }) };
  const out = rateAndCheck(chilledWaterCoil, design, sampleAir(at.condition, flow * cfm * standardAirDensity, air), at);
  const comparison = chilledWaterCoil.declared?.(design, out, at);
  if (comparison === undefined) throw new Error("nothing declared");
  return { out, comparison };
}

describe("a declared rating of a chilled-water coil", () => {
  it("stands beside our rating of the same point: at the very condition both ways of asking agree", () => {
    const { out, comparison } = cooled([
      ...coolingPoint,
      "sensible capacity: 600 MBH",
      "leaving dry bulb: 53 °F",
      "leaving wet bulb: 52.7 °F",
      "leaving liquid: 55.3 °F",
      "air pressure drop: 0.9 in.wg",
      "air pressure drop of: wet fins",
      "liquid pressure drop: 12 ft wg",
    ]);
    const ours = Object.fromEntries(comparison.lines.map((line) => [line.what, line.ours]));
    // The section starts its march afresh and finds the flow from its share, so that only the tolerances of both differ.
    expect(ours["total capacity"]).toBeCloseTo(out.capacity, -2);
    expect(ours["sensible capacity"]).toBeCloseTo(out.sensibleCapacity, -2);
    expect(ours["leaving dry bulb"]).toBeCloseTo(out.leavingDryBulb, 2);
    // The section's wet bulb is at its own leaving static pressure, some 200 Pa lower: a hundredth of a degree.
    expect(ours["leaving wet bulb"]).toBeCloseTo(out.leavingWetBulb, 1);
    expect(ours["leaving liquid"]).toBeCloseTo(out.liquidLeaving, 3);
    expect(ours["air pressure drop, wet fins"]).toBeCloseTo(out.totalPressureLoss, 0);
    expect(ours["liquid pressure drop"]).toBeCloseTo(out.liquidPressureDrop, -1);
    const [capacity] = comparison.lines;
    expect(capacity?.difference).toBeCloseTo((1300 * mbh) / out.capacity - 1, 4);
    expect(comparison.circumstances).toEqual([]);
  });

  it("says where the condition asks more than was declared, and where it only differs", () => {
    const { comparison } = cooled(coolingPoint, 94, 80, 17_000);
    const asksMore = comparison.circumstances.filter((each) => each.asksMore).map((each) => each.what);
    expect(asksMore).toEqual(["airflow, standard", "entering dry bulb", "entering wet bulb"]);
    const notes = declaredNotes(comparison);
    const note = notes.find(({ what }) => what.includes("asks more"));
    expect(note?.weight).toBe("caution");
    expect(note?.what).toMatch(/entering wet bulb 80\.0 °F \(26\.7 °C\) here, 78\.0 °F \(25\.6 °C\) declared/);
    const easier = cooled(coolingPoint, 86, 74, 15_000).comparison;
    expect(easier.circumstances.some((each) => each.asksMore)).toBe(false);
    expect(declaredNotes(easier).at(-1)?.weight).toBe("information");
  });

  it("points out another altitude, glycol, rows, fins, circuits and dry fins where they run wet", () => {
    const { comparison } = cooled([
      ...coolingPoint,
      "altitude: 5000 ft",
      "glycol: propylene glycol",
      "concentration: 25 %",
      "rows: 6",
      "fins: 10 per in",
      "circuits: 3",
      "air pressure drop: 0.7 in.wg",
    ]);
    expect(comparison.circumstances.map((each) => each.what)).toEqual([
      "density of the entering air",
      "glycol by mass",
    ]);
    const remarks = comparison.remarks.join("\n");
    expect(remarks).toMatch(/declared with 6 rows, the job's coil has 8/);
    expect(remarks).toMatch(/declared with 10 per in fins, the job's coil has 12 per in/);
    expect(remarks).toMatch(/declared with 3 circuits/);
    expect(remarks).toMatch(/declared with propylene glycol, the job's coil is fed with water/);
    expect(remarks).toMatch(/of dry fins, and at its own point the fins run wet, by ours \d+ % more/);
  });

  it("finds a capacity that its own water does not carry", () => {
    // 500 Btu/h per gpm and F°, the trade's constant of water (common practice, no source): 100 gpm, 12 F° are 600 MBH. It
    // counts 8.33 lb/gal and 1 Btu/lb°F, which cold water meets within 0.5 %; the remark begins at 3 %.
    const point = coolingPoint.map((line) => (line.startsWith("flow") ? "flow: 100 gpm" : line));
    const at = (capacity: string) =>
      cooled([...point.slice(0, -1), `capacity: ${capacity}`, "leaving liquid: 56 °F"]).comparison.remarks;
    expect(at("600 MBH")).toEqual([]);
    expect(at("500 MBH").join()).toMatch(/liquid's flow and temperatures come to (19|20)\.\d % more heat/);
  });

  it("cautions where declared and ours lie further apart than certified ratings may", () => {
    const { comparison, out } = cooled([...coolingPoint.slice(0, -1), "capacity: 2500 MBH"]);
    expect(misses(comparison.lines[0]!)).toBe(true);
    expect(declaredNotes(comparison)[0]?.weight).toBe("caution");
    const close = `capacity: ${((1.02 * out.capacity) / mbh).toFixed(1)} MBH`;
    const agreed = cooled([...coolingPoint.slice(0, -1), close]).comparison;
    expect(declaredNotes(agreed)[0]).toMatchObject({ weight: "information" });
    expect(declaredNotes(agreed)[0]?.what).toContain(
      "declared rating Q-4471, revision 2 over ours at its own point: total capacity +2.0 %",
    );
  });

  it("says nothing of the air where the coil rests", () => {
    expect(cooled(coolingPoint, 40, 38).comparison.circumstances).toEqual([]);
  });
});

describe("declared ratings of heating and recovery coils", () => {
  const heated = (kind: typeof steamCoil | typeof steamCoilFaceBypass, lines: readonly string[]) => {
    const design = kind.prepare(valuesOfText(kind.fields, declared(lines)) as never, sampleFrame);
    const steam = { pressure: 101_325 + 5 * 6894.757, condensateReturnPressure: 101_325, valveFails: "open" as const };
    const condition = sampleCondition({
      season: "heating",
      utilities: { steam, chilledWater: undefined, heatingWater: undefined },
    });
    const at = { condition, operation: sampleOperation({ coolingLeaving: undefined, heatingLeaving: 60 }) };
    const cold = { dryBulb: celsius(0), coldestFilament: celsius(0), humidityRatio: 0 };
    const air = sampleAir(condition, 10_000 * cfm * standardAirDensity, cold);
    const out = rateAndCheck(kind as typeof steamCoil, design as never, air, at);
    const comparison = (kind as typeof steamCoil).declared?.(design as never, out, at);
    return { out, comparison: comparison! };
  };
  // 1.08 Btu/h per scfm and F°, and 960 Btu/lb of steam at 5 psig, as every steam table has it: 10 000 scfm warmed by 50 F°
  // take 540 MBH and 562 lb/h.
  const point = [
    "number: S-1",
    "airflow: 10000 cfm",
    "entering dry bulb: 0 °F",
    "leaving dry bulb: 50 °F",
    "steam pressure: 5 psig",
    "capacity: 540 MBH",
    "condensate: 562 lb/h",
  ];

  it("rates a steam coil with its valve open, and finds its air, capacity and condensate in agreement", () => {
    const { out, comparison } = heated(steamCoil, point);
    expect(comparison.remarks).toEqual([]);
    expect(comparison.circumstances).toEqual([]);
    const ours = Object.fromEntries(comparison.lines.map((line) => [line.what, line.ours]));
    expect(ours["total capacity"]).toBeCloseTo(out.fullCapacity, 1);
    // The latent heat is that of the steam in the tubes, a little below the connection's: 0.3 % in 1 psi.
    expect((ours.condensate! / ours["total capacity"]!) * 960 * 2326).toBeCloseTo(1, 2);
  });

  it("points out a wrong condensate, a wrong leaving air and a coil of other rows", () => {
    const odd = point.map((line) => line.replace("562 lb/h", "700 lb/h").replace("50 °F", "70 °F"));
    const { remarks } = heated(steamCoil, [...odd, "rows: 2"]).comparison;
    expect(remarks).toHaveLength(3);
    expect(remarks.join("\n")).toMatch(/airflow and dry bulbs come to (39|40|41)\.\d % more/);
  });

  it("takes a face-and-bypass coil with all air over its lanes", () => {
    const { out, comparison } = heated(steamCoilFaceBypass, point);
    const [capacity] = comparison.lines;
    // The section lets 3 % of the air slip past the lanes, so that its own full capacity stays a little below.
    expect(capacity!.ours).toBeGreaterThan(out.fullCapacity);
    expect(capacity!.ours).toBeLessThan(1.03 * out.fullCapacity);
  });

  it("holds a hot-water coil and a recovery coil as sensible, each way that heat can go", () => {
    const liquid = ["number: H-2", "airflow: 10000 cfm", "flow: 60 gpm", "capacity: 400 MBH"];
    const warm = [...liquid, "entering dry bulb: 20 °F", "entering liquid: 180 °F"];
    const hot = hotWaterCoil.prepare(valuesOfText(hotWaterCoil.fields, declared(warm)), sampleFrame);
    const resting = hotWaterCoil.createRating();
    const at = { condition: sampleCondition(), operation: sampleOperation() };
    const first = hotWaterCoil.declared?.(hot, resting, at)?.lines[0];
    // 60 gpm of 180 °F water against 20 °F air in two rows: no more than the water could give up, no less than a tenth of it.
    const most = 60 * gpm * 970 * 4190 * (160 / 1.8);
    expect(first!.ours).toBeLessThan(most);
    expect(first!.ours).toBeGreaterThan(0.1 * most);
    const exhaust = "exhaust: {}\nconcentration: 30 %\n";
    for (const ends of [
      ["entering dry bulb: 20 °F", "entering liquid: 50 °F"],
      ["entering dry bulb: 95 °F", "entering liquid: 75 °F"],
    ]) {
      const values = valuesOfText(recoveryCoil.fields, exhaust + declared([...liquid, ...ends]));
      const loop = recoveryCoil.prepare(values, sampleFrame);
      const comparison = recoveryCoil.declared?.(loop, recoveryCoil.createRating(), at);
      expect(comparison!.lines[0]!.ours).toBeGreaterThan(0);
      expect(comparison!.remarks.join()).toContain("declared with water, the job's coil is fed with propylene glycol");
    }
  });
});

describe("declared ratings that cannot be", () => {
  const context = { component: shippedCatalogue.component, componentNames: shippedCatalogue.names };
  const problemsOf = (fields: Fields, lines: readonly string[]) =>
    readForm(declared(lines), fields, context).problems.map(({ field, problem }) => `${field}: ${problem}`);
  const changed = (from: string, to: string) => coolingPoint.map((line) => (line.startsWith(from) ? to : line));

  it.each([
    [
      "a wet bulb above the dry bulb",
      changed("entering wet", "entering wet bulb: 95 °F"),
      /wet bulb is above the dry bulb/,
    ],
    [
      "air that cannot be so dry",
      changed("entering wet", "entering wet bulb: 20 °F"),
      /no air of this dry bulb has so low/,
    ],
    ["water warmer than the air", changed("entering liquid", "entering liquid: 120 °F"), /needs liquid below the air/],
    ["frozen water", changed("entering liquid", "entering liquid: 20 °F"), /the liquid enters frozen/],
    ["air that leaves warmer", [...coolingPoint, "leaving dry bulb: 99 °F"], /the coil cools the air/],
    ["more sensible than total", [...coolingPoint, "sensible capacity: 1400 MBH"], /more sensible than total/],
    ["glycol without its share", [...coolingPoint, "glycol: ethylene glycol"], /glycol and concentration do not agree/],
    [
      "no wet bulb",
      coolingPoint.filter((line) => !line.startsWith("entering wet")),
      /wet bulb of a cooling coil is not given/,
    ],
    ["no number", coolingPoint.slice(1), /number/],
    ["a capacity without a unit", changed("capacity", "capacity: 1300"), /capacity/],
  ])("refuses %s", (_, lines, words) => {
    const problems = problemsOf(chilledWaterCoil.fields, lines);
    expect(problems.join("\n")).toMatch(words);
  });

  it("refuses a steam coil that would cool", () => {
    const lines = ["number: S", "airflow: 5000 cfm", "entering dry bulb: 40 °F", "leaving dry bulb: 30 °F"];
    const problems = problemsOf(steamCoil.fields, [...lines, "steam pressure: 5 psig", "capacity: 100 MBH"]);
    expect(problems.join()).toMatch(/leaving dry bulb: the coil heats the air/);
  });
});
