import { choice, factor, quantity, type ValuesOf } from "#form/field";
import { casingBuildFields } from "./casing-build.ts";

/** The cabinet: clear inside, panel, leakage, build. */
export const casingFields = {
  width: quantity("length", { meaning: "Clear width inside", minimum: "18 in", maximum: "30 ft" }),
  height: quantity("length", { meaning: "Clear height inside", minimum: "18 in", maximum: "20 ft" }),
  connectionHand: choice(["left", "right"], {
    meaning: "Side of pipes and doors, seen in airflow",
    default: "right",
  }),
  panelThickness: quantity("length", {
    meaning: "Double-wall panel, skin to skin",
    default: "2 in",
    minimum: "1 in",
    maximum: "6 in",
  }),
  innerSkin: choice(["solid", "perforated"], {
    meaning: "Inside of the panels: closed sheet, or perforated over fibre that takes up sound",
    default: "solid",
  }),
  railHeight: quantity("length", {
    meaning: "Base rail under the floor; the condensate trap must fit",
    default: "8 in",
    minimum: "0 in",
    maximum: "36 in",
  }),
  leakageClass: factor({
    meaning: "Casing leakage class: cfm per 100 ft² of casing at 1 in.wg, with the 0.65 power of pressure",
    default: 3,
    minimum: 0,
    maximum: 48,
  }),
  ...casingBuildFields,
} as const;

/** A casing as read, in SI. */
export type Casing = ValuesOf<typeof casingFields>;
