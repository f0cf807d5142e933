import { describe, expect, it } from "vitest";
import { density } from "#fluid/moist-air";
import type { SectionKind } from "#section/contract";
import { sectionKinds } from "#section/kinds";
import { sampleCondition } from "#section/sample.test-data";
import { valuesOfText } from "#section/shipped.test-data";
import { assembleUnit } from "#unit/assemble";
import { usualCasingBuild } from "#unit/casing-build.test-data";
import { createUnitRating, rateUnit } from "#unit/rate-unit";
import type { Unit } from "#unit/unit";
import { bladesSet, proposeBladeAngles } from "./blade-angles.ts";
import { damperStates } from "./damper-state.ts";
import { shareTable } from "./share-table.ts";

const casing = {
  width: 2.4,
  height: 2,
  connectionHand: "right",
  panelThickness: 0.05,
  innerSkin: "solid",
  railHeight: 0.2,
  leakageClass: 0,
  ...usualCasingBuild,
} as const;

/** Hood, mixing box, filters, fan; no leakage, so that what passes the box is what leaves the unit. */
function unitWith(outside: string, back: string, control = "hand set"): Unit {
  const damper = "  damper: typical airfoil opposed class 1A\n";
  const texts = [
    ["intake hood", "projection: 48 in"],
    [
      "mixing box",
      `control: ${control}\noutside air:\n${damper}  ${outside}\n${back === "" ? "" : `return air:\n${damper}  ${back}\n`}`,
    ],
    ["filter bank", "medium: typical MERV 8 pleated 4 in"],
    ["fan", "diameter: 24.5 in\nmotor power: 30 hp"],
  ];
  const sections = texts.map(([name, text]) => {
    const kind = (sectionKinds as unknown as readonly SectionKind[]).find((each) => each.name === name) as SectionKind;
    return { name: name as string, kind, values: valuesOfText(kind.fields, text as string) };
  });
  const { unit, problems } = assembleUnit(casing as never, sections);
  expect(problems).toEqual([]);
  return unit as Unit;
}

const wideOutside = "width: 2 m\n  height: 1.2 m";
const smallReturn = "width: 1.2 m\n  height: 0.5 m";
const condition = sampleCondition({
  returnAir: { dryBulb: 23, humidityRatio: 0.0088, staticPressure: 20, outsideAirShare: 0.85 },
});
/** The same with the return duct below outdoors, as behind a long duct without a fan of its own. */
const drawn = sampleCondition({ returnAir: { ...condition.returnAir, staticPressure: -10 } });
const tightOutside = "width: 1.5 m\n  height: 0.9 m";

function solve(unit: Unit, at = condition) {
  const rating = rateUnit(unit, at, createUnitRating(unit, at));
  expect(rating.reason).toBe("");
  return rating;
}

describe("blade angles proposed for hand-set dampers", () => {
  it("hold the share, so that both paths meet at one pressure by the published blade law", () => {
    const unit = unitWith(wideOutside, smallReturn);
    const proposal = proposeBladeAngles(unit, condition);
    expect(proposal?.held).toBe(true);
    expect(proposal?.share).toBeCloseTo(0.85, 4);
    const { outsideBladeAngle, returnBladeAngle } = proposal as NonNullable<typeof proposal>;
    const rating = solve(bladesSet(unit, "hand set", outsideBladeAngle, returnBladeAngle));
    expect(rating.outsideAirShare).toBeCloseTo(0.85, 4);
    // By hand, ASHRAE 825-RP: ln K = −1.51 + 0.105 (90 − angle) for opposed blades from 15 to 55 degrees, and one velocity
    // pressure lost in the box; what the return opening has above the box's pressure is just that.
    expect(returnBladeAngle).toBeGreaterThan(15);
    expect(returnBladeAngle).toBeLessThan(55);
    const loss = Math.exp(-1.51 + 0.105 * (90 - returnBladeAngle));
    const { dryBulb, humidityRatio, staticPressure } = condition.returnAir;
    const air = density(dryBulb, humidityRatio, condition.barometricPressure + staticPressure);
    const velocity = (rating.operation.returnDryAirFlow * (1 + humidityRatio)) / air / (1.2 * 0.5);
    const box = rating.sections[1]?.leaving.totalPressure ?? Number.NaN;
    // 0.1 Pa of about 40: the hand calculation takes no part of the program's pressures but the box's.
    expect(Math.abs(staticPressure - loss * 0.5 * air * velocity ** 2 - box)).toBeLessThan(0.1);
  });

  it("leave the outside blades open, and close them only where the return path takes too much", () => {
    expect(proposeBladeAngles(unitWith(wideOutside, smallReturn), condition)?.outsideBladeAngle).toBe(90);
    const against = sampleCondition({ returnAir: { ...condition.returnAir, staticPressure: -120 } });
    const unit = unitWith(wideOutside, smallReturn);
    const proposal = proposeBladeAngles(unit, against);
    expect(proposal?.held).toBe(true);
    expect(proposal?.returnBladeAngle).toBe(90);
    expect(proposal?.outsideBladeAngle).toBeLessThan(60);
    const set = bladesSet(unit, "hand set", proposal?.outsideBladeAngle ?? 0, 90);
    expect(solve(set, against).outsideAirShare).toBeCloseTo(0.85, 4);
  });

  it("tell the share at whole degrees, near the one wanted", () => {
    const proposal = proposeBladeAngles(unitWith(wideOutside, smallReturn), condition);
    // Half a degree changes K by a factor of exp(0.105/2), 5 %, and so the return flow by 3 %: half a hundredth of 15 %.
    expect(Math.abs((proposal?.shareAtWholeDegrees ?? 0) - 0.85)).toBeLessThan(0.006);
    expect(proposal?.shareAtWholeDegrees).not.toBe(proposal?.share);
  });

  it("say why where no angle does", () => {
    const tiny = proposeBladeAngles(unitWith(wideOutside, "width: 0.3 m\n  height: 0.2 m"), {
      ...condition,
      returnAir: { ...condition.returnAir, outsideAirShare: 0.5, staticPressure: -2000 },
    });
    expect(tiny?.held).toBe(false);
    expect(tiny?.reason).toMatch(/^with the share held so, the (motor|wheel)/);
    const stopped = proposeBladeAngles(unitWith(wideOutside, "width: 0.3 m\n  height: 0.2 m"), {
      ...condition,
      returnAir: { ...condition.returnAir, outsideAirShare: 0.5, staticPressure: -60_000 },
    });
    expect(stopped?.held).toBe(false);
    expect(stopped?.reason).toMatch(/too small/);
    expect(proposeBladeAngles(unitWith(wideOutside, ""), condition)).toBeUndefined();
  });
});

describe("share at other flows, filters and winds", () => {
  const unit = unitWith(tightOutside, smallReturn);
  const { outsideBladeAngle = 90, returnBladeAngle = 90 } = proposeBladeAngles(unit, drawn) ?? {};
  const rows = shareTable(bladesSet(unit, "hand set", outsideBladeAngle, returnBladeAngle), drawn, 10);
  const rowOf = (words: string) => rows.find((row) => row.words === words);
  const share = (words: string) => rowOf(words)?.share ?? Number.NaN;

  it("is that of design as the condition has it, and the same whatever stands behind the box", () => {
    expect(share("as the condition has it")).toBeCloseTo(0.85, 4);
    expect(share("filters clean")).toBeCloseTo(0.85, 4);
    expect(share("filters at change-out")).toBeCloseTo(0.85, 4);
  });

  it("rises as the flow falls while the return duct is held below outdoors, and with wind onto the intake", () => {
    expect(share("80 % of the flow")).toBeGreaterThan(share("as the condition has it"));
    // At 40 % the box is hardly below outdoors: its air leaves backwards through the return opening.
    expect(share("40 % of the flow")).toBe(1);
    expect(rowOf("40 % of the flow")?.returnDryAirFlow).toBeLessThan(0);
    expect(share("wind onto the intake")).toBeGreaterThan(0.87);
    expect(share("intake in the lee")).toBeLessThan(0.83);
  });

  it("is held by an actuator wherever its damper does not come to an end", () => {
    const driven = shareTable(bladesSet(unit, "actuated", 60, 90), drawn, 10);
    const kept = driven.filter((row) => Math.abs(row.share - 0.85) < 1e-6);
    expect(kept.length).toBeGreaterThanOrEqual(6);
    expect(driven.every((row) => row.solved)).toBe(true);
  });
});

describe("dampers as they stand", () => {
  const unit = unitWith(wideOutside, smallReturn);
  const rating = solve(bladesSet(unit, "hand set", 90, 40));
  const [outside, back] = damperStates(unit, rating);

  it("have an authority of the open damper over the rest of its path", () => {
    expect(outside?.name).toBe("outside-air damper");
    expect(outside?.loss).toBe(outside?.openLoss);
    const hood = rating.sections[0]?.totalPressureLoss ?? 0;
    const box = rating.sections[1]?.totalPressureLoss ?? 0;
    // All that is not blades: the hood, and the wall around the damper.
    expect(outside?.restLoss).toBeCloseTo(hood + box - (outside?.loss ?? 0), 9);
    expect(outside?.authority).toBeCloseTo((outside?.openLoss ?? 0) / (outside?.restLoss ?? 1), 12);
    // One velocity pressure of the face is lost in the box; the record's open blades take 0.35.
    expect(back?.authority).toBeCloseTo(0.35, 9);
    expect(back?.loss).toBeGreaterThan(20 * (back?.openLoss ?? 0));
  });

  it("leak by the root of the pressure that they really see", () => {
    for (const { closed, area } of [outside, back] as NonNullable<typeof back>[]) {
      expect(closed.because).toMatch(/fan pulls with all it has/);
      // Class 1A, 3 cfm/ft² at 1 in. of water; 1 cfm/ft² is 0.00508 m³/s per m².
      const leak = 3 * 0.00508 * area * Math.sqrt(closed.pressure / 249.089);
      expect(closed.leakage / leak).toBeCloseTo(1, 3);
      expect(closed.pressure).toBeGreaterThan(500);
      // 9 N·m for each square metre against 500 Pa, by the record.
      expect(closed.torque).toBeCloseTo((9 * area * closed.pressure) / 500, 6);
    }
  });

  it("closed with the fan stopped see what wind and warm air make of them", () => {
    const stopped = sampleCondition({
      flow: { mode: "fan stopped", dampers: "closed", stackHeight: 10 },
      outdoor: { dryBulb: -15, humidityRatio: 0.0008, windSpeed: 10, rain: 0 },
      surroundings: { dryBulb: -15, humidityRatio: 0.0008 },
      season: "heating",
    });
    const driven = unitWith(wideOutside, smallReturn, "actuated");
    const [first] = damperStates(driven, solve(driven, stopped));
    expect(first?.closed.because).toBe("it is closed");
    expect(first?.bladeAngle).toBe(0);
    expect(first?.closed.pressure).toBe(first?.loss);
    // At most the wind's 0.7 × ½ρV² and the column's (ρo − ρi) g h: about 48 and 16 Pa, plus what the return duct pulls.
    expect(first?.closed.pressure).toBeLessThan(140);
  });
});
