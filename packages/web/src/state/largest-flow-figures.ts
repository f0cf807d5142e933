import type { QuantityKind, UnitSystem } from "@oncethrough/engine/quantity/kind";
import { largestFlowOf } from "@oncethrough/engine/unit/largest-flow";
import { printFigure } from "./figures.ts";
import type { SoundJob } from "./sound-job.ts";

/** Names and values of what a section meets at the largest flow that can occur; a value that fails is marked. */
export interface LargestFlowFigure {
  readonly name: string;
  readonly value: string;
  readonly fails: boolean;
}

/** What hood, louver and fan meet at the largest flow in a condition's weather; nothing of other sections. */
export function largestFlowFigures(
  { job, book }: SoundJob,
  index: number,
  key: string,
  system: UnitSystem,
): readonly LargestFlowFigure[] {
  const section = job.unit.sections[index];
  const rating = book.largestFlow(key);
  if (section === undefined || rating === undefined) return [];
  const most = largestFlowOf(job.unit, rating);
  const row = (name: string, value: number, quantity: QuantityKind, fails = false): LargestFlowFigure => ({
    name,
    value: printFigure(value, quantity, system),
    fails,
  });
  const flow = row("of design airflow", most.share, "share");
  if (section.behaviour.role === "fan")
    return [row("fan speed: the maximum to set in a speed control", most.fanSpeed, "rotationalSpeed"), flow];
  const intake = most.intake.find((each) => each.section === section.name);
  if (intake === undefined) return [];
  const { velocity, marginToOnset } = intake;
  return [
    flow,
    row("airflow in at the intake", most.intakeAirflow, "actualAirflow"),
    row(marginToOnset === undefined ? "velocity in the opening" : "free-area velocity", velocity, "velocity"),
    ...(marginToOnset === undefined
      ? []
      : [row("margin to water penetration", marginToOnset, "share", marginToOnset < 0)]),
  ];
}
