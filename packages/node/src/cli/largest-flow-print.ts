import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import type { LargestFlow } from "@oncethrough/engine/unit/largest-flow";
import { glued, separator, wrapped } from "./ink.ts";
import type { Style } from "./rate/rate-print.ts";

/** Stands above what is told of the largest flow. */
export const largestFlowHead = "most air that can come, filters clean";

/** Where the speed of the largest flow comes from. */
export const setSpeedWords = "as fast as any condition asks, the maximum to set in a speed control";

/** The largest flow, and what it does at the intake. */
export function largestFlowWords(largest: LargestFlow, bound: string, style: Style): string {
  const say = (value: number, quantity: QuantityKind) => glued(printQuantity(value, quantity, style.system));
  const { fanSpeed, share, intakeAirflow, intake } = largest;
  const words = [
    `fan ${bound}, ${say(fanSpeed, "rotationalSpeed")}: ${say(share, "share")} of design airflow, ${say(intakeAirflow, "actualAirflow")} in at the intake`,
    ...intake.map(({ section, velocity, marginToOnset }) => {
      if (marginToOnset === undefined) return `${section} ${say(velocity, "velocity")}`;
      const where = marginToOnset < 0 ? "above" : "below";
      const margin = `${say(Math.abs(marginToOnset), "share")} ${where} the velocity at which water comes through`;
      const told = `${section} ${say(velocity, "velocity")}, ${margin}`;
      return marginToOnset < 0 ? style.ink.fail(told) : told;
    }),
  ];
  return wrapped(words.join(separator), style.columns);
}
