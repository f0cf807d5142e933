import type { PanelLoad } from "#arrangement/panel-load";
import { visitLeaves } from "#arrangement/part";
import { leakageFluxFromClass } from "#component/casing-leakage";
import { metresPerInch } from "#quantity/inch-pound";
import { casingLeakageClasses, casingLeakageTests, panelDeflectionLimit } from "#standard/casing-class";
import { materials } from "#standard/material";
import { type Machine, type Mend, machineRule, type Rule } from "../contract.ts";

const tighter: readonly Mend[] = [{ at: "casing", field: "leakageClass", way: "less" }];
const stiffer: readonly Mend[] = [
  { at: "casing", field: "panelCore", way: "other" },
  { at: "casing", field: "panelWidth", way: "less" },
  { at: "casing", field: "outerGauge", way: "other" },
];

function panelOf({ weighing, unit, index }: Machine): PanelLoad | undefined {
  return weighing.panels.find(({ section }) => section === unit.sections[index]?.name);
}

const leak = {
  of: "unit",
  severity: "shortfall",
  protects: "conditioned air from leaking, and the unit from drawing in what stands around it",
  remedy: "a tighter casing",
  mends: tighter,
} as const;
const conflict =
  "0.5 % of the airflow at one and a half times the pressure (an airport), 1 % at design, class 3 (bids), L1 of EN 1886: other tests, other figures; every form is told";

function faceRule(side: "outside" | "inside", covers: readonly string[]): Rule {
  return machineRule({
    id: `no sweating ${side}`,
    covers,
    protects: "floors, ceilings and insulation from dripping",
    measures: `${side} face at its coldest place, above the dew point of the air there`,
    quantity: "temperatureDifference",
    span: 5,
    sense: "at least",
    limit: 0,
    source:
      "en-1886 says its thermal test may not predict condensation: derived-here from the frame's local transmittance",
    certainty: "derived here",
    // The frame's local transmittance is remembered, so that what it tells is no verdict.
    isGuide: true,
    severity: "damage",
    remedy: "a frame with a thermal break, thicker panels",
    mends: [
      { at: "casing", field: "frame", way: "other" },
      { at: "casing", field: "panelThickness", way: "more" },
    ],
    of: "unit",
    value: ({ weighing }) => weighing.transmission.faces.find((face) => face.side === side)?.margin,
    detail: ({ weighing }) => {
      const face = weighing.transmission.faces.find((each) => each.side === side);
      return face && `${face.section}, ${face.condition}`;
    },
  });
}

/** Leakage in every form that owners use, walls under pressure, sweating, what stands in the wet. */
export const casingRules: readonly Rule[] = [
  machineRule({
    ...leak,
    id: "casing leakage class",
    isChosen: true,
    covers: ["CAS-01", "CAS-02", "CAS-04"],
    measures: "leakage class, cfm for 100 ft² at 1 in.wg",
    quantity: "factor",
    sense: "at most",
    limit: 3,
    source: "bid-specifications class 3, below 10 cfm for 100 ft² at 6 in.wg",
    certainty: "read",
    contested: conflict,
    value: ({ unit }) => unit.casing.leakageClass,
  }),
  machineRule({
    ...leak,
    id: "casing leakage share",
    covers: ["CAS-03", "CAS-04"],
    measures: "leakage at one and a half times the largest pressure over the airflow",
    quantity: "share",
    sense: "at most",
    limit: 0.005,
    source: "airport-guide-specification 0.5 % at 1.5 × pressure, at most 10 in.wg",
    certainty: "read",
    contested: conflict,
    value: ({ weighing }) => weighing.leakage.testShare,
    detail: ({ weighing }) => `tested at ${Math.round(weighing.leakage.testPressure)} Pa`,
  }),
  machineRule({
    ...leak,
    id: "casing leakage by EN 1886",
    covers: ["CAS-05"],
    measures: "leakage at 400 Pa of suction",
    quantity: "leakageFlux",
    sense: "at most",
    limit: casingLeakageClasses.rows[0]!.atSuction,
    limitWords: "class L1",
    source: "en-1886 class L1, quoted",
    certainty: "second-hand",
    contested: conflict,
    byDefault: false,
    value: ({ unit }) => leakageFluxFromClass(unit.casing.leakageClass, casingLeakageTests.suction),
  }),
  machineRule({
    id: "wall deflection",
    covers: ["CAS-06"],
    protects: "gaskets and doors",
    measures: "deflection of the widest panel over its span, while the fan runs",
    quantity: "share",
    sense: "at most",
    limit: panelDeflectionLimit.share,
    source: "bid-specifications 1/240 at test pressure",
    certainty: "read",
    severity: "damage",
    remedy: "foam-filled or narrower panels, heavier sheet",
    mends: stiffer,
    of: "every section",
    value: (at) => panelOf(at)?.relative,
  }),
  machineRule({
    id: "walls at shut-off pressure",
    covers: ["CAS-17", "DMP-12", "CAS-07"],
    protects: "walls and roof from denting when a damper shuts on a running fan",
    measures: "deflection of the widest panel over its span, at the fan's shut-off pressure",
    quantity: "share",
    sense: "at most",
    limit: 1 / 100,
    limitWords: "the span over 100: far from what bends for good, and a door still opens",
    source: "functional-testing-guide casing rated to the fan's block-tight pressure; the figure common-practice",
    certainty: "common practice",
    severity: "damage",
    remedy: "stiffer panels, and a damper end switch before the fan starts",
    mends: stiffer,
    of: "every section",
    value: (at) => panelOf(at)?.shutOffRelative,
  }),
  faceRule("outside", ["CAS-10", "CAS-11"]),
  faceRule("inside", ["CAS-10"]),
  machineRule({
    id: "casing insulation",
    covers: ["CAS-09"],
    protects: "energy, and skins from sweating",
    measures: "transmittance of a panel by itself",
    quantity: "heatTransferCoefficient",
    sense: "at most",
    limit: 5.678 / 13,
    limitWords: "R-13 in h·ft²·°F/Btu",
    source: "campus-specification R-13",
    certainty: "read",
    contested:
      "R-13 (a campus), R-16 of 2 in of foam (a bid, more than foam of common conductivity gives), 0.5 to 1.0 W/m²K (EN 1886 class T2)",
    severity: "shortfall",
    remedy: "thicker panels or foam",
    mends: [
      { at: "casing", field: "panelThickness", way: "more" },
      { at: "casing", field: "panelCore", way: "other" },
    ],
    of: "unit",
    value: ({ weighing }) => weighing.transmission.panel,
  }),
  machineRule({
    id: "casing supports",
    covers: ["CAS-13"],
    protects: "the rail from sagging",
    measures: "most between supports under the rail",
    quantity: "length",
    sense: "at most",
    limit: 60 * metresPerInch,
    source: "hospital-master-specification supports 60 in apart",
    certainty: "read",
    byDefault: false,
    severity: "damage",
    remedy: "supports nearer together",
    mends: [{ at: "casing", field: "supportSpacing", way: "less" }],
    of: "unit",
    value: ({ unit }) => unit.casing.supportSpacing,
  }),
  machineRule({
    id: "rail stress",
    covers: ["CAS-08", "CAS-13"],
    protects: "people under a lifted piece, and the unit on its supports",
    measures: "bending stress of the rail over what the steel takes, standing and lifted",
    quantity: "share",
    sense: "at most",
    limit: 1,
    source: "derived-here beam on supports and on lugs; two thirds of the yield of structural steel",
    certainty: "derived here",
    severity: "hazard",
    remedy: "a higher or thicker rail, supports nearer together, more lugs; a structural engineer decides",
    mends: [
      { at: "casing", field: "railHeight", way: "more" },
      { at: "casing", field: "railThickness", way: "more" },
    ],
    of: "unit",
    value: ({ weighing: { rail } }) => rail && Math.max(rail.stress, rail.liftedStress) / rail.allowed,
  }),
  machineRule({
    id: "wet-zone materials",
    covers: ["CLG-11", "CAS-12"],
    protects: "pans, floors and cones from rust: fans have failed of it in twelve years",
    measures: "wet parts of a metal that rusts in this air",
    quantity: "count",
    sense: "at most",
    limit: 0,
    source: "hospital-master-specification stainless steel where water stands; an intake cone of steel rusted through",
    certainty: "read",
    severity: "damage",
    remedy: "stainless steel in the wet sections",
    mends: [
      { at: "casing", field: "innerMetal", way: "other" },
      { at: { kind: "intake hood" }, field: "screen", way: "other" },
    ],
    of: "unit",
    value: (at) => rustingParts(at).length,
    detail: (at) => [...new Set(rustingParts(at))].slice(0, 4).join(", ") || undefined,
  }),
];

/** Names of wet leaves whose metal rusts; zinc lasts where the air is not harsh (ISO 12944 below C4). */
function rustingParts({ weighing, duty, unit }: Machine): readonly string[] {
  const isCoated = unit.casing.finish !== "mill";
  const isHarsh = ["C4", "C5"].includes(duty.site.corrosionClass);
  const found: string[] = [];
  visitLeaves(weighing.arrangement.whole, ({ wet, material, name, kind, section }) => {
    if (!wet || material === undefined || !materials[material].rusts) return;
    if (material === "galvanized steel" && !isHarsh) return;
    // The finish of the outside covers roof and hood.
    if (isCoated && (kind === "roof" || name.startsWith("hood"))) return;
    found.push(`${name} of ${section ?? "the unit"}`);
  });
  return found;
}
