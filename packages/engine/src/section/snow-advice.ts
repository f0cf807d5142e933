import type { Condition } from "#duty/condition";
import { snowShareLifted } from "#fluid/precipitation";
import { printQuantity } from "#quantity/print";
import { inBothUnits } from "./both-units.ts";
import type { Note } from "./contract.ts";

/** m/s: 250 ft/min, the middle of what practice asks of air that is to leave snow behind. */
const calm = 250 * (0.3048 / 60);

/** An intake in snow. */
export interface SnowyIntake {
  /** m/s through the plane by which air comes in, and its m². */
  readonly velocity: number;
  readonly area: number;
  /** kg/m³. */
  readonly density: number;
  /** The plane, in words. */
  readonly plane: string;
  /** Air rises through it, so that flakes can fall out. */
  readonly isRising: boolean;
}

/**
 * Advice on snow at an intake. No standard test of intakes in snow is known: this is advice, never a verdict.
 */
export function snowAdvice({ outdoor }: Condition, intake: SnowyIntake): readonly Note[] {
  const { snow } = outdoor;
  if (snow === undefined || intake.velocity === 0) return [];
  return [
    { what: velocityAdvice(snow, intake), weight: "information", source: "common-practice" },
    {
      what: `advice on ${snow} snow: the lower edge at least ${inBothUnits(0.3048, "length")} above the snow expected to lie before it, no roof or parapet off which it drifts in, a drained and accessible space behind`,
      weight: "information",
      source: "common-practice",
    },
  ];
}

function velocityAdvice(snow: string, intake: SnowyIntake): string {
  const { velocity, area, density, plane, isRising } = intake;
  const at = `advice on ${snow} snow: ${inBothUnits(velocity, "velocity")} through ${plane}`;
  const share = isRising
    ? `, where ${printQuantity(snowShareLifted(velocity, density), "share", "si")} of the flakes would rise with the air`
    : ", which flakes follow";
  const usual = `practice asks ${inBothUnits(calm, "velocity")} or less`;
  if (velocity <= calm) return `${at}${share}; ${usual}`;
  return `${at}${share}; ${usual}, here ${inBothUnits((area * velocity) / calm, "area")}`;
}
