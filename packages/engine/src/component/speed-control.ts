import { factor, type ValuesOf } from "#form/field";
import { speedControlEfficiency } from "#standard/drive-losses";
import { defineFamily, type RecordHead } from "./family.ts";
import { inputPowerFromPartLoad } from "./part-load.ts";

const fields = {
  lowestSpeed: factor({
    meaning: "Lowest share of the motor's rated speed for good running",
    default: 0.1,
    minimum: 0.01,
    maximum: 1,
  }),
  highestSpeed: factor({
    meaning: "Highest share of the motor's rated speed",
    default: 1.2,
    minimum: 0.5,
    maximum: 2,
  }),
} as const;

/** A variable-frequency speed control, as large as its motor. */
export interface SpeedControl extends ValuesOf<typeof fields> {
  readonly head: RecordHead;
}

/** Variable-frequency speed controls. */
export const speedControlFamily = defineFamily({
  name: "speed control",
  meaning: "Variable-frequency speed control, sized as its motor",
  fields,
  build: (values: ValuesOf<typeof fields>, head: RecordHead): SpeedControl => ({ ...values, head }),
});

/**
 * Electric power into a variable-frequency speed control. Its loss warms the room or roof where it hangs, not the air.
 *
 * @param ratedPower W, 746…149140: rated output, that of the motor it feeds
 * @param output W, 0 or more: electric power to the motor
 * @returns W: electric power from the mains
 * @outside beyond the rated output the curve goes on
 * @example 5 * 7457 / speedControlInputPower(10 * 745.7, 5 * 745.7) / 10 // 0.938 ± 5e-5
 * @source energyplus-engineering-reference fan component model, variable-frequency drive
 */
export function speedControlInputPower(ratedPower: number, output: number): number {
  return inputPowerFromPartLoad(speedControlEfficiency.rows, ratedPower, output);
}
