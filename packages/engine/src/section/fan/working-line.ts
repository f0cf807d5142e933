import type { QuantityKind } from "#quantity/kind";
import type { WorkingLine } from "../contract.ts";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** A line of a fan's arithmetic. */
export type FanWorkingLine = WorkingLine<FanDesign, FanSectionRating>;

/** A value put into a line. */
export function term(
  symbol: string,
  name: string,
  quantity: QuantityKind | "count" | "factor",
  value: (rating: FanSectionRating, design: FanDesign) => number,
): FanWorkingLine["terms"][number] {
  return { symbol, name, quantity, value };
}
