import fc from "fast-check";
import type { FanWheel } from "#component/fan-wheel";
import type { SectionKind } from "#section/contract";
import { sectionKinds } from "#section/kinds";
import { shippedCatalogue } from "#section/shipped.test-data";
import type { WrittenSection } from "./assemble.ts";
import type { Casing } from "./casing.ts";
import { usualCasingBuild } from "./casing-build.test-data.ts";
import { kindNamed, randomSection, unitOrNothing } from "./random-unit.test-data.ts";
import type { Unit } from "./unit.ts";

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <Value>(value: fc.Arbitrary<Value>) => fc.option(value, { nil: undefined });

/** Cabinets from a closet to a hall, of either hand, with and without rail. */
const casings: fc.Arbitrary<Casing> = fc
  .record({
    width: between(0.9, 6),
    height: between(0.9, 3.6),
    connectionHand: fc.constantFrom("left" as const, "right" as const),
    panelThickness: fc.constantFrom(0.0254, 0.0508, 0.0762, 0.1016),
    innerSkin: fc.constantFrom("solid" as const, "perforated" as const),
    railHeight: fc.constantFrom(0, 0.1, 0.2032, 0.3048, 0.6),
    leakageClass: fc.constant(3),
    build: fc.record({
      railFlange: between(0.04, 0.15),
      panelWidth: between(0.5, 1.8),
      roof: fc.constantFrom("as placed" as const, "none" as const),
      roofSlope: between(0, 0.2),
      roofOverhang: between(0, 0.3),
      liftingLugs: fc.constantFrom(4, 6, 8, 12),
    }),
  })
  .map(({ build, ...rest }) => ({ ...rest, ...usualCasingBuild, ...build }));

type Values = Readonly<Record<string, unknown>>;

/** A section of the kind whose sizes are drawn for the cabinet, the rest as `randomSection` draws it. */
function sized(kind: SectionKind, name: string, sizes: fc.Arbitrary<Values>): fc.Arbitrary<WrittenSection> {
  return fc
    .tuple(randomSection(kind, name), sizes)
    .map(([section, values]) => ({ ...section, values: { ...section.values, ...values } }));
}

/** A part of a side, or all of it. */
const share = (side: number, least = 0.4) => fc.oneof(fc.constant(undefined), between(least * side, side));

function damperSizes(width: number, height: number): fc.Arbitrary<Values> {
  return fc.record({
    damper: fc
      .constantFrom(...shippedCatalogue.names("damper"))
      .map((name) => shippedCatalogue.component("damper", name)),
    width: between(0.3 * width, width),
    height: between(0.3 * height, height),
    bladeAngle: between(0, 90),
  });
}

function coilSizes({ width, height }: Casing): fc.Arbitrary<Values> {
  return fc.record({
    stacked: fc.integer({ min: 1, max: height > 1.8 ? 3 : 2 }),
    finnedHeight: fc.constant(undefined),
    finnedLength: maybe(between(0.4 * width, width)),
    length: maybe(between(0.25, 2.5)),
    lanes: fc.integer({ min: 1, max: 4 }),
    panReach: between(0, 1.5),
    intermediatePans: fc.boolean(),
    circuits: fc.constant(undefined),
  }) as fc.Arbitrary<Values>;
}

function mixingSizes({ width, height }: Casing): fc.Arbitrary<Values> {
  return between(0.5, 2.6).chain((length) =>
    fc.record({
      length: fc.constant(length),
      outsideAir: damperSizes(width, height),
      returnAir: maybe(
        fc.constantFrom("top", "bottom", "side").chain((place) => {
          const [across, along] = place === "side" ? [length, height] : [width, length];
          return damperSizes(across, along).map((values) => ({ ...values, place }));
        }),
      ),
    }),
  );
}

function accessSizes({ height }: Casing): fc.Arbitrary<Values> {
  return between(0.45, 1.6).chain((length) =>
    fc.record({
      length: fc.constant(length),
      doorWidth: between(0.8 * Math.min(0.45, length), Math.min(1, length)),
      doorHeight: between(0.5 * height, Math.min(2, height)),
      window: fc.boolean(),
      light: fc.boolean(),
    }),
  );
}

function fanSizes({ width, height }: Casing): fc.Arbitrary<Values> {
  const wheels = shippedCatalogue
    .names("fan wheel")
    .map((name) => shippedCatalogue.component("fan wheel", name) as FanWheel);
  return fc.constantFrom(...wheels).chain((wheel) =>
    fc.record({
      wheel: fc.constant(wheel),
      class: fc.constantFrom(...wheel.classes.map(({ name }) => name)),
      diameter: between(wheel.smallestDiameter, Math.min(wheel.largestDiameter, 0.75 * Math.min(width, height))),
      count: fc.integer({ min: 1, max: 6 }),
      drive: fc.constant(undefined),
      motorPower: between(1000, 75_000),
      isolation: fc.constantFrom("springs", "rigid"),
      discharge: fc.constantFrom("forward", "up", "down"),
      outletDuct: fc.constantFrom(0, 0.5, 1.5),
      flexibleConnection: fc.constantFrom(0, 0.15, 0.3),
      upstreamSpace: between(0, 1.5),
      speedControlled: fc.constant(true),
    }),
  );
}

function plenumSizes({ width, height }: Casing): fc.Arbitrary<Values> {
  return fc
    .tuple(fc.integer({ min: 1, max: 3 }), between(0.5, 2), fc.constantFrom("horizontal", "up", "down"))
    .chain(([outlets, length, direction]) =>
      fc.record({
        outlets: fc.constant(outlets),
        length: fc.constant(length),
        direction: fc.constant(direction),
        outletWidth: between((0.3 * width) / outlets, width / outlets),
        outletHeight: between(0.2, 1).map((part) => part * (direction === "horizontal" ? height : length)),
      }),
    );
}

/** Sizes that a kind's fields ask of this cabinet. */
function sizesOf(kind: string, casing: Casing): fc.Arbitrary<Values> {
  const { width, height } = casing;
  if (kind.includes("coil")) return coilSizes(casing);
  switch (kind) {
    case "intake hood":
      return fc.record({ width: share(width), throatHeight: share(height) });
    case "mixing box":
      return mixingSizes(casing);
    case "shut-off damper":
      return damperSizes(width, height);
    case "access":
      return accessSizes(casing);
    case "spray gap":
      return fc.record({ length: between(0.22, 0.8), hatchHeight: between(0.3, 0.9).map((part) => part * height) });
    case "fan":
      return fanSizes(casing);
    case "discharge plenum":
      return plenumSizes(casing);
    case "special":
      return fc.record({
        what: fc.constant("bay"),
        curve: fc.constant([{ airflow: 4, pressureLoss: 50 }]),
        length: between(0.1, 2),
        mass: between(0, 900),
        boxHeight: share(height, 0.1),
      });
    case "attenuator":
    case "filter bank":
      return fc.constant({});
    default:
      return fc.record({ width: share(width), height: share(height) });
  }
}

const kinds = sectionKinds as unknown as readonly SectionKind[];
const anywhere = kinds.filter(({ name }) => !["intake hood", "mixing box", "fan", "discharge plenum"].includes(name));

function machineIn(casing: Casing): fc.Arbitrary<readonly WrittenSection[]> {
  const section = (name: string) => sized(kindNamed(name), name, sizesOf(name, casing));
  const others = (where: string, most: number) =>
    fc
      .array(fc.constantFrom(...anywhere), { maxLength: most })
      .chain((picks) =>
        fc.tuple(...picks.map((kind, index) => sized(kind, `${where} ${index + 1}`, sizesOf(kind.name, casing)))),
      );
  return fc
    .tuple(
      maybe(section("intake hood")),
      maybe(section("mixing box")),
      others("before", 6),
      section("fan"),
      others("behind", 3),
      maybe(section("discharge plenum")),
    )
    .map(([hood, box, before, fan, behind, plenum]) =>
      [hood, box, ...before, fan, ...behind, plenum].filter((each) => each !== undefined),
    );
}

/**
 * Machines of every kind of section in any order that can be built, in cabinets of any size and either hand: much wider than
 * what anyone would order.
 */
export const randomMachines: fc.Arbitrary<Unit> = casings
  .chain((casing) => machineIn(casing).map((sections) => unitOrNothing(casing, sections)))
  .filter((unit) => unit !== undefined);
