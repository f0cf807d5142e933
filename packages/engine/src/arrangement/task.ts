import type { Duty } from "#duty/duty";
import type { ArrangementTask } from "./arrange.ts";

/** The arrangement's share of a duty. */
export function arrangementTask(duty: Duty): ArrangementTask {
  return {
    placement: duty.site.placement,
    corrosionClass: duty.site.corrosionClass,
    limits: duty.limits,
    voltage: duty.utilities.electricity.voltage,
  };
}
