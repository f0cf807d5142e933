import { defineFamily, type RecordHead } from "#component/family";
import { choice, factor, flag, group, list, quantity, type ValuesOf } from "#form/field";
import { chooseCorrelation } from "./choose-correlation.ts";
import {
  type AirSideCorrelation,
  colburnFactor,
  correlationNames,
  correlationOfName,
  distanceFromRange,
  finPatterns,
  frictionFactor,
} from "./correlation.ts";
import type { FinnedBank } from "./finned-bank.ts";
import { finMaterialNames, tubeMaterialNames } from "./material.ts";
import { wetFrictionModels, wetFrictionRatio, wetHeatModels, wetSurfaceFactor } from "./wet-fin.ts";

/** Fields of a finned-surface record: tubes, pitches, fins, and how heat and friction are known. */
export const finnedSurfaceFields = {
  pattern: choice([...finPatterns], { meaning: "How the fin sheet is formed" }),
  tubeOutsideDiameter: quantity("length", { meaning: "Tube outside diameter", minimum: "1/4 in", maximum: "1-1/2 in" }),
  tubeWall: quantity("smallLength", { meaning: "Wall of the tube", minimum: "0.01 in", maximum: "0.15 in" }),
  tubeMaterial: choice(tubeMaterialNames, { meaning: "What the tubes are made of", default: "copper" }),
  transversePitch: quantity("length", { meaning: "Tube pitch across the flow", minimum: "0.5 in", maximum: "6 in" }),
  longitudinalPitch: quantity("length", { meaning: "Row pitch along the flow", minimum: "0.4 in", maximum: "6 in" }),
  staggered: flag({ meaning: "Rows set off by half a pitch", default: true }),
  finMaterial: choice(finMaterialNames, { meaning: "What the fins are made of", default: "aluminium" }),
  finThickness: quantity("smallLength", { meaning: "Fin thickness", minimum: "0.003 in", maximum: "0.03 in" }),
  collars: flag({ meaning: "Fin collars cover the tube between the fins", default: true }),
  correlation: choice(correlationNames, {
    meaning: "The published correlation that heat and friction follow; the one in range or nearest to it when left out",
    optional: true,
  }),
  heatFactor: factor({
    meaning: "Multiplies the correlation's dry heat transfer; from tests",
    default: 1,
    minimum: 0.2,
    maximum: 5,
  }),
  frictionFactor: factor({
    meaning: "Multiplies the correlation's dry friction; from tests",
    default: 1,
    minimum: 0.2,
    maximum: 5,
  }),
  contactResistance: quantity("foulingResistance", {
    meaning:
      "Between fin collar and tube, on the tube's outside, beyond what is inside the correlations (their authors left a sound joint's in); for loose or poorly expanded tubes",
    default: "0 m²K/W",
    minimum: "0 m²K/W",
    maximum: "0.001 m²K/W",
  }),
  tubeHeatFactor: factor({
    meaning: "Multiplies heat transfer inside the tubes; from tests",
    default: 1,
    minimum: 0.2,
    maximum: 5,
  }),
  wetHeat: choice([...wetHeatModels], {
    meaning: "Whose ratio of wet to dry heat transfer holds; the correlation's own, or Wang 2000, when left out",
    optional: true,
  }),
  wetHeatFactor: factor({
    meaning: "Ratio of wet to dry heat transfer from tests, instead of a published one",
    optional: true,
    minimum: 0.5,
    maximum: 2,
  }),
  lewisFactor: factor({
    meaning: "Heat transfer coefficient over mass transfer coefficient times specific heat, Le^(2/3)",
    default: 1,
    minimum: 0.6,
    maximum: 1.4,
  }),
  wetFriction: choice([...wetFrictionModels], {
    meaning: "Whose ratio of wet to dry friction holds",
    default: "common practice",
  }),
  wetFrictionFactor: factor({
    meaning: "Ratio of wet to dry friction from tests, instead of a published one",
    optional: true,
    minimum: 1,
    maximum: 4,
  }),
  tested: list(
    group(
      {
        reynolds: factor({ meaning: "Reynolds number of collar diameter and narrowest passage", minimum: 10 }),
        colburn: factor({ meaning: "Colburn factor j", minimum: 0.0001, maximum: 1 }),
        friction: factor({ meaning: "Fanning friction factor f", minimum: 0.0005, maximum: 5 }),
      },
      { meaning: "A tested point of the surface" },
    ),
    { meaning: "Tested curve of the surface, used instead of the correlation; rising Reynolds number", optional: true },
  ),
} as const;

/** A finned surface: continuous plate fins on round tubes. */
export type FinnedSurface = ValuesOf<typeof finnedSurfaceFields> & { readonly head: RecordHead };

/** A surface with the correlation that a bank of it is rated by: the one it names, or the one chosen for the bank. */
export type RatedSurface = FinnedSurface & { readonly correlation: string; readonly isChosen: boolean };

/** The family of finned surfaces. */
export const finnedSurfaceFamily = defineFamily({
  name: "finned surface",
  meaning: "Tube, pitches and fins of a coil, with the correlation or the test that gives its heat and friction",
  fields: finnedSurfaceFields,
  build: (values, head): FinnedSurface => {
    checkSurface(values);
    return { ...values, head };
  },
});

function checkSurface(values: ValuesOf<typeof finnedSurfaceFields>): void {
  if (!(values.tubeOutsideDiameter > 2 * values.tubeWall + 0.002)) {
    throw new RangeError("tube wall: the tube has no bore left; a wall below half the diameter is wanted");
  }
  if (!(values.transversePitch > values.tubeOutsideDiameter + 2 * values.finThickness)) {
    throw new RangeError("transverse pitch: tubes would touch; a pitch above the tube diameter is wanted");
  }
  if (values.correlation === undefined && (values.heatFactor !== 1 || values.frictionFactor !== 1)) {
    throw new RangeError(
      "correlation: multipliers are of one correlation; the one that they were found with is wanted",
    );
  }
  const tested = values.tested ?? [];
  if (tested.length === 1) throw new RangeError("tested: one point is no curve; two or more are wanted");
  for (let i = 1; i < tested.length; i++) {
    if (!(tested[i]!.reynolds > tested[i - 1]!.reynolds)) {
      throw new RangeError(`tested: Reynolds number ${tested[i]!.reynolds} does not rise; rising numbers are wanted`);
    }
  }
}

/**
 * A surface with the correlation that holds for a bank built of it. One that was chosen for another bank is chosen anew.
 *
 * @param surface record: the finned surface
 * @param bank record: the bank built of it
 * @returns record: the surface, its correlation named
 * @outside see `chooseCorrelation`
 * @example ratedSurface({ correlation: "Gray-Webb 1986" }, {}).isChosen // false
 * @source definition
 */
export function ratedSurface(surface: FinnedSurface & { readonly isChosen?: boolean }, bank: FinnedBank): RatedSurface {
  const { correlation } = surface;
  if (correlation !== undefined && surface.isChosen !== true) return { ...surface, correlation, isChosen: false };
  return { ...surface, correlation: chooseCorrelation(surface.pattern, bank).name, isChosen: true };
}

/**
 * Dry Colburn factor of a surface: its tested curve, or its correlation, times its heat factor.
 *
 * @param surface record: the finned surface
 * @param bank record: the bank built of it
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside below the correlation's range as in laminar flow, above it extrapolated
 * @example dryColburn({ tested: [{ reynolds: 1000, colburn: 0.02 }, { reynolds: 4000, colburn: 0.01 }], heatFactor: 1 }, {}, 2000)
 *   // 0.0141421356 ± 1e-9
 * @source definition
 */
export function dryColburn(surface: RatedSurface, bank: FinnedBank, reynolds: number): number {
  if (surface.tested !== undefined) {
    return surface.heatFactor * alongCurve(surface.tested, reynolds, (point) => point.colburn);
  }
  return surface.heatFactor * colburnFactor(correlationOf(surface), bank, reynolds);
}

/**
 * Dry Fanning friction factor of a surface: its tested curve, or its correlation, times its friction factor.
 *
 * @param surface record: the finned surface
 * @param bank record: the bank built of it
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside below the correlation's range as in laminar flow, above it extrapolated
 * @example dryFriction({ tested: [{ reynolds: 1000, friction: 0.08 }, { reynolds: 4000, friction: 0.04 }], frictionFactor: 1 },
 *   {}, 2000) // 0.0565685425 ± 1e-9
 * @source definition
 */
export function dryFriction(surface: RatedSurface, bank: FinnedBank, reynolds: number): number {
  if (surface.tested !== undefined) {
    return surface.frictionFactor * alongCurve(surface.tested, reynolds, (point) => point.friction);
  }
  return surface.frictionFactor * frictionFactor(correlationOf(surface), bank, reynolds);
}

/**
 * Ratio of wet to dry heat transfer coefficient of a surface: tested, or published for plain fins. For formed fins no
 * published ratio is at hand that covers these tubes: dry and wet are taken alike.
 *
 * @param surface record: the finned surface
 * @param bank record: the bank built of it
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns factor: wet over dry
 * @outside see `wetSurfaceFactor`
 * @example wetHeatFactorOf({ wetHeatFactor: 1.1 }, {}, 3000) // 1.1
 * @source mirth-ramadhyani-1993 dry correlations hold for wet formed fins within about 5 %
 */
export function wetHeatFactorOf(surface: RatedSurface, bank: FinnedBank, reynolds: number): number {
  if (surface.wetHeatFactor !== undefined) return surface.wetHeatFactor;
  if (surface.pattern !== "plain") return 1;
  return wetSurfaceFactor(surface.wetHeat ?? correlationOf(surface).wetHeat ?? "Wang 2000", bank, reynolds);
}

/**
 * Ratio of wet to dry friction of a surface: tested, or by the model it names.
 *
 * @param surface record: the finned surface
 * @param bank record: the bank built of it
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns factor: wet over dry
 * @outside see `wetFrictionRatio`
 * @example wetFrictionFactorOf({ wetFrictionFactor: 1.5 }, {}, 3000) // 1.5
 * @source common-practice
 */
export function wetFrictionFactorOf(surface: FinnedSurface, bank: FinnedBank, reynolds: number): number {
  return surface.wetFrictionFactor ?? wetFrictionRatio(surface.wetFriction, bank, reynolds);
}

/**
 * How far a surface's correlation is used outside its published range; 0 inside, and for tested surfaces within their
 * curve.
 *
 * @param surface record: the finned surface
 * @param bank record: the bank built of it
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns share: 0 inside; 0.25 when a quarter beyond a limit
 * @outside this is the measure of being outside
 * @example surfaceDistance({ tested: [{ reynolds: 1000 }, { reynolds: 4000 }] }, {}, 5000) // 0.25
 * @source definition
 */
export function surfaceDistance(surface: RatedSurface, bank: FinnedBank, reynolds: number): number {
  const { tested } = surface;
  if (tested !== undefined) {
    const low = tested[0]!.reynolds;
    const high = tested[tested.length - 1]!.reynolds;
    return Math.max(0, reynolds / high - 1, low / reynolds - 1);
  }
  return distanceFromRange(correlationOf(surface), bank, reynolds);
}

type Tested = NonNullable<FinnedSurface["tested"]>;

/** Straight between points in logarithms, extended by the end pieces. */
function alongCurve(points: Tested, reynolds: number, value: (point: Tested[number]) => number): number {
  let at = 1;
  while (at < points.length - 1 && reynolds > points[at]!.reynolds) at++;
  const [a, b] = [points[at - 1]!, points[at]!];
  const share = Math.log(reynolds / a.reynolds) / Math.log(b.reynolds / a.reynolds);
  return value(a) * (value(b) / value(a)) ** share;
}

function correlationOf(surface: RatedSurface): AirSideCorrelation {
  return correlationOfName(surface.correlation);
}
