import { defineKind } from "../contract.ts";
import { compareDeclared } from "./declared.ts";
import { prepareFan } from "./design.ts";
import { fanFields } from "./fields.ts";
import { fanFigures } from "./figures.ts";
import { drawHousedFan } from "./housed-picture.ts";
import { fanLosses } from "./losses.ts";
import { fanNotes, fanShortfalls } from "./notes.ts";
import { fanBuild } from "./order.ts";
import { fanParts } from "./parts.ts";
import { drawPlenumWheels } from "./plenum-picture.ts";
import { completeFan, createFanRating, rateFan } from "./rate.ts";
import { fanSound } from "./sound.ts";
import { fanWorking } from "./working.ts";

/** The fans that move the air through the unit. */
export const fan = defineKind({
  name: "fan",
  role: "fan",
  meaning:
    "Airfoil centrifugal fan in a housing, or airfoil plenum wheels, one or several, with motors, drives and springs",
  fields: fanFields,
  prepare: prepareFan,
  createRating: createFanRating,
  rate: rateFan,
  complete: completeFan,
  layout: ({ length, housed, discharge }) => ({ length, outside: 0, wallBehind: housed && discharge === "forward" }),
  parts: fanParts,
  picture: (design, frame, name) =>
    design.housed ? drawHousedFan(design, frame, name) : drawPlenumWheels(design, frame, name),
  // A housed fan's cabinet stands at the suction before it; plenum wheels press into theirs.
  wallPressure: (rating) =>
    rating.outletVelocity > 0 ? rating.entering.staticPressure : rating.leaving.staticPressure,
  orderBy: ["shaftPower", "flowPerFan", "staticPressure", "fanSpeed"],
  orderBuild: fanBuild,
  sound: fanSound,
  losses: fanLosses,
  figures: fanFigures,
  working: fanWorking,
  shortfalls: fanShortfalls,
  notes: fanNotes,
  declared: compareDeclared,
});
