import fc from "fast-check";
import type { Field, Fields } from "#form/field";
import { parseQuantity } from "#quantity/parse";
import { type SectionKind, SectionProblem } from "#section/contract";
import { sectionKinds } from "#section/kinds";
import { sampleCondition } from "#section/sample.test-data";
import { shippedCatalogue } from "#section/shipped.test-data";
import { assembleUnit, type WrittenSection } from "./assemble.ts";
import type { Casing } from "./casing.ts";
import { usualCasingBuild } from "./casing-build.test-data.ts";
import type { Unit } from "./unit.ts";

function si(text: string, field: Field & { type: "quantity" }): number {
  const reading = parseQuantity(text, field.quantity);
  if (!reading.ok) throw new Error(`${text}: ${reading.problem}`);
  return reading.value;
}

/** Values of a quantity field: about its default, within its limits. */
function quantityValues(field: Field & { type: "quantity" }): fc.Arbitrary<number> {
  const low = field.minimum === undefined ? Number.NEGATIVE_INFINITY : si(field.minimum, field);
  const high = field.maximum === undefined ? Number.POSITIVE_INFINITY : si(field.maximum, field);
  if (field.default === undefined) return fc.double({ min: low, max: high, noNaN: true });
  const typical = si(field.default, field);
  return fc
    .double({ min: 0.7, max: 1.4, noNaN: true })
    .map((factor) => Math.min(high, Math.max(low, typical * factor)));
}

function valuesOf(field: Field): fc.Arbitrary<unknown> {
  const present = presentValues(field);
  const hasDefault = "default" in field && field.default !== undefined;
  if (field.optional !== true || hasDefault) return present;
  return fc.constant(undefined);
}

function presentValues(field: Field): fc.Arbitrary<unknown> {
  switch (field.type) {
    case "quantity":
      return quantityValues(field);
    case "number": {
      const low = field.minimum ?? 0;
      const high = Math.min(field.maximum ?? 10, Math.max(low, 2 * (field.default ?? 5)));
      return field.integer ? fc.integer({ min: low, max: high }) : fc.double({ min: low, max: high, noNaN: true });
    }
    case "choice":
      return fc.constantFrom(...field.choices);
    case "flag":
      return fc.boolean();
    case "text":
      return fc.constant(field.default ?? "");
    case "component":
      return fc
        .constantFrom(...shippedCatalogue.names(field.family))
        .map((name) => shippedCatalogue.component(field.family, name));
    case "group":
      return groupValues(field.fields);
    case "list":
      return fc.constant([]);
    case "variant":
      return fc.constant(undefined);
  }
}

function groupValues(fields: Fields): fc.Arbitrary<Record<string, unknown>> {
  return fc.record(Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, valuesOf(field)])));
}

/** A section of the kind with random values; `fixed` values are as given. */
export function randomSection(
  kind: SectionKind,
  name: string,
  fixed: Readonly<Record<string, unknown>> = {},
): fc.Arbitrary<WrittenSection> {
  return groupValues(kind.fields).map((values) => ({ kind, name, values: { ...values, ...fixed } }));
}

/** A unit of the sections, or undefined when random parts do not fit one another. */
export function unitOrNothing(casing: Casing, sections: readonly WrittenSection[]): Unit | undefined {
  try {
    return assembleUnit(casing, sections).unit;
  } catch (error) {
    if (error instanceof SectionProblem) return undefined;
    throw error;
  }
}

const width = 2.4;
const height = 2.0;
/** The cabinet of every random unit. */
export const casing = {
  width,
  height,
  connectionHand: "right",
  panelThickness: 0.05,
  innerSkin: "solid",
  railHeight: 0.25,
  leakageClass: 6,
  ...usualCasingBuild,
} as const;

const kinds = sectionKinds as unknown as readonly SectionKind[];
/** Sections that may stand between mixing box and fan, in any order and number. */
const middle = kinds.filter(({ role, name }) => {
  const stands = role === undefined || role === "heating" || role === "cooling" || role === "humidifying";
  return stands && !["intake hood", "discharge plenum", "special"].includes(name);
});

/** A kind by its name. */
export function kindNamed(name: string): SectionKind {
  return kinds.find((kind) => kind.name === name) as SectionKind;
}

/** Dampers that fit the cabinet, blades anywhere from half open. */
const damperValues = (key: string, widest: number, highest: number) =>
  fc.record({
    [key]: fc.constant(undefined),
    width: fc.double({ min: 0.5 * widest, max: widest, noNaN: true }),
    height: fc.double({ min: 0.4 * highest, max: highest, noNaN: true }),
    bladeAngle: fc.double({ min: 45, max: 90, noNaN: true }),
  });

const mixingBox = fc
  .tuple(
    randomSection(kindNamed("mixing box"), "mixing box"),
    damperValues("unused", width, height),
    damperValues("unused", 1, 0.6),
    fc.boolean(),
  )
  .map(([section, outside, back, hasReturn]): WrittenSection => {
    const given = section.values.outsideAir as Record<string, unknown>;
    const outsideAir = { ...given, ...outside };
    const returnAir = hasReturn ? { ...given, ...back, place: "top" } : undefined;
    return { ...section, values: { ...section.values, outsideAir, returnAir, length: 1.4 } };
  });

/** A shut-off damper says its size; other faces fill the cabinet. */
function faceOf(kind: SectionKind): Readonly<Record<string, unknown>> {
  if (kind.name === "shut-off damper") return { width: 0.9 * width, height: 0.8 * height, bladeAngle: 80 };
  return { width: undefined, height: undefined };
}

/** Hood, mixing box, up to five sections in any order, fan. */
export const randomSections = fc
  .tuple(
    randomSection(kindNamed("intake hood"), "hood"),
    mixingBox,
    fc.array(fc.integer({ min: 0, max: middle.length - 1 }), { minLength: 1, maxLength: 5 }),
  )
  .chain(([hood, box, picks]) =>
    fc
      .tuple(
        ...picks.map((pick, index) =>
          randomSection(middle[pick] as SectionKind, `section ${index}`, faceOf(middle[pick] as SectionKind)),
        ),
      )
      .chain((between) =>
        randomSection(kindNamed("fan"), "fan", {
          diameter: 0.69,
          count: 1,
          motorPower: 22_000,
          inletClearance: undefined,
          speedControlled: true,
        }).map((fan): readonly WrittenSection[] => [hood, box, ...between, fan]),
      ),
  );

/** Weather, flow and loading anywhere in what units meet. */
export const randomCondition = fc
  .record({
    dryBulb: fc.double({ min: -30, max: 42, noNaN: true }),
    moistness: fc.double({ min: 0.1, max: 1, noNaN: true }),
    flow: fc.double({ min: 3, max: 11, noNaN: true }),
    filterLoading: fc.double({ min: 0, max: 1, noNaN: true }),
    barometricPressure: fc.double({ min: 75_000, max: 103_000, noNaN: true }),
    outsideAirShare: fc.double({ min: 0.6, max: 1, noNaN: true }),
  })
  .map(({ dryBulb, moistness, flow, filterLoading, barometricPressure, outsideAirShare }) => {
    const most = Math.min(0.025, 0.0038 * Math.exp(dryBulb / 14.5));
    const humidityRatio = moistness * most * 0.9;
    const base = sampleCondition({ barometricPressure, filterLoading });
    return {
      ...base,
      season: dryBulb > 12 ? ("cooling" as const) : ("heating" as const),
      outdoor: { ...base.outdoor, dryBulb, humidityRatio },
      surroundings: { dryBulb, humidityRatio },
      returnAir: { ...base.returnAir, outsideAirShare },
      flow: { mode: "flow held" as const, dryAirFlow: flow },
      exhaust: { dryAirFlow: 8, dryBulb: 22, humidityRatio: 0.007 },
    };
  });
