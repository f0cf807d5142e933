import { type Machine, machineRule, type Rule } from "../contract.ts";

type Axis = "x" | "y" | "z";
const pieceField = { x: "shippingLength", y: "shippingWidth", z: "shippingHeight" } as const;
const siteField = { x: "length", y: "width", z: "height" } as const;
const words = { x: "longest", y: "widest", z: "highest" } as const;

function pieceRule(axis: Axis): Rule {
  const most = ({ weighing }: Machine) => Math.max(...weighing.pieces.map(({ size }) => size[axis])) / 1000;
  return machineRule({
    id: `${words[axis]} piece`,
    covers: ["SHP-01", "SHP-02", "SHP-03"],
    protects: "the delivery: truck, permits, the way in",
    measures: `${words[axis]} piece as shipped`,
    quantity: "length",
    sense: "at most",
    limit: ({ duty }) => duty.limits[pieceField[axis]],
    limitWords: "the duty's limit; 8 ft 6 in wide and high on a flat deck need no permit",
    source: "transport-guides legal 8.5 ft wide and 13.5 ft high overall, deck at 58 to 60 in",
    certainty: "read",
    severity: "shortfall",
    remedy: "smaller pieces, a step deck, or a permit; divisible loads get none",
    mends: [
      { at: "duty", field: `limits.${pieceField[axis]}`, way: "more" },
      {
        at: "casing",
        field: axis === "x" ? "splitsBefore" : axis === "y" ? "width" : "height",
        way: axis === "x" ? "other" : "less",
      },
    ],
    of: "unit",
    value: most,
  });
}

function siteRule(axis: Axis): Rule {
  return machineRule({
    id: `unit fits the site, ${words[axis]}`,
    covers: ["SHP-03", "SHP-08"],
    protects: "the place that the unit is made for",
    measures: `unit outside, ${siteField[axis]}`,
    quantity: "length",
    sense: "at most",
    limit: ({ duty }) => duty.limits[siteField[axis]] ?? Number.NaN,
    limitWords: "what the site takes",
    source: "definition of the duty's limits",
    certainty: "derived here",
    severity: "shortfall",
    remedy: "a smaller unit",
    mends: [{ at: "duty", field: `limits.${siteField[axis]}`, way: "more" }],
    of: "unit",
    value: ({ duty, weighing }) =>
      duty.limits[siteField[axis]] === undefined ? undefined : weighing.arrangement.size[axis] / 1000,
  });
}

/** Shipping, rigging, and the place on site. Lifting is for qualified riggers under local codes. */
export const shippingRules: readonly Rule[] = [
  pieceRule("x"),
  pieceRule("y"),
  pieceRule("z"),
  siteRule("x"),
  siteRule("y"),
  siteRule("z"),
  machineRule({
    id: "heaviest piece",
    covers: ["SHP-01", "SHP-06"],
    protects: "crane, hoist and truck",
    measures: "heaviest piece as shipped",
    quantity: "mass",
    sense: "at most",
    limit: ({ duty }) => duty.limits.shippingMass,
    limitWords: "the duty's limit",
    source: "transport-guides payload of 46 000 to 48 000 lb",
    certainty: "read",
    severity: "hazard",
    remedy: "smaller pieces",
    mends: [{ at: "casing", field: "splitsBefore", way: "other" }],
    of: "unit",
    value: ({ weighing }) => Math.max(...weighing.pieces.map(({ shippingMass }) => shippingMass)),
  }),
];
