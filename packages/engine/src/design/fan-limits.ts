import { choice, type GroupCheck, integer, quantity, type ValuesOf } from "#form/field";

/** What alternatives of a fan may use and have to keep, as a person writes it. */
export const fanLimitFields = {
  pressureToPeak: quantity("share", {
    meaning: "Highest share of the peak static pressure; owners ask 90 %",
    default: "90 %",
    minimum: "30 %",
    maximum: "100 %",
  }),
  fewestFans: integer({ meaning: "Fewest fans", default: 1, minimum: 1, maximum: 36 }),
  mostFans: integer({ meaning: "Most fans", default: 16, minimum: 1, maximum: 36 }),
  drive: choice(["either", "belt", "direct"], { meaning: "How the motors drive", default: "either" }),
  sound: quantity("weightedSoundLevel", {
    meaning: "Highest A-weighted sound power at the outlet",
    optional: true,
    minimum: "40 dBA",
    maximum: "140 dBA",
  }),
  length: quantity("length", {
    meaning: "Longest fan section",
    optional: true,
    minimum: "12 in",
    maximum: "40 ft",
  }),
} as const;

/** Limits as read. */
export type FanLimitValues = ValuesOf<typeof fanLimitFields>;

/** No more fans at least than at most. */
export const checkFanLimits: GroupCheck = (values, say) => {
  if (Number(values.fewestFans) > Number(values.mostFans))
    say("fewestFans", "the lower limit is above the upper one", "a lower one");
};
