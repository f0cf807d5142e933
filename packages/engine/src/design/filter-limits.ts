import { choice, integer, quantity, type ValuesOf } from "#form/field";

/** What alternatives of a filter bank may use and have to keep, as a person writes it. */
export const filterLimitFields = {
  leastClass: integer({
    meaning: "Lowest efficiency class of the final filter; that of the present one when left out",
    optional: true,
    minimum: 1,
    maximum: 20,
  }),
  prefilter: choice(["with or without", "with", "without"], {
    meaning: "Whether a prefilter stands in the same frames",
    default: "with or without",
  }),
  rack: choice(["either", "flat", "angled"], { meaning: "How the panels stand", default: "either" }),
  changeOutLoss: quantity("pressureDifference", {
    meaning: "Most that the bank may lose at change-out",
    optional: true,
    minimum: "0.1 in.wg",
    maximum: "6 in.wg",
  }),
} as const;

/** Limits as read. */
export type FilterLimitValues = ValuesOf<typeof filterLimitFields>;
