import { choice, integer, list, quantity, text } from "#form/field";
import { casingFrameNames } from "#standard/casing-frame";
import { panelCores, sheetMetals } from "#standard/material";
import { sheetGaugeNames } from "#standard/sheet-gauge";

const metal = (meaning: string) => choice(sheetMetals, { meaning, default: "galvanized steel" });

/** What the panels, the frame, the rail and the roof are made of; nothing of it changes the air's way. */
export const casingBuildFields = {
  outerMetal: metal("Metal of the outer skin"),
  outerGauge: choice(sheetGaugeNames, { meaning: "Gauge of the outer skin", default: "18" }),
  innerMetal: metal("Metal of the inner skin and the floor"),
  innerGauge: choice(sheetGaugeNames, { meaning: "Gauge of the inner skin", default: "20" }),
  floorGauge: choice(sheetGaugeNames, { meaning: "Gauge of the floor that is walked on", default: "14" }),
  panelCore: choice(panelCores, { meaning: "What fills the panels", default: "polyurethane foam" }),
  panelWidth: quantity("length", {
    meaning: "Widest panel along the airflow; longer sections take several",
    default: "48 in",
    minimum: "18 in",
    maximum: "72 in",
  }),
  frame: choice(casingFrameNames, {
    meaning: "How the panels hold together",
    default: "thermally broken aluminium",
  }),
  finish: choice(["mill", "polyester powder", "epoxy and polyurethane"], {
    meaning: "Coat of the outside",
    default: "polyester powder",
  }),
  railThickness: quantity("smallLength", {
    meaning: "Thickness of the base rail's channel",
    default: "0.1875 in",
    minimum: "0.07 in",
    maximum: "0.5 in",
  }),
  railFlange: quantity("length", {
    meaning: "Flange of the base rail's channel",
    default: "3 in",
    minimum: "1.5 in",
    maximum: "6 in",
  }),
  supportSpacing: quantity("length", {
    meaning: "Most between supports under the base rail",
    default: "8 ft",
    minimum: "2 ft",
    maximum: "20 ft",
  }),
  roof: choice(["as placed", "weather roof", "none"], {
    meaning: "A weather roof over the cabinet; as placed, every unit that does not stand indoors has one",
    default: "as placed",
  }),
  roofSlope: quantity("share", {
    meaning: "Fall of the weather roof across the unit",
    default: "2 %",
    minimum: "0 %",
    maximum: "20 %",
  }),
  roofOverhang: quantity("length", {
    meaning: "How far the weather roof stands over the walls",
    default: "3 in",
    minimum: "0 in",
    maximum: "12 in",
  }),
  liftingLugs: integer({
    meaning: "Lifting lugs of each piece, half of them on each side",
    default: 4,
    minimum: 4,
    maximum: 12,
  }),
  slingAngle: quantity("angle", {
    meaning: "Slings from the horizontal, at the hook",
    default: "60 deg",
    minimum: "45 deg",
    maximum: "90 deg",
  }),
  splitsBefore: list(text({ meaning: "Name of a section", longest: 40 }), {
    meaning: "Sections before which the unit comes apart for shipping; left out, as the limits ask",
    optional: true,
    most: 20,
  }),
} as const;
