import type { FinnedSurface } from "#component/finned-surface/family";
import { component, type GroupCheck, integer, list, quantity, type ValuesOf } from "#form/field";

/** What alternatives of a coil may use and have to keep, as a person writes it. */
export const coilLimitFields = {
  faceVelocity: quantity("velocity", {
    meaning: "Highest face velocity, of the air as it enters; a cooling coil must not throw water besides",
    optional: true,
    minimum: "50 fpm",
    maximum: "1500 fpm",
  }),
  airPressureDrop: quantity("pressureDifference", {
    meaning: "Highest air pressure loss, as wet as the coil is",
    optional: true,
    minimum: "0.01 in wg",
    maximum: "10 in wg",
  }),
  waterPressureDrop: quantity("liquidPressureDrop", {
    meaning: "Highest water pressure drop between connections",
    optional: true,
    minimum: "0.1 ft wg",
    maximum: "200 ft wg",
  }),
  leastTubeVelocity: quantity("liquidVelocity", {
    meaning: "Lowest velocity in the tubes",
    default: "1 ft/s",
    minimum: "0 ft/s",
    maximum: "7.8 ft/s",
  }),
  mostTubeVelocity: quantity("liquidVelocity", {
    meaning: "Highest velocity in the tubes",
    default: "7.8 ft/s",
    minimum: "0.5 ft/s",
    maximum: "7.8 ft/s",
  }),
  fewestRows: integer({ meaning: "Fewest rows", default: 1, minimum: 1, maximum: 12 }),
  mostRows: integer({ meaning: "Most rows", default: 12, minimum: 1, maximum: 12 }),
  fewestFins: quantity("pitch", {
    meaning: "Fewest fins",
    default: "6 per in",
    minimum: "4 per in",
    maximum: "16 per in",
  }),
  mostFins: quantity("pitch", {
    meaning: "Most fins",
    default: "14 per in",
    minimum: "4 per in",
    maximum: "16 per in",
  }),
  surfaces: list(
    component<FinnedSurface>()("finned surface", { meaning: "Record of tubes and fins in the catalogue" }),
    {
      meaning: "Surfaces that may be used; every one of the catalogue but those for steam when left out",
      optional: true,
    },
  ),
} as const;

/** Lower limits not above the upper ones. */
export const checkCoilLimits: GroupCheck = (values, say) => {
  for (const [least, most] of [
    ["fewestRows", "mostRows"],
    ["fewestFins", "mostFins"],
    ["leastTubeVelocity", "mostTubeVelocity"],
  ] as const) {
    if (Number(values[least]) > Number(values[most]))
      say(least, "the lower limit is above the upper one", "a lower one");
  }
};

/** Limits as read. */
export type CoilLimitValues = ValuesOf<typeof coilLimitFields>;
