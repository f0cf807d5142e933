import { describe, expect, it } from "vitest";
import { exampleJob, exampleNames, handWorkedText, jobOf } from "./weigh.test-data.ts";
import { type Weighing, weighUnit } from "./weigh.ts";

const pound = 0.453_592_37;
const gravity = 9.806_65;

function weighed(text: string): Weighing {
  const { unit, duty, conditions } = jobOf(text);
  return weighUnit(unit, duty, conditions);
}

describe("a small unit weighed by hand", () => {
  const { sections, rest, dry, operating } = weighed(handWorkedText);
  const parts = (name: string) => sections.find(({ section }) => section === name)?.parts ?? Number.NaN;
  // By hand in pounds and feet, 60 by 60 in clear, 16.6 ft long. Sheet by the published gauge list, foam 2.5 lb/ft³.
  const length = 16.6;
  const skins = 2.156 + 1.656 + 0.417;
  // Edges folded an inch inwards on both skins, on panels about 3.3 by 5 ft: 8 % more.
  const walls = 1.08 * 3 * 5 * length * skins;
  const floor = 1.08 * 5 * length * (3.281 + 1.656 + 0.417);
  // Square tube 2 by 2 in, 14 gauge: 2.16 lb/ft by published tables of tube; four edges along and eight across.
  const frame = (4 * (length + 0.33) + 8 * 5) * 2.16;
  // Formed channel of 10 by 3 by 3/16 in: 2.93 in² at 3.4 lb/ft for each; nine cross members, seven of two thirds its mass.
  const channel = 2.93 * 3.4;
  const rails = channel * (2 * 16.9 + 2 * 4.8 + (7 * 4.8 * 2) / 3);
  // Three doors of 2 by 4.6 ft stand for panels of their size: frames and hardware add 15 lb of sheet and 25 lb each.
  const doors = 3 * 40;

  it("comes within 10 % of the hand calculation, the whole and its casing", () => {
    // Core by the published mass by face and row for 11.8 fins per inch, fins in proportion: 18 ft² of face, 6 rows.
    const core = (1.68 * 6 * 12.91 * (0.447 * (10 / 11.8) + 0.553)) / pound;
    // Plates 19.5 ft² and a tube support of 4 ft² in 16-gauge stainless; blank-offs; rails; headers of 2½ in copper tube;
    // a pan of 3.8 by 5.3 ft in 14-gauge stainless.
    const coil = core + 23.5 * 2.625 + 4.75 * 1.3 * 2.656 + 16 + 2 * 4.5 * 2.48 + 20.4 * 3.28;
    // Five square feet times four of filters at 12 lb for 4 ft², frames at 8 lb each on six, sheet over the rest.
    const filters = 20 * 3 + 6 * 8 + 5 * 1.3 * 2.656;
    // Fan by its record at 24.5 in, motor of 10 hp by the catalogue's kg for each kW, base, four springs, wall of 12 gauge.
    const fan = (140 / pound) * (24.5 / 30) ** 2.5 + (9 * 7.457) / pound + 30 + 24 + 23.3 * 4.531;
    const lights = 2 * 8;
    const lugs = 4 * 7.7;
    const hand = pound * (walls + floor + frame + rails + doors + coil + filters + fan + lights + lugs);
    expect(Math.abs(dry.mass / hand - 1)).toBeLessThan(0.1);
    expect(Math.abs(parts("cooling coil") / (pound * coil) - 1)).toBeLessThan(0.1);
    // What hangs on the fan's record and on springs by rule of thumb agrees within 15 % by itself.
    expect(Math.abs(parts("filters") / (pound * filters) - 1)).toBeLessThan(0.15);
    const base = rest.find(({ name }) => name === "base")?.mass ?? Number.NaN;
    expect(Math.abs(base / (pound * rails) - 1)).toBeLessThan(0.05);
    const edges = rest.find(({ name }) => name === "frame")?.mass ?? Number.NaN;
    expect(Math.abs(edges / (pound * frame) - 1)).toBeLessThan(0.05);
  });

  it("carries the water of its coil: 4.4 kg for each square metre of face and row, headers and wet fins besides", () => {
    const coil = sections.find(({ section }) => section === "cooling coil");
    const tubes = 4.4 * 1.68 * 6;
    expect(operating.mass - dry.mass).toBeGreaterThan(tubes);
    // Two headers of 3 in hold 12 kg; 190 m² of fin hold 0.1 kg each; the prefilters' dust is a kilogram or two.
    expect(Math.abs((coil?.carried ?? 0) / (tubes + 12 + 19) - 1)).toBeLessThan(0.1);
  });
});

describe.each(exampleNames)("the example %s, weighed", (name) => {
  const { unit, duty, conditions } = exampleJob(name);
  const weighing = weighUnit(unit, duty, conditions);

  it("hangs and stands in balance: lugs and corners carry the mass and its moments about both axes", () => {
    const { pieces, corners, operating } = weighing;
    const stands = [
      ...pieces.map((piece) => ({ loads: piece.lugs, mass: piece.shippingMass, centre: piece.dry.centre })),
      { loads: corners, mass: operating.mass, centre: operating.centre },
    ];
    for (const { loads, mass, centre } of stands) {
      const sum = (of: (load: (typeof loads)[number]) => number) => loads.reduce((all, load) => all + of(load), 0);
      expect(sum((load) => load.mass) / mass).toBeCloseTo(1, 9);
      expect(sum((load) => load.mass * (load.x - centre.x)) / mass).toBeCloseTo(0, 6);
      expect(sum((load) => load.mass * (load.y - centre.y)) / mass).toBeCloseTo(0, 6);
      for (const load of loads) expect(load.mass).toBeGreaterThan(0);
    }
  });

  it("has pieces within the lengths and masses that can be shipped, which add up to the dry unit", () => {
    const { pieces, loose, dry } = weighing;
    const sum = pieces.reduce((all, piece) => all + piece.dry.mass, loose);
    expect(sum / dry.mass).toBeCloseTo(1, 9);
    for (const piece of pieces) {
      expect(piece.size.x).toBeLessThanOrEqual(1000 * duty.limits.shippingLength + 1e-6);
      expect(piece.shippingMass).toBeLessThanOrEqual(duty.limits.shippingMass);
      // Two opposite legs at the sling's angle carry no less than the heaviest of four.
      expect(piece.twoLegTension).toBeGreaterThanOrEqual(piece.legTension * 0.999);
      const angle = (unit.casing.slingAngle * Math.PI) / 180;
      expect(piece.twoLegTension).toBeCloseTo((piece.shippingMass * gravity) / 2 / Math.sin(angle), 6);
    }
  });

  it("is as heavy as common practice expects: 60 to 130 lb for each square foot of floor", () => {
    // Common practice, no source: custom double-wall units.
    const floor = (unit.frame.width * unit.length) / 0.3048 ** 2;
    const perFloor = weighing.dry.mass / pound / floor;
    expect(perFloor).toBeGreaterThan(40);
    expect(perFloor).toBeLessThan(130);
  });

  it("has traps made for the deepest suction of any condition, under a rail that takes them", () => {
    expect(weighing.traps.length).toBeGreaterThan(0);
    for (const trap of weighing.traps) {
      const inches = -trap.pressure / 249.08891;
      // Printed rule: one inch of drop for each inch of suction and one more, half of it seal.
      expect(trap.drop / 0.0254).toBeCloseTo(inches + 1, 4);
      expect(trap.seal).toBeCloseTo(trap.drop / 2, 9);
      expect(trap.capacity).toBeGreaterThanOrEqual(trap.flow);
      expect(trap.fits, trap.section).toBe(true);
    }
  });

  it("keeps panels and rails within what owners and steel allow", () => {
    for (const panel of weighing.panels) {
      expect(panel.relative, panel.section).toBeLessThan(1 / 240);
      expect(Math.abs(panel.shutOff)).toBeGreaterThan(Math.abs(panel.pressure));
      expect(panel.deflectionClass).toBe("D1");
    }
    const rail = weighing.rail;
    if (rail === undefined) throw new Error("no rail");
    expect(rail.stress).toBeLessThan(rail.allowed);
    expect(rail.liftedStress).toBeLessThan(rail.allowed);
    expect(rail.deflection).toBeLessThan(rail.span / 400);
  });

  it("hangs each fan level on its springs: loads add up, and stiffness follows the load", () => {
    expect(weighing.springs.length).toBeGreaterThan(0);
    for (const { points, mass, deflection, naturalFrequency, atHighest, highestSpeed } of weighing.springs) {
      expect(points.reduce((sum, point) => sum + point.mass, 0) / mass).toBeCloseTo(1, 9);
      for (const point of points) {
        expect(point.mass).toBeGreaterThan(0);
        expect((point.mass * gravity) / point.stiffness).toBeCloseTo(deflection, 9);
      }
      // Published rule: 3.13 over the root of the deflection in inches.
      expect(naturalFrequency * Math.sqrt(deflection / 0.0254)).toBeCloseTo(3.13, 2);
      // Vibration handbooks: √(1 + (2ζr)²) / √((1 − r²)² + (2ζr)²), the springs of the records damped by a hundredth. Far
      // above resonance the damper passes on more than the spring.
      const r = highestSpeed / naturalFrequency;
      const damper = 2 * 0.01 * r;
      expect(atHighest / (Math.hypot(1, damper) / Math.hypot(1 - r ** 2, damper))).toBeCloseTo(1, 9);
    }
  });

  it("loses heat as its walls say: conductance between that of bare panels and of twice as much", () => {
    const { panel, whole, conductance, faces } = weighing.transmission;
    const area = 2 * (unit.frame.width + unit.frame.height) * unit.length;
    expect(whole).toBeGreaterThan(panel);
    expect(whole).toBeLessThan(2 * panel);
    expect(conductance).toBeCloseTo(whole * area, 6);
    for (const face of faces) {
      expect(face.margin).toBeCloseTo(face.face - face.dewPoint, 9);
      // The face sweats just where the frame passes more than is allowed.
      expect(face.margin > 0, face.side).toBe(face.allowed > weighing.transmission.local);
    }
  });
});

describe("bad arrangements", () => {
  const splits = (names: string) =>
    handWorkedText.replace("frame: steel tube", `frame: steel tube, splits before: [${names}]`);

  it("names a split where no section is, and what stands there instead", () => {
    const { notices, splits: pieces } = weighed(splits("chiller")).arrangement;
    expect(notices).toContainEqual(expect.objectContaining({ part: "chiller", weight: "caution" }));
    expect(notices.find(({ part }) => part === "chiller")?.what).toMatch(/filters, cooling coil, fan/);
    expect(pieces).toHaveLength(1);
    const first = weighed(splits("intake")).arrangement.notices.find(({ part }) => part === "intake");
    expect(first?.what).toMatch(/nothing stands before/);
  });

  it("says which part a split goes through, and where", () => {
    const text = splits("fan").replace("length: 48 in", "length: 20 in");
    const notice = weighed(text).arrangement.notices.find(({ part }) => part === "fan");
    expect(notice?.what).toMatch(/through main drain pan of cooling coil/);
    expect(notice?.at).toBeCloseTo(92 * 25.4, 3);
  });

  it("comes apart where it may when the road is short, and never inside a section", () => {
    const road = (limit: string) =>
      weighed(handWorkedText.replace("external static:", `limits: { shipping length: ${limit} }\n  external static:`))
        .arrangement;
    const { splits: pieces, notices } = road("10 ft");
    expect(pieces.map(({ sections }) => sections)).toEqual([["intake", "filters"], ["cooling coil"], ["fan"]]);
    expect(notices).toEqual([]);
    // 79 in of fan and two panels are longer than six feet: said, not hidden.
    const short = road("6 ft");
    expect(short.splits).toHaveLength(4);
    expect(short.notices).toContainEqual(
      expect.objectContaining({ part: "piece 4", what: expect.stringMatching(/^longer/) }),
    );
  });

  it("says where the unit is larger than the site takes", () => {
    const text = handWorkedText.replace("external static:", "limits: { height: 5 ft }\n  external static:");
    const { notices } = weighed(text).arrangement;
    expect(notices).toContainEqual(expect.objectContaining({ part: "unit", what: expect.stringMatching(/higher/) }));
  });

  it("warns of zinc under water where the air is harsh", () => {
    const harsh = handWorkedText.replace("placement: indoor", "placement: indoor, corrosion class: C5");
    expect(
      weighed(harsh)
        .arrangement.notices.map(({ what }) => what)
        .join(),
    ).toMatch(/floor panel: galvanized steel/);
    expect(weighed(handWorkedText).arrangement.notices).toEqual([]);
  });
});

describe("walls of other build", () => {
  it("weigh and give by their skins: stainless 16 gauge is heavier and stiffer, wool leaves the skins alone", () => {
    const usual = weighed(handWorkedText);
    const heavy = weighed(
      handWorkedText.replace(
        "frame: steel tube",
        "frame: steel tube, outer metal: stainless steel 304, outer gauge: 16",
      ),
    );
    expect(heavy.dry.mass).toBeGreaterThan(usual.dry.mass);
    expect(heavy.panels[0]!.deflection).toBeLessThan(usual.panels[0]!.deflection);
    const wool = weighed(handWorkedText.replace("frame: steel tube", "frame: steel tube, panel core: mineral wool"));
    expect(wool.panels[0]!.shutOffDeflection).toBeGreaterThan(5 * usual.panels[0]!.shutOffDeflection);
    expect(wool.panels[0]!.isLarge).toBe(true);
  });
});
