import { largestFlowHead, largestFlowWords, setSpeedWords } from "../largest-flow-print.ts";
import type { RateOutput } from "./rate-output.ts";
import type { Style } from "./rate-print.ts";

/** The most air that can come, on the day on which the intake draws most. */
export function printLargestFlow({ largestFlows }: RateOutput, style: Style): string {
  const most = largestFlows.toSorted((one, other) => other.intakeAirflow - one.intakeAirflow)[0];
  if (most === undefined) return "";
  const head = `${largestFlowHead}, in the weather of ${most.condition}`;
  return `${style.ink.quiet(head)}\n${largestFlowWords(most, setSpeedWords, style)}`;
}
