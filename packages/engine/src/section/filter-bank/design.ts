import type { FilterMedium } from "#component/filter-medium";
import { wallOpeningLoss } from "#component/fitting-loss";
import { choice, component, quantity, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";
import { frameArea } from "../damper-part.ts";
import { layOutFlat, layOutLeaning, metres, type PanelGrid, panelSides } from "./panel-layout.ts";

/** What a person writes about a filter bank. */
export const filterBankFields = {
  medium: component<FilterMedium>()("filter medium", { meaning: "The filter's record in the catalogue" }),
  prefilter: component<FilterMedium>()("filter medium", {
    meaning: "The record of a prefilter that stands in the same frames, where there is one",
    optional: true,
  }),
  rack: choice(["flat", "angled"], {
    meaning: "Panels across the airway, or leaning against one another in V's",
    default: "flat",
  }),
  panels: choice(["24 in and 12 in", "all standard sizes"], {
    meaning: "Which standard faces the rack may use",
    default: "24 in and 12 in",
  }),
  includedAngle: quantity("angle", {
    meaning: "Angle between neighbouring panels of an angled rack",
    default: "45 deg",
    minimum: "20 deg",
    maximum: "120 deg",
  }),
  crackWidth: quantity("smallLength", {
    meaning: "Crack around each panel that is left by gaskets and fasteners",
    default: "0.1 mm",
    minimum: "0 mm",
    maximum: "20 mm",
  }),
  dustConcentration: quantity("concentration", {
    meaning: "Dust in the outdoor air, for the life of the filters",
    default: "40 µg/m³",
    minimum: "1 µg/m³",
    maximum: "5000 µg/m³",
  }),
  length: quantity("length", {
    meaning: "Length of the section, with the space to take panels out",
    default: "44 in",
    minimum: "4 in",
    maximum: "20 ft",
  }),
} as const;

/** A filter bank ready to be rated. Areas are apart: panels' faces, medium, section, gaps between leaning panels. */
export interface FilterBankDesign {
  readonly medium: FilterMedium;
  readonly prefilter: FilterMedium | undefined;
  readonly rack: "flat" | "angled";
  readonly grid: PanelGrid;
  readonly panelCount: number;
  /** degrees from the airflow at which panels lean; 90 for a flat rack. */
  readonly halfAngle: number;
  /** m that one row takes of the height, and the panels of the length. */
  readonly rowPitch: number;
  readonly rackDepth: number;
  /** m². */
  readonly panelArea: number;
  readonly mediaArea: number;
  readonly sectionArea: number;
  readonly gapArea: number;
  /** m² of the section that is closed with sheet: sides, and top or bottom. */
  readonly blankArea: number;
  /** Loss of gap and turns on the gap velocity, 0 for a flat rack without blank-offs. */
  readonly gapLossCoefficient: number;
  readonly crackArea: number;
  readonly dustConcentration: number;
  readonly length: number;
}

/** Lays the panels out in the cabinet. */
export function prepareFilterBank(values: ValuesOf<typeof filterBankFields>, frame: Frame): FilterBankDesign {
  const sides = panelSides[values.panels];
  const thickness = values.medium.panelDepth + (values.prefilter?.panelDepth ?? 0);
  const isFlat = values.rack === "flat";
  const halfAngle = isFlat ? 90 : values.includedAngle / 2;
  const laid = isFlat
    ? flatRack(frame, thickness, values.length, sides)
    : layOutLeaning(frame.width, frame.height, values.length, thickness, halfAngle, sides);
  if (laid === undefined) throw noRoom(values.length, isFlat);
  const panelArea = metres(laid.columns) * metres(laid.rows);
  const sectionArea = frameArea(frame);
  const sine = Math.sin((halfAngle * Math.PI) / 180);
  const gapArea = panelArea * sine;
  const openHeight = isFlat ? metres(laid.rows) : laid.rows.length * laid.pitch;
  return {
    medium: values.medium,
    prefilter: values.prefilter,
    rack: values.rack,
    grid: { columns: laid.columns, rows: laid.rows },
    panelCount: laid.columns.length * laid.rows.length,
    halfAngle,
    rowPitch: laid.pitch,
    rackDepth: laid.depth,
    panelArea,
    mediaArea: panelArea * values.medium.mediaAreaRatio,
    sectionArea,
    gapArea,
    blankArea: Math.max(0, sectionArea - metres(laid.columns) * openHeight),
    gapLossCoefficient: wallOpeningLoss(gapArea / sectionArea, gapArea / sectionArea) + turnLoss(sine),
    crackArea: values.crackWidth * perimeter(laid),
    dustConcentration: values.dustConcentration,
    length: values.length,
  };
}

/** Loss of a mitred right angle on the velocity before it; smaller turns in proportion to one less their cosine. */
const mitreLoss = 1.2;

/**
 * Turning from the gap into the panel and back into the airway behind it. The velocity along the gap falls evenly to
 * nothing, so that the mean of its square is a third.
 */
function turnLoss(sineOfHalfAngle: number): number {
  return (2 / 3) * mitreLoss * (1 - sineOfHalfAngle);
}

function flatRack(frame: Frame, thickness: number, length: number, sides: readonly number[]) {
  const grid = thickness > length ? undefined : layOutFlat(frame.width, frame.height, sides);
  return grid === undefined ? undefined : { ...grid, pitch: metres(grid.rows) / grid.rows.length, depth: thickness };
}

function noRoom(length: number, isFlat: boolean): SectionProblem {
  const where = `${inBothUnits(length, "length")} of length`;
  return isFlat
    ? new SectionProblem(
        "length",
        `no standard panel fits the cabinet in ${where}`,
        "a longer section or a larger cabinet",
      )
    : new SectionProblem(
        "length",
        `panels that lean so do not fit in ${where}`,
        "a longer section, a larger included angle or thinner panels",
      );
}

function perimeter(grid: PanelGrid): number {
  return 2 * (metres(grid.columns) * grid.rows.length + metres(grid.rows) * grid.columns.length);
}
