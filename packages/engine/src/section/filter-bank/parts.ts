import type { FilterMedium } from "#component/filter-medium";
import { partMasses } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import {
  assembly,
  type Blank,
  blank,
  boxOf,
  type SectionPart,
  type SectionParts,
  sheetPart,
  weighedPart,
} from "../part.ts";
import { lightPart, serviceDoor } from "../service-parts.ts";
import type { FilterBankDesign } from "./design.ts";
import { metres } from "./panel-layout.ts";

/** m: holding frame around a panel, unrolled. */
const frameUnrolled = 0.1;

/** The rack: holding frames, filters and prefilters, sheet that closes the rest; a door and a light behind or before it. */
export function filterBankParts(design: FilterBankDesign, frame: Frame): SectionParts {
  const { grid, medium, prefilter } = design;
  const depth = Math.max(design.rackDepth, medium.panelDepth);
  const middle = Math.min(design.length / 2, design.length - depth / 2 - 0.005);
  const from = Math.max(0, middle - depth / 2);
  const width = metres(grid.columns);
  const isFlat = design.rack === "flat";
  const height = Math.min(frame.height, isFlat ? metres(grid.rows) : grid.rows.length * design.rowPitch);
  const box = boxOf(from, (frame.width - width) / 2, (frame.height - height) / 2, depth, width, height);
  const children: SectionPart[] = [
    ...framesOf(design, frame, box),
    filtersOf("filters", "filters", medium, design, box),
  ];
  if (prefilter !== undefined) children.push(filtersOf("prefilters", "prefilters", prefilter, design, box));
  const behind = design.length - from - depth;
  const [doorFrom, doorTo] = behind >= from ? [from + depth, design.length] : [0, from];
  const door = serviceDoor(frame, doorFrom, doorTo);
  const light = door === undefined ? [] : [lightPart(frame, doorFrom, doorTo)];
  return {
    inside: [assembly("rack", "filter rack", children), ...light],
    walls: door === undefined ? [] : [door],
  };
}

/** Frames, fasteners and blank-offs. */
function framesOf(design: FilterBankDesign, frame: Frame, box: SectionPart["box"]): readonly SectionPart[] {
  const { grid, panelCount } = design;
  const perimeter = 2 * (metres(grid.columns) * grid.rows.length + metres(grid.rows) * grid.columns.length);
  const frames = sheetPart(
    "frames",
    "holding frames",
    "frame",
    "galvanized steel",
    "16",
    box,
    [blank(perimeter / panelCount, frameUnrolled, panelCount)],
    { shares: true, count: panelCount },
  );
  const fasteners = weighedPart(
    "fasteners",
    "gaskets and clips",
    "frame",
    "mixed",
    box,
    panelCount * partMasses.filterFasteners,
    partMasses.source,
    { shares: true, count: panelCount },
  );
  const closing = closingBlanks(box, frame);
  if (closing.length === 0) return [frames, fasteners];
  const sheet = sheetPart("blank-off", "blank-off", "sheet", "galvanized steel", "16", box, closing, { shares: true });
  return [frames, fasteners, sheet];
}

/** Strips beside, above and below the rack, each with its flanges. */
function closingBlanks(box: SectionPart["box"], frame: Frame): readonly Blank[] {
  const flanges = 0.05;
  const beside = (frame.width - box.width / 1000) / 2;
  const above = (frame.height - box.height / 1000) / 2;
  const strips: Blank[] = [];
  if (beside > 0.004) strips.push(blank(frame.height, beside + flanges, 2));
  if (above > 0.004) strips.push(blank(box.width / 1000, above + flanges, 2));
  return strips;
}

function filtersOf(
  key: string,
  name: string,
  medium: FilterMedium,
  design: FilterBankDesign,
  box: SectionPart["box"],
): SectionPart {
  const mass = partMasses.filter[medium.style] * medium.panelDepth * design.panelArea;
  return weighedPart(key, name, "filter", "filter medium", box, mass, partMasses.source, {
    shares: true,
    count: design.panelCount,
    carried: medium.dustHolding * design.panelArea,
    bought: medium.head.name,
  });
}
