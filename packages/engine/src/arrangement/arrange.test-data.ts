import type { Unit } from "#unit/unit";
import type { ArrangementTask } from "./arrange.ts";
import { type Running, runUnit } from "./running.ts";

/** A site on a roof that lets a unit of any size stand, and common roads. */
export const sampleTask: ArrangementTask = {
  placement: "roof",
  corrosionClass: "C3",
  voltage: 460,
  limits: {
    length: undefined,
    width: undefined,
    height: undefined,
    shippingLength: 12.192,
    shippingWidth: 2.5908,
    shippingHeight: 2.5908,
    shippingMass: 18_000,
  },
};

/** A unit that runs with `pressure` Pa in every compartment, `rise` Pa over its fans, and `drained` kg/s from every pan. */
export function runningAt(unit: Unit, pressure: number, rise: number, drained = 0): Running {
  const still = runUnit(unit, []);
  const steady = (value: number) => ({ least: value, leastAt: "steady", most: value, mostAt: "steady" });
  return {
    ...still,
    sections: still.sections.map(({ section }) => ({
      section,
      wallPressure: steady(pressure),
      staticPressure: steady(pressure),
      drained: steady(drained),
    })),
    fanRise: steady(rise),
  };
}
