import type { FanDesign } from "./design.ts";

/** What the range depends on. */
type Driven = Pick<FanDesign, "speedControlled" | "drive" | "speedControl" | "motorSpeed">;

/** rev/s between which a direct motor can be led by its speed control; undefined for belts and fixed speeds. */
export function speedRange(design: Driven): { readonly lowest: number; readonly highest: number } | undefined {
  if (!design.speedControlled || design.drive === "belt") return undefined;
  const { lowestSpeed, highestSpeed } = design.speedControl;
  return { lowest: lowestSpeed * design.motorSpeed, highest: highestSpeed * design.motorSpeed };
}

/** rev/s that class and speed control let the wheel turn. */
export function highestSpeed(design: Driven & Pick<FanDesign, "maximumSpeed">): number {
  return Math.min(design.maximumSpeed, speedRange(design)?.highest ?? Number.POSITIVE_INFINITY);
}
