import type { FilterMedium } from "#component/filter-medium";
import { partMasses } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import {
  assembly,
  type Blank,
  blank,
  boxOf,
  type PartForm,
  type PieceSize,
  type SectionPart,
  type SectionParts,
  sheetPart,
  weighedPart,
} from "../part.ts";
import { aroundForm, bar, prisms } from "../part-form.ts";
import { turned } from "../pencil-shape.ts";
import { lightPart, serviceDoor } from "../service-parts.ts";
import type { FilterBankDesign } from "./design.ts";
import { metres } from "./panel-layout.ts";

/** m: holding frame around a panel, unrolled. */
const frameUnrolled = 0.1;
/** m: a track of two channels, unrolled. */
const trackUnrolled = 0.12;

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
  children.push(...tracksOf(design, box));
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
    { shares: true, count: panelCount, ...(design.rack === "flat" ? { form: flatFrames(design, box) } : {}) },
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
  const [left, low] = [box.y / 1000 / frame.width, box.z / 1000 / frame.height];
  const form = aroundForm("x", left, low, 1 - left, 1 - low);
  const plane = boxOf((box.x + box.length / 2) / 1000, 0, 0, 0.003, frame.width, frame.height);
  const sheet = sheetPart("blank-off", "blank-off", "sheet", "galvanized steel", "16", plane, closing, {
    shares: true,
    form,
  });
  return [frames, fasteners, sheet];
}

/** Bars between the panels of a flat rack, as the air meets them. */
function flatFrames({ grid }: FilterBankDesign, box: SectionPart["box"]): PartForm {
  const [across, up] = [30 / box.width, 30 / box.height];
  return prisms("x", () => [
    ...edges(grid.columns).map((at) => bar(at - across / 2, 0, at + across / 2, 1)),
    ...edges(grid.rows).map((at) => bar(0, at - up / 2, 1, at + up / 2)),
  ]);
}

/** Shares of the whole at which panels meet, ends included, a hair inside. */
function edges(sides: readonly number[]): readonly number[] {
  const whole = metres(sides);
  const inner = sides.slice(0, -1).map((_, index) => metres(sides.slice(0, index + 1)) / whole);
  return [0.01, ...inner, 0.99];
}

/** Channels in which prefilters, or the panels of a leaning rack, slide. */
function tracksOf(design: FilterBankDesign, box: SectionPart["box"]): readonly SectionPart[] {
  const { grid, prefilter, rack } = design;
  if (rack === "flat" && prefilter === undefined) return [];
  const rows = grid.rows.length + 1;
  const tracks = blank(metres(grid.columns), trackUnrolled, rows);
  const extras = { shares: true, count: rows } as const;
  return [sheetPart("tracks", "filter tracks", "frame", "galvanized steel", "18", box, [tracks], extras)];
}

/** The panels row by row, upright or leaning, prefilters before the filters. */
function panelForm(design: FilterBankDesign, box: SectionPart["box"], isBefore: boolean): PartForm {
  const main = 1000 * design.medium.panelDepth;
  const before = 1000 * (design.prefilter?.panelDepth ?? 0);
  const own = isBefore ? before : main;
  const { rows } = design.grid;
  return prisms("y", () => {
    let foot = 0;
    return rows.map((row, index) => {
      const step = design.rack === "flat" ? metres([row]) * 1000 : design.rowPitch * 1000;
      const isRising = design.rack === "flat" || index % 2 === 0;
      // Upstream is the upper side of a rising panel, the lower side of a falling one.
      const upstream = isRising ? 1 : -1;
      const across = upstream * (isBefore ? main / 2 : -before / 2);
      const turn = isRising ? design.halfAngle : -design.halfAngle;
      const half = metres([row]) * 500 - 4;
      const middle = foot + step / 2;
      foot += step;
      return [-1, 1].flatMap((side) =>
        [-side, side].flatMap((end) => {
          const [x, z] = turned(box.length / 2, middle, end * half, across - (side * own) / 2, turn);
          return [x / box.length, z / box.height];
        }),
      );
    });
  });
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

/** Panels of the grid by size. */
function panelSizes({ grid }: FilterBankDesign, depth: number): readonly PieceSize[] {
  const sizes = new Map<string, PieceSize>();
  for (const row of grid.rows) {
    for (const column of grid.columns) {
      const size = [1000 * depth, 1000 * metres([column]), 1000 * metres([row])] as const;
      const key = size.join(" ");
      sizes.set(key, { size, count: (sizes.get(key)?.count ?? 0) + 1 });
    }
  }
  return [...sizes.values()];
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
    pieces: panelSizes(design, medium.panelDepth),
    carried: medium.dustHolding * design.panelArea,
    bought: medium.head.name,
    form: panelForm(design, box, key === "prefilters"),
  });
}
