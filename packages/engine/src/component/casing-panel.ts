import { interpolate, monotoneTable } from "#numerics/interpolate";
import { plateDeflection as plates } from "#standard/plate-deflection";

/** Tables over short side over long side, which is 0 for a strip. */
const supportedAlpha = tableOf(plates.supported, "alpha");
const supportedBeta = tableOf(plates.supported, "beta");
const clampedAlpha = tableOf(plates.clamped, "alpha");

function tableOf<Key extends string>(
  rows: readonly ({ readonly ratio: number } & Readonly<Record<Key, number>>)[],
  key: Key,
) {
  const rising = [...rows].reverse();
  return monotoneTable(
    rising.map((row) => 1 / row.ratio),
    rising.map((row) => row[key]),
  );
}

/**
 * Heat that passes a flat panel, by area and difference of air temperatures, without what its frame adds.
 *
 * @param thickness m, 0.005…0.5: of the filling
 * @param conductivity W/mK, 0.01…1: of the filling
 * @param insideResistance m²K/W, 0…0.5: of the air inside
 * @param outsideResistance m²K/W, 0…0.5: of the air outside
 * @returns W/m²K: transmittance
 * @outside the same formula goes on
 * @example panelTransmittance(0.05, 0.037, 0.05, 0.04) // 0.69379 ± 5e-6
 * @source definition resistances in series
 */
export function panelTransmittance(
  thickness: number,
  conductivity: number,
  insideResistance: number,
  outsideResistance: number,
): number {
  return 1 / (insideResistance + thickness / conductivity + outsideResistance);
}

/**
 * Temperature of a casing's face on one side, where heat of transmittance `local` passes.
 *
 * @param air °C, -60…90: air on that side
 * @param beyond °C, -60…90: air on the other side
 * @param local W/m²K, 0…100: transmittance there, bridges included
 * @param film W/m²K, 1…100: surface coefficient on that side
 * @returns °C: temperature of the face
 * @outside the same formula goes on
 * @example faceTemperature(35, 12, 1.5, 8) // 30.6875 ± 1e-9
 * @source definition heat passed is heat taken up at the face
 */
export function faceTemperature(air: number, beyond: number, local: number, film: number): number {
  return air - (local / film) * (air - beyond);
}

/**
 * Largest local transmittance at which a face stays at a dew point.
 *
 * @param air °C, -60…90: air on that side
 * @param beyond °C, -60…90: air on the other side
 * @param dewPoint °C, -60…90: of the air on that side
 * @param film W/m²K, 1…100: surface coefficient on that side
 * @returns W/m²K: transmittance; infinite where the other side is not colder
 * @outside the same formula goes on
 * @example dryTransmittance(35, 12, 24, 8) // 3.8261 ± 5e-5
 * @source definition face temperature solved for the transmittance
 */
export function dryTransmittance(air: number, beyond: number, dewPoint: number, film: number): number {
  return beyond < air ? (film * Math.max(0, air - dewPoint)) / (air - beyond) : Number.POSITIVE_INFINITY;
}

/**
 * Bending stiffness of two skins bonded to a core between them, by width.
 *
 * @param outer m, 0.0002…0.01: outer skin
 * @param inner m, 0.0002…0.01: inner skin
 * @param core m, 0.005…0.3: between the skins
 * @param stiffness Pa, 1e9…1e12: Young's modulus of the skins
 * @returns N·m: stiffness
 * @outside the same formula goes on
 * @example sandwichStiffness(0.0012, 0.0009, 0.05, 200e9) // 294570 ± 100
 * @source allen-sandwich-1969 thin skins, Poisson's ratio 0.3
 */
export function sandwichStiffness(outer: number, inner: number, core: number, stiffness: number): number {
  const apart = core + (outer + inner) / 2;
  return ((stiffness / (1 - 0.3 ** 2)) * outer * inner * apart * apart) / (outer + inner);
}

/**
 * Deflection of a bonded panel under even pressure, as a strip across its short side: bending and shear of the core.
 *
 * @param pressure Pa, 0…20000: on the panel
 * @param span m, 0.1…5: short side, between supported edges
 * @param bending N·m, 1…1e8: stiffness of the skins
 * @param shear N/m, 1…1e9: shear stiffness by width, modulus of the core times the square of the skins' distance over the core
 * @returns m: deflection in the middle
 * @outside the same formula goes on
 * @example sandwichDeflection(2000, 1, 294570, 104248) // 0.0024866 ± 1e-6
 * @source allen-sandwich-1969 simply supported strip
 */
export function sandwichDeflection(pressure: number, span: number, bending: number, shear: number): number {
  return (5 * pressure * span ** 4) / (384 * bending) + (pressure * span * span) / (8 * shear);
}

/**
 * Deflection of a single sheet under even pressure, small deflections: above half the thickness the sheet also hangs
 * like a membrane and gives less than this.
 *
 * @param edges choice: `supported` or `clamped`
 * @param pressure Pa, 0…20000: on the sheet
 * @param shortSide m, 0.05…5: short side
 * @param longSide m, 0.05…20: long side; a shorter one counts as a square
 * @param thickness m, 0.0002…0.05: of the sheet
 * @param stiffness Pa, 1e9…1e12: Young's modulus
 * @returns m: deflection in the middle
 * @outside the same formula goes on, too large above half the thickness
 * @example plateDeflection("clamped", 2000, 0.6, 0.6, 0.0012, 200e9) * 1000 // 10.35 ± 0.001
 * @source roark-plates Table 11.4 case 1a
 */
export function plateDeflection(
  edges: "supported" | "clamped",
  pressure: number,
  shortSide: number,
  longSide: number,
  thickness: number,
  stiffness: number,
): number {
  const alpha = interpolate(edges === "supported" ? supportedAlpha : clampedAlpha, Math.min(1, shortSide / longSide));
  return (alpha * pressure * shortSide ** 4) / (stiffness * thickness ** 3);
}

/**
 * Largest bending stress of a simply supported sheet under even pressure, small deflections.
 *
 * @param pressure Pa, 0…20000: on the sheet
 * @param shortSide m, 0.05…5: short side
 * @param longSide m, 0.05…20: long side
 * @param thickness m, 0.0002…0.05: of the sheet
 * @returns Pa: stress
 * @outside the same formula goes on
 * @example plateStress(1000, 0.5, 1, 0.002) / 1e6 // 38.1375 ± 1e-4
 * @source roark-plates Table 11.4 case 1a
 */
export function plateStress(pressure: number, shortSide: number, longSide: number, thickness: number): number {
  const beta = interpolate(supportedBeta, Math.min(1, shortSide / longSide));
  return (beta * pressure * shortSide ** 2) / thickness ** 2;
}
