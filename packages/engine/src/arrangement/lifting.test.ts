import { describe, expect, it } from "vitest";
import { slingTension } from "#component/sling";
import type { SectionPart } from "#section/part";
import type { Unit } from "#unit/unit";
import type { Arrangement } from "./arrange.ts";
import { cornerLoads, piecesOf } from "./lifting.ts";
import { massOf } from "./mass.ts";
import { partGroup, placedPart } from "./part.ts";

const gravity = 9.806_65;

/** A part of `mass` kg that fills a box of mm, and carries water. */
function block(key: string, mass: number, box: SectionPart["box"], carried = 0): SectionPart {
  return { key, name: key, kind: "box", material: "steel", box, mass, carried, massSource: "by hand" };
}

/*
 * Worked by hand: a base of 400 kg, 4 m long and 2 m wide, 100 mm high under the floor; on it a coil of 600 kg with 50 kg of
 * water, from 1.0 to 1.5 m along and from 0.2 to 1.4 m across, 1.2 m high; nothing else.
 */
const origin = { x: 0, y: 0, z: 0 };
const base = block("rail", 400, { x: 0, y: 0, z: -100, length: 4000, width: 2000, height: 100 });
const coil = block("coil", 600, { x: 1000, y: 200, z: 0, length: 500, width: 1200, height: 1200 }, 50);
const whole = partGroup("unit", "unit", undefined, [
  placedPart(base, "base", undefined, origin),
  partGroup("a", "a", "a", [placedPart(coil, "a", "a", origin)]),
]);
const casing = { panelThickness: 0.05, liftingLugs: 4, railHeight: 0.2, slingAngle: 60 };
const sections = ["a", "b"].map((name) => ({ name, layout: { length: 2, outside: 0 } }));
const unit = { casing, frame: { width: 2, height: 2, hand: "right" }, sections, length: 4 } as unknown as Unit;
const splits = [
  { name: "piece 1", sections: ["a"], from: 0, to: 2000 },
  { name: "piece 2", sections: ["b"], from: 2000, to: 4000 },
];
const arrangement = { whole, splits, outside: { width: 2100, height: 2300 } } as unknown as Arrangement;

describe("centre of gravity by hand", () => {
  it("is that of the moments: dry 1000 kg, running 1050 kg", () => {
    const dry = massOf(whole, "dry");
    expect(dry.mass).toBeCloseTo(1000, 9);
    // Along (400 · 2000 + 600 · 1250)/1000, across (400 · 1000 + 600 · 800)/1000, up (400 · −50 + 600 · 600)/1000.
    expect(dry.centre.x).toBeCloseTo(1550, 9);
    expect(dry.centre.y).toBeCloseTo(880, 9);
    expect(dry.centre.z).toBeCloseTo(340, 9);
    const running = massOf(whole, "operating");
    expect(running.mass).toBeCloseTo(1050, 9);
    // (800 000 + 650 · 1250)/1050.
    expect(running.centre.x).toBeCloseTo(1535.714, 3);
  });

  it("stands on four corners as levers say", () => {
    const loads = cornerLoads(unit, massOf(whole, "operating"));
    const sum = (isHere: (at: { x: number; y: number }) => boolean) =>
      loads.filter(isHere).reduce((all, { mass }) => all + mass, 0);
    // Corners 4100 mm apart from −50: the exit carries 1050 · 1585.714/4100. Across, (400 000 + 650 · 800)/1050 = 876.19
    // between −50 and 2050: the left carries 1050 · 926.19/2100.
    expect(sum(({ x }) => x > 0)).toBeCloseTo(406.098, 2);
    expect(sum(({ y }) => y > 0)).toBeCloseTo(463.095, 2);
  });
});

describe("lifting by hand", () => {
  const [first, second] = piecesOf(unit, arrangement);

  it("takes each piece with its half of the base, and two per cent of wrap and skids", () => {
    expect(first?.dry.mass).toBeCloseTo(800, 9);
    // (200 · 1000 + 600 · 1250)/800.
    expect(first?.dry.centre.x).toBeCloseTo(1187.5, 9);
    expect(first?.shippingMass).toBeCloseTo(816, 9);
    expect(second?.dry.mass).toBeCloseTo(200, 9);
    expect(second?.dry.centre.x).toBeCloseTo(3000, 9);
  });

  it("loads the lugs as levers say, a rigid piece on four equal legs", () => {
    // Lugs at 20.71 and 79.29 % of 2 m and 2.1 m apart: along, 816 · (1187.5 − 414.2)/1171.6 hangs on the exit's pair;
    // across, the middle is (200 · 1000 + 600 · 800)/800 = 850, so 816 · (850 + 50)/2100 on the left pair.
    const sum = (isHere: (at: { x: number; y: number }) => boolean) =>
      first!.lugs.filter(isHere).reduce((all, { mass }) => all + mass, 0);
    expect(sum(({ x }) => x > 1000)).toBeCloseTo(538.59, 1);
    expect(sum(({ y }) => y > 1000)).toBeCloseTo(349.71, 1);
    // The heaviest is at the exit on the right: of 816 kg a quarter, and half of what each pair there has over one half,
    // (0.66004 − 0.5)/2 + (0.57143 − 0.5)/2.
    const most = Math.max(...first!.lugs.map(({ mass }) => mass));
    expect(most).toBeCloseTo(298.44, 1);
    // At 60° a leg pulls 1.1547 times its load.
    expect(first!.legTension).toBeCloseTo(1.1547 * 298.44 * gravity, -1);
    expect(first!.twoLegTension).toBeCloseTo((1.1547 * 816 * gravity) / 2, -1);
  });

  // Load-angle factors as printed on sling charts of rigging handbooks, three places; from memory.
  it.each([
    [60, 1.155],
    [55, 1.221],
    [50, 1.305],
    [40, 1.556],
    [35, 1.743],
    [30, 2.0],
  ])("pulls a sling at %d° to the level by the printed factor", (angle, factor) => {
    expect(Math.abs(slingTension(1000, angle) / 1000 - factor)).toBeLessThan(1e-3);
  });
});
