import { airViscosity } from "#fluid/air-transport";
import { choice, factor, integer, quantity } from "#form/field";
import { standardAirDensity } from "#quantity/standard-air";
import { filterFinalResistance } from "#standard/filter-final-resistance";
import { defineFamily, type RecordHead } from "./family.ts";

/** A filter of one depth and medium, in panels of standard faces. Velocities are on the nominal face of the panel. */
export interface FilterMedium {
  readonly head: RecordHead;
  readonly style: "pleated" | "rigid" | "v-bank" | "bag" | "pad";
  /** Minimum efficiency reporting value, 1…16; 17 and above: high-efficiency particulate. */
  readonly efficiencyClass: number;
  /** m/s on the nominal face at which the resistances hold, standard air. */
  readonly ratedVelocity: number;
  /** Pa. */
  readonly cleanResistance: number;
  /** Pa. */
  readonly changeOutResistance: number;
  /** Power of velocity that the clean resistance follows, 1 (creeping flow in the medium) … 2. */
  readonly exponent: number;
  /** m, along the flow. */
  readonly panelDepth: number;
  /** m² of medium per m² of nominal face. */
  readonly mediaAreaRatio: number;
  /** kg of dust per m² of nominal face from clean to change-out. */
  readonly dustHolding: number;
  /** Share of the outdoor dust that stays in the filter, by mass. */
  readonly arrestance: number;
}

const fields = {
  style: choice(["pleated", "rigid", "v-bank", "bag", "pad"], { meaning: "Build of the filter" }),
  efficiencyClass: integer({
    meaning: "Minimum efficiency reporting value; 17 and above for high-efficiency particulate filters",
    minimum: 1,
    maximum: 20,
  }),
  ratedVelocity: quantity("velocity", {
    meaning: "Velocity on the nominal face at which the resistances hold",
    minimum: "100 fpm",
    maximum: "750 fpm",
  }),
  cleanResistance: quantity("pressureDifference", {
    meaning: "Clean resistance at rated velocity",
    minimum: "0.02 in.wg",
    maximum: "2 in.wg",
  }),
  changeOutResistance: quantity("pressureDifference", {
    meaning: "Resistance at rated velocity at which the filter is changed",
    minimum: "0.1 in.wg",
    maximum: "4 in.wg",
  }),
  exponent: factor({ meaning: "Power of velocity that the clean resistance follows", minimum: 1, maximum: 2 }),
  panelDepth: quantity("length", { meaning: "Depth along the flow", minimum: "0.5 in", maximum: "40 in" }),
  mediaAreaRatio: factor({ meaning: "Area of medium over nominal face", minimum: 1, maximum: 80 }),
  dustHolding: quantity("massPerArea", {
    meaning: "Dust held per area of nominal face from clean to change-out",
    minimum: "0.05 kg/m²",
    maximum: "10 kg/m²",
  }),
  arrestance: quantity("share", { meaning: "Share of outdoor dust held, by mass", minimum: "20 %", maximum: "100 %" }),
} as const;

/** The family `filter medium`. */
export const filterMediumFamily = defineFamily({
  name: "filter medium",
  meaning: "Filter panels of one medium and depth",
  fields,
  build: (values, head): FilterMedium => {
    if (!(values.changeOutResistance > values.cleanResistance)) {
      throw new RangeError("change-out resistance: must lie above the clean resistance");
    }
    return { head, ...values };
  },
});

/** °C at which resistances are rated: standard air is dry air near 70 °F. */
const ratedTemperature = 21.1;
const ratedViscosity = airViscosity(ratedTemperature);

/**
 * Clean resistance at rated velocity in air of another density and viscosity: the powers that belong to the exponent of
 * velocity, so that the law holds in dimensionless form.
 *
 * @param medium record: the filter
 * @param density kg/m³, 0.7…1.5: density of the air
 * @param dryBulb °C, -60…60: dry-bulb temperature, for the viscosity
 * @returns Pa: clean resistance at rated velocity
 * @outside follows the same powers
 * @example cleanResistanceAtRated({ cleanResistance: 100, exponent: 1.5 }, 1.20138 / 4, 21.1) // 50 ± 0.001
 * @source derived-here from dimensional analysis
 */
export function cleanResistanceAtRated(
  medium: Pick<FilterMedium, "cleanResistance" | "exponent">,
  density: number,
  dryBulb: number,
): number {
  const n = medium.exponent;
  const viscosity = airViscosity(dryBulb) / ratedViscosity;
  return medium.cleanResistance * (density / standardAirDensity) ** (n - 1) * viscosity ** (2 - n);
}

/**
 * Resistance that dust adds at rated velocity: a bed in creeping flow, so it goes with the viscosity.
 *
 * @param medium record: the filter
 * @param loading share, 0…1: way from clean to change-out resistance at rated velocity
 * @param dryBulb °C, -60…60: dry-bulb temperature, for the viscosity
 * @returns Pa: resistance of the dust at rated velocity
 * @outside goes on in a straight line
 * @example dustResistanceAtRated({ cleanResistance: 100, changeOutResistance: 250 }, 0.5, 21.1) // 75 ± 1e-9
 * @source epa-cost-manual-filters drag of the dust cake
 */
export function dustResistanceAtRated(
  medium: Pick<FilterMedium, "cleanResistance" | "changeOutResistance">,
  loading: number,
  dryBulb: number,
): number {
  return (loading * (medium.changeOutResistance - medium.cleanResistance) * airViscosity(dryBulb)) / ratedViscosity;
}

/**
 * Resistance of a filter. The clean medium follows its power of velocity, the dust in it goes with velocity.
 *
 * @param medium record: the filter
 * @param faceVelocity m/s, 0…5: velocity on the nominal face of the panels
 * @param loading share, 0…1: way from clean to change-out resistance at rated velocity
 * @param density kg/m³, 0.7…1.5: density of the air
 * @param dryBulb °C, -60…60: dry-bulb temperature, for the viscosity
 * @returns Pa: resistance
 * @outside follows the same powers; loading above 1 goes on in a straight line
 * @example filterResistance({ ratedVelocity: 2.54, cleanResistance: 100, changeOutResistance: 250, exponent: 1.5 }, 2.54, 0.5, 1.20138, 21.1) // 175 ± 0.001
 * @source epa-cost-manual-filters drag of medium and dust cake; powers of density and viscosity derived-here
 */
export function filterResistance(
  medium: Pick<FilterMedium, "ratedVelocity" | "cleanResistance" | "changeOutResistance" | "exponent">,
  faceVelocity: number,
  loading: number,
  density: number,
  dryBulb: number,
): number {
  const velocity = faceVelocity / medium.ratedVelocity;
  const clean = cleanResistanceAtRated(medium, density, dryBulb) * velocity ** medium.exponent;
  return clean + dustResistanceAtRated(medium, loading, dryBulb) * velocity;
}

/**
 * Time until a filter is at change-out, with steady flow and dust.
 *
 * @param medium record: the filter
 * @param faceVelocity m/s, above 0: velocity on the nominal face
 * @param dustConcentration kg/m³, above 0: dust in the air that enters it
 * @returns s: time in service from clean to change-out
 * @outside infinite in clean or still air
 * @example filterLife({ dustHolding: 0.6, arrestance: 0.9 }, 2, 5e-8) / 3600 // 1851.85 ± 0.01
 * @source definition mass held over mass arriving
 */
export function filterLife(
  medium: Pick<FilterMedium, "dustHolding" | "arrestance">,
  faceVelocity: number,
  dustConcentration: number,
): number {
  return medium.dustHolding / (faceVelocity * dustConcentration * medium.arrestance);
}

/**
 * Final resistance at which the test of filters ends, the least that a change-out resistance is compared with.
 *
 * @param efficiencyClass count, 1…16: minimum efficiency reporting value
 * @param cleanResistance Pa, above 0: initial resistance
 * @returns Pa: twice the initial resistance or the class's value, whichever is larger
 * @outside classes above 16 count as 16
 * @example testFinalResistance(13, 100) // 348.72 ± 0.01
 * @source ashrae-52-2 final resistance
 */
export function testFinalResistance(efficiencyClass: number, cleanResistance: number): number {
  const { classes, timesInitial } = filterFinalResistance;
  const found = classes.find((each) => efficiencyClass <= each.highest) ?? classes[classes.length - 1]!;
  return Math.max(found.resistance, timesInitial * cleanResistance);
}

/**
 * Flow past a filter through the crack around its frames.
 *
 * @param gapArea m², at least 0: perimeter of the frames times the width of the crack
 * @param resistance Pa, at least 0: pressure across the filter
 * @param density kg/m³, 0.7…1.5: density of the air
 * @returns m³/s: bypass flow
 * @outside follows the root of pressure
 * @example bypassFlow(0.00244, 100, 1.2) // 0.018900 ± 1e-5
 * @source common-practice sharp-edged orifice with a discharge coefficient of 0.6
 */
export function bypassFlow(gapArea: number, resistance: number, density: number): number {
  return dischargeCoefficient * gapArea * Math.sqrt((2 * Math.max(0, resistance)) / density);
}

const dischargeCoefficient = 0.6;
