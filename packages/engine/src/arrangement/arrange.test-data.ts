import type { ArrangementTask } from "./arrange.ts";

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
