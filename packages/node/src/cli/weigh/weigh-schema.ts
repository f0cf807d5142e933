import { listOf, number, published, record, text } from "../schema/describe.ts";

const point = (words: string) =>
  record({
    x: number("m along the airflow from the entry plane"),
    y: number("m from the right wall to the left"),
    z: number(`m up; ${words}`),
  });
const massPoint = record({
  mass: number("kg"),
  centre: point("centre of gravity, from the floor of the clear cabinet"),
});
const load = record({
  x: number("m along the airflow"),
  y: number("m from the right wall"),
  mass: number("kg that it carries"),
});

const section = record({
  section: text("name"),
  parts: number("kg of its own parts, dry"),
  casing: number("kg of the panels around it"),
  dry: number("kg of both"),
  carried: number("kg of water and dust when it runs"),
  operating: number("kg when it runs"),
});

const piece = record({
  name: text(),
  sections: listOf(text()),
  from: number("m of the clear cabinet"),
  to: number("m of the clear cabinet"),
  size: point("outside, along, across and up"),
  mass: number("kg dry"),
  centre: point("centre of gravity"),
  shippingMass: number("kg as shipped"),
  lugs: listOf(load, "empty where the unit has no base rail"),
  legTension: number("N in the most loaded leg when all share"),
  twoLegTension: number("N in each of two legs that carry all of it"),
  spreaderForce: number("N that a spreader takes, at the most loaded leg"),
});

const rail = record({
  span: number("m between supports, at most"),
  load: number("N/m on the more loaded rail under the heaviest section"),
  section: text("the heaviest section"),
  stress: number("Pa, standing and running"),
  deflection: number("m"),
  liftedStress: number("Pa, lifted, in the piece that bends it most"),
  liftedPiece: text(),
  allowed: number("Pa that the steel takes"),
});

const trap = record({
  section: text(),
  pressure: number("Pa that it is made for; negative under suction"),
  condition: text("key of the condition"),
  drop: number("m from its inlet to its outlet"),
  seal: number("m under its outlet"),
  depth: number("m of the whole with its pipe"),
  pipe: text("nominal size"),
  pipeOutside: number("m, outside diameter"),
  flow: number("m³/s of water at the wettest condition"),
  capacity: number("m³/s that the pipe takes half full"),
  railNeeded: number("m under the floor"),
  rail: number("m that the unit has"),
  fits: { type: "boolean" },
  sealLoss: number("Pa of suction that draws the seal out"),
  losesSealAtShutOff: { type: "boolean" },
});

const panel = record({
  section: text(),
  shortSide: number("m"),
  longSide: number("m"),
  pressure: number("Pa while the fan runs"),
  condition: text("key of the condition"),
  shutOff: number("Pa at shut-off"),
  deflection: number("m while the fan runs"),
  shutOffDeflection: number("m at shut-off"),
  relative: number("deflection over the short side, running"),
  shutOffRelative: number("the same at shut-off"),
  deflectionClass: text("of EN 1886, at 1000 Pa"),
  isLarge: { type: "boolean", description: "the small-deflection formula gives too much" },
});

const springs = record({
  fan: text(),
  mass: number("kg on the springs"),
  deflection: number("m"),
  naturalFrequency: number("Hz"),
  points: listOf(record({ x: number("m"), y: number("m"), mass: number("kg"), stiffness: number("N/m") })),
  atLowest: number("force passed on over force made at the lowest speed"),
  atHighest: number("the same at the highest speed"),
  lowestSpeed: number("rev/s"),
  highestSpeed: number("rev/s"),
  thrust: number("N backwards"),
  thrustTravel: number("m that the springs give way"),
  needsRestraint: { type: "boolean" },
});

const face = record(
  {
    section: text(),
    condition: text("key of the condition"),
    side: { enum: ["outside", "inside"] },
    face: number("°C, over the frame"),
    dewPoint: number("°C of the air there"),
    margin: number("K of the face above the dew point"),
    allowed: number("W/m²K at which the face would just stay dry; left out where the other side is not colder"),
  },
  "allowed",
);

const transmission = record({
  panel: number("W/m²K of a panel"),
  whole: number("W/m²K with edges"),
  local: number("W/m²K at its worst place"),
  conductance: number("W/K of the whole casing"),
  gain: number("W into the air at most"),
  gainAt: text("key of the condition; empty where it never gains"),
  loss: number("W out of it at most"),
  lossAt: text("key of the condition; empty where it never loses"),
  faces: listOf(face, "where each side comes nearest to sweating"),
});

const leakage = record({
  area: number("m²"),
  leakageClass: number("cfm for 100 ft² at 1 in. of water"),
  europeanClass: text("of EN 1886, or none"),
  flow: number("m³/s with every section at its worst pressure"),
  share: number("of the largest airflow"),
  testPressure: number("Pa, one and a half times the largest, at most 10 in. of water"),
  testShare: number("of the airflow with the whole casing at that pressure"),
  openArea: number("m² of a sharp opening that leaks as much"),
});

const service = record({
  spaces: listOf(
    record({
      key: text(),
      section: text(),
      part: text("key of the part that it serves"),
      use: { enum: ["coil pull", "access", "electrical working space"] },
      name: text(),
      side: { enum: ["right", "left"] },
      place: point("corner nearest the origin"),
      size: point("of the room"),
      source: text("bibliography key and place"),
    }),
    "room outside the unit that is kept clear",
  ),
  doors: listOf(
    record(
      {
        section: text(),
        part: text("key of the door"),
        opens: { enum: ["outward", "inward"] },
        hinges: { enum: ["upstream", "downstream"] },
        width: number("m of the leaf"),
        opensTo: number("degrees that nothing hinders"),
        strikes: text("key of what it strikes before it is open by a right angle"),
      },
      "strikes",
    ),
  ),
  sights: listOf(
    record(
      {
        section: text(),
        window: text("key"),
        to: text("key of what should be seen"),
        clear: { type: "boolean" },
        blockedBy: text("key of what stands in between"),
      },
      "blockedBy",
    ),
  ),
  shippingRestraints: listOf(record({ section: text(), count: number("that come off before starting") })),
  wetZones: listOf(record({ section: text("whose water it is"), from: number("m"), to: number("m") })),
  finish: listOf(
    record({ face: text(), metal: text(), gauge: text(), coat: text("mill where there is none"), area: number("m²") }),
  ),
  fasteners: listOf(record({ what: text(), count: number("about, by common spacing") })),
});

const notice = record(
  {
    part: text(),
    at: number("m along the airflow"),
    what: text(),
    weight: { enum: ["information", "caution"] },
    source: text("bibliography key and place"),
  },
  "at",
  "source",
);

const part = record(
  {
    key: text("path in the tree of parts"),
    name: text(),
    kind: text("what it is; `assembly` has parts of its own"),
    section: text("left out for what belongs to the whole unit"),
    material: text("left out for assemblies"),
    place: point("corner nearest the origin"),
    size: point("of the box around it"),
    mass: number("kg dry, of all of it"),
    carried: number("kg of water or dust"),
    source: text("of the mass"),
    wet: { type: "boolean" },
    count: number("pieces alike"),
  },
  "section",
  "material",
);

/** The published schema of `oncethrough weigh --json`. */
export function weighSchema(): object {
  return published(
    "weigh",
    "A unit's masses and loads, as printed by `oncethrough weigh --json`; all numbers in SI units",
    {
      ...record(
        {
          format: { const: "oncethrough weight 1" },
          tag: text("of the unit"),
          size: point("outside, hood, rail and roof included"),
          sections: listOf(section, "in airflow order"),
          rest: listOf(record({ name: text(), mass: number("kg") }), "what belongs to no section"),
          dry: massPoint,
          operating: massPoint,
          loose: number("kg that ships loose"),
          pieces: listOf(piece),
          corners: listOf(load, "entry right, entry left, exit right, exit left"),
          rail,
          traps: listOf(trap),
          panels: listOf(panel),
          shutOff: record({ pressure: number("Pa that the fans make when nothing flows"), condition: text("key") }),
          springs: listOf(springs, "of each fan; empty where fans stand rigid"),
          transmission,
          leakage,
          service,
          notices: listOf(notice),
          unsolved: listOf(text("key of a condition that could not be solved and does not count")),
          cautions: record({ lifting: text(), electrical: text() }),
          parts: listOf(part, "with --parts: every part, from the whole down"),
        },
        "rail",
        "parts",
      ),
    },
  );
}
