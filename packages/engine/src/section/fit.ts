import { inBothUnits } from "./both-units.ts";
import { SectionProblem } from "./contract.ts";

/** m: what a drawing's last digit is worth. */
const slack = 1e-6;

/**
 * Says where a part is larger than the clear length (m) that it stands in; `problem` in words, at the field `field`.
 *
 * @throws SectionProblem when `size` is more than `clear`
 */
export function requireFit(field: string, problem: string, size: number, clear: number): void {
  if (size > clear + slack) throw new SectionProblem(field, problem, `at most ${inBothUnits(clear, "length")}`);
}
