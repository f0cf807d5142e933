import { describe, expect, it } from "vitest";
import cases from "../../../../../reference/cases/casing.json" with { type: "json" };
import { chilledWaterCoilFields, prepareChilledWaterCoil } from "../chilled-water-coil/design.ts";
import { chilledWaterCoilParts } from "../chilled-water-coil/parts.ts";
import type { SectionPart, WallPart } from "../part.ts";
import { valuesOfText } from "../shipped.test-data.ts";
import { prepareSteamCoil, steamCoilSectionFields } from "../steam-coil/design.ts";
import { steamCoilParts } from "../steam-coil/parts.ts";

const frame = { width: 0.9, height: 0.9, hand: "right" } as const;

/** The published coil of 24 by 24 in, eight rows, 16 tubes of 5/8 in at 1.5 by 1.3 in, 11.8 fins per inch of 0.0065 in. */
function publishedCoil(more = "circuits: 32") {
  const text = `rows: 8
fins: 11.8 per in
${more}
finned height: 24 in
finned length: 24 in
fin thickness: 0.0065 in
tube wall: 0.025 in
intermediate pans: no`;
  const values = valuesOfText(chilledWaterCoilFields, text);
  const surface = {
    ...values.surface,
    transversePitch: 0.0381,
    longitudinalPitch: 0.033,
    tubeOutsideDiameter: 0.015875,
    collars: false,
  };
  return prepareChilledWaterCoil({ ...values, surface }, frame);
}

function named(parts: readonly SectionPart[], key: string): SectionPart | undefined {
  for (const part of parts) {
    const found = part.key === key ? part : named(part.children ?? [], key);
    if (found !== undefined) return found;
  }
  return undefined;
}

describe("parts of a coil", () => {
  const design = publishedCoil();
  const { inside } = chilledWaterCoilParts(design, frame);
  const { fins_kg, tubes_kg, water_kg, core_kg_per_m2_face_per_row } = cases.coil_weight.example;

  it("weigh as computed for the published coil: fins, straight tubes and their water", () => {
    const { bank, bore, circuits } = design.block.coil;
    // The example takes fins of 2710 kg/m³; ours 2700.
    expect((named(inside, "fins")?.mass ?? 0) * (2710 / 2700)).toBeCloseTo(fins_kg, 1);
    const tubes = named(inside, "tubes");
    // It leaves out the return bends, which here are counted: 96 half rounds of 1.5 in.
    const straight = 128 * 0.6096;
    const bends = ((128 - circuits) * Math.PI * bank.transversePitch) / 2;
    expect((tubes?.mass ?? 0) * (straight / (straight + bends))).toBeCloseTo(tubes_kg, 1);
    const volume = bore * straight;
    expect(volume * 1000).toBeCloseTo(water_kg, 1);
    const filling = (tubes?.carried ?? 0) - 998.2 * (design.block.coil.tubeVolume - volume);
    expect(Math.abs(filling / water_kg - 1)).toBeLessThan(0.003);
    const core = (named(inside, "fins")?.mass ?? 0) + tubes_kg;
    expect(core / (bank.faceArea * 8)).toBeCloseTo(core_kg_per_m2_face_per_row, 0);
  });

  it("stand beside one another: casing around the core, headers in the room beside it on the pipes' side", () => {
    const core = named(inside, "core")?.box;
    const header = named(inside, "supply header")?.box;
    if (core === undefined || header === undefined) throw new Error("no core or header");
    expect(header.y + header.width).toBeLessThanOrEqual(core.y);
    const left = chilledWaterCoilParts(design, { ...frame, hand: "left" }).inside;
    expect(named(left, "supply header")?.box.y).toBeGreaterThan(core.width);
  });

  it("are stainless where water runs, and headers and casing add less than the core weighs", () => {
    expect(named(inside, "tube sheet right")?.material).toBe("stainless steel 304");
    const coil = named(inside, "coil 1");
    const sum = (part: SectionPart): number =>
      part.mass + (part.children ?? []).reduce((all, each) => all + sum(each), 0);
    const core = sum(named(inside, "core") as SectionPart);
    const whole = sum(coil as SectionPart);
    // Common practice: headers 10 to 15 % of the core, casing of 16-gauge sheet a little more on a coil as small as this.
    expect(whole / core).toBeGreaterThan(1.2);
    expect(whole / core).toBeLessThan(2);
  });
});

/** Centre of a pipe through the wall, mm up. */
const heightOf = ({ box }: WallPart) => box.z + box.height / 2;

describe("what is joined to a coil", () => {
  const design = publishedCoil();
  const walls = (each: ReturnType<typeof publishedCoil>) =>
    new Map(chilledWaterCoilParts(each, frame).walls.map((wall) => [wall.key, wall]));

  it("is a drain at the lowest and a vent at the highest point, both through the wall with what closes them", () => {
    const all = walls(design);
    const [drain, vent] = [all.get("drain connection 1")!, all.get("vent connection 1")!];
    for (const other of ["supply connection 1", "return connection 1"]) {
      expect(heightOf(drain)).toBeLessThan(heightOf(all.get(other)!));
      expect(heightOf(vent)).toBeGreaterThan(heightOf(all.get(other)!));
    }
    expect(drain.fittings).toEqual(["drain valve, 1/2 in"]);
    expect(vent.fittings).toEqual(["air vent, 1/2 in"]);
    // Schedule 40 pipe of ½ in. is 0.840 in. outside (from memory of the published pipe table).
    expect(drain.box.height / 25.4).toBeCloseTo(0.84, 2);
  });

  it("is on one side for an even number of passes, and across for an odd one, with room for headers at both ends", () => {
    const faces = (each: ReturnType<typeof publishedCoil>) =>
      Object.fromEntries([...walls(each)].map(([key, { face }]) => [key.split(" ")[0], face]));
    expect(faces(design)).toEqual({ supply: "right", drain: "right", return: "right", vent: "right" });
    // Eight rows of 16 tubes in 128 circuits: one pass.
    const odd = publishedCoil("circuits: 128\nconnection ends: opposite ends");
    expect(faces(odd)).toEqual({ supply: "right", drain: "right", return: "left", vent: "left" });
    const { inside } = chilledWaterCoilParts(odd, frame);
    const [supply, back, core] = ["supply header", "return header", "core"].map((key) => named(inside, key)!.box);
    expect(supply!.y + supply!.width).toBeLessThanOrEqual(core!.y);
    expect(back!.y).toBeGreaterThanOrEqual(core!.y + core!.width);
    expect(back!.y + back!.width).toBeLessThanOrEqual(1000 * frame.width);
    // The far pipe reaches from the wall to its header, not across the airway.
    expect(walls(odd).get("return connection 1")!.reach!).toBeLessThan(0.2);
  });

  it("is steam at the top, condensate at the foot and the tapping of the vacuum breaker above, none where it is left out", () => {
    const text = "finned height: 24 in\nfinned length: 24 in";
    const keys = (more: string) => {
      const coil = prepareSteamCoil(valuesOfText(steamCoilSectionFields, `${text}\n${more}`), frame);
      return steamCoilParts(coil, frame).walls.map(({ key, fittings }) => [key, fittings?.[0]]);
    };
    expect(keys("vacuum breaker: yes")).toEqual([
      ["steam connection 1", undefined],
      ["vacuum-breaker connection 1", "vacuum breaker, 1/2 in"],
      ["condensate connection 1", undefined],
    ]);
    expect(keys("vacuum breaker: no").map(([key]) => key)).toEqual(["steam connection 1", "condensate connection 1"]);
  });
});
