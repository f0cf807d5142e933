import { metresPerInch } from "#quantity/inch-pound";
import { SectionProblem } from "../contract.ts";
import type { FanValues } from "./fields.ts";

/** m: a damper along the airflow, its blades open. */
export const backdraftDepth = 0.1;
/** m between its frame and the far face of the wall that it hangs on. */
export const backdraftStandOff = 0.004;
/** m: what a cell of the inlet wall keeps beside the damper's frame; a blade. */
const besideFrame = 0.05;
const bladeWidth = 0.1;
/** Side of the damper over the diameter of the inlet's throat, where the cell leaves it. */
const sideOverThroat = 1.5;

/** m² of one fan's damper face: a square before a plenum wheel's inlet, or the outlet of a housing. */
export function backdraftArea(
  values: Pick<FanValues, "wheel" | "diameter" | "backdraftDampers" | "upstreamSpace">,
  cell: number,
  outletArea: number,
): number {
  if (outletArea > 0) return outletArea;
  const throat = values.wheel.inletDiameter * values.diameter;
  if (values.backdraftDampers && values.upstreamSpace < backdraftDepth + backdraftStandOff) {
    throw new SectionProblem(
      "upstreamSpace",
      "the backdraft dampers before the inlets find no room",
      `at least ${((backdraftDepth + backdraftStandOff) / metresPerInch).toFixed(1)} in`,
    );
  }
  return Math.max(throat, Math.min(sideOverThroat * throat, cell - besideFrame)) ** 2;
}

/** Blades one above the other in a damper of a side in m. */
export function backdraftBlades(side: number): number {
  return Math.max(2, Math.round(side / bladeWidth));
}

/** m. */
export function backdraftSide({ backdraftFace }: { readonly backdraftFace: number }): number {
  return Math.sqrt(backdraftFace);
}
