import { factor, integer, quantity } from "#form/field";
import { standardAirDensity } from "#quantity/standard-air";
import { defineFamily, type RecordHead } from "./family.ts";

/** Bent blades that throw drops out of the stream. Velocities are on the face. */
export interface MoistureEliminator {
  readonly head: RecordHead;
  /** Bends of the passage, blade to blade, depth along the flow (m). */
  readonly bends: number;
  readonly bladePitch: number;
  readonly depth: number;
  readonly lossCoefficient: number;
  /** Share of carried drops that is caught between the two velocities. */
  readonly capture: number;
  /** m/s below which drops follow the bends, and above which caught water is torn off again (standard air). */
  readonly lowestVelocity: number;
  readonly highestVelocity: number;
  /** m, drop of which half is caught, at the highest velocity. */
  readonly cutSize: number;
}

const fields = {
  bends: integer({ meaning: "Bends of the passage", minimum: 1, maximum: 8 }),
  bladePitch: quantity("length", { meaning: "Blade to blade", minimum: "0.5 in", maximum: "4 in" }),
  depth: quantity("length", { meaning: "Depth along the flow", minimum: "2 in", maximum: "24 in" }),
  lossCoefficient: factor({ meaning: "Loss on the face velocity", minimum: 0.5, maximum: 40 }),
  capture: quantity("share", {
    meaning: "Share of carried drops caught between the two velocities",
    minimum: "50 %",
    maximum: "100 %",
  }),
  lowestVelocity: quantity("velocity", {
    meaning: "Face velocity below which drops follow the bends",
    minimum: "50 fpm",
    maximum: "600 fpm",
  }),
  highestVelocity: quantity("velocity", {
    meaning: "Face velocity above which caught water is torn off again, standard air",
    minimum: "300 fpm",
    maximum: "2000 fpm",
  }),
  cutSize: quantity("smallLength", {
    meaning: "Drop of which half is caught at the highest velocity",
    minimum: "0.002 mm",
    maximum: "0.2 mm",
  }),
} as const;

/** The family `moisture eliminator`. */
export const moistureEliminatorFamily = defineFamily({
  name: "moisture eliminator",
  meaning: "Bent blades that catch drops carried by the air",
  fields,
  build: (values, head): MoistureEliminator => {
    if (!(values.lowestVelocity < values.highestVelocity)) {
      throw new RangeError("lowest velocity: must lie below the highest velocity");
    }
    return { head, ...values };
  },
});

/**
 * Face velocity above which caught water is torn off again, at the air's own density.
 *
 * @param highestVelocity m/s, 1…10: limit in standard air
 * @param density kg/m³, 0.7…1.5: density of the air
 * @returns m/s: limit in this air
 * @outside follows the root of density
 * @example eliminatorVelocityLimit(4, 1.20138 / 1.21) // 4.4 ± 0.001
 * @source souders-brown-1934 limit with the root of density
 */
export function eliminatorVelocityLimit(highestVelocity: number, density: number): number {
  return highestVelocity * Math.sqrt(standardAirDensity / density);
}

/**
 * Share of the carried drops that an eliminator catches. Fog, with drops far below the cut size, passes.
 *
 * @param eliminator record: the eliminator
 * @param velocity m/s, 0…10: face velocity
 * @param density kg/m³, 0.7…1.5: density of the air
 * @returns share: of the free liquid, caught and drained
 * @outside falls in proportion below the lowest velocity and to nothing at 1.3 times the highest
 * @example eliminatorCapture({ capture: 0.99, lowestVelocity: 1.5, highestVelocity: 4 }, 4.6, 1.20138) // 0.495 ± 0.001
 * @source from-memory of the shape of carry-over curves
 */
export function eliminatorCapture(
  eliminator: Pick<MoistureEliminator, "capture" | "lowestVelocity" | "highestVelocity">,
  velocity: number,
  density: number,
): number {
  const limit = eliminatorVelocityLimit(eliminator.highestVelocity, density);
  if (velocity < eliminator.lowestVelocity) return (eliminator.capture * velocity) / eliminator.lowestVelocity;
  if (velocity <= limit) return eliminator.capture;
  return eliminator.capture * Math.max(0, 1 - (velocity / limit - 1) / 0.3);
}

/**
 * Drop of which half is caught: the same Stokes number at every velocity.
 *
 * @param eliminator record: the eliminator
 * @param velocity m/s, above 0: face velocity
 * @returns m: drop diameter
 * @outside grows without bound as the air stands still
 * @example eliminatorCutSize({ cutSize: 2e-5, highestVelocity: 4 }, 1) // 4e-5 ± 1e-12
 * @source derived-here from a constant Stokes number
 */
export function eliminatorCutSize(
  eliminator: Pick<MoistureEliminator, "cutSize" | "highestVelocity">,
  velocity: number,
): number {
  return eliminator.cutSize * Math.sqrt(eliminator.highestVelocity / velocity);
}
