import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { type Pencil, pencilFor } from "../pencil.ts";
import { turned } from "../pencil-shape.ts";
import type { FilterBankDesign } from "./design.ts";

const inch = 25.4;

/** The bank from the side: panels across the airway, or leaning in V's; their pleats; sheet that closes what is left. */
export function drawFilterBank(design: FilterBankDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const height = frame.height * 1000;
  const main = design.medium.panelDepth * 1000;
  const before = (design.prefilter?.panelDepth ?? 0) * 1000;
  const isFlat = design.rack === "flat";
  const { rows } = design.grid;
  const steps = rows.map((row) => (isFlat ? row * inch : design.rowPitch * 1000));
  const bottom = (height - steps.reduce((sum, step) => sum + step, 0)) / 2;
  const x = Math.min(design.length * 500, design.length * 1000 - design.rackDepth * 500 - 5);
  if (bottom > 1) drawBlankOffs(pencil, design, x, bottom, height);
  let y = bottom;
  rows.forEach((row, index) => {
    // A flat panel stands upright; leaning ones alternate so that their edges meet.
    const isRising = isFlat || index % 2 === 0;
    const place = {
      x,
      y: y + steps[index]! / 2,
      side: row * inch,
      turn: isRising ? design.halfAngle : -design.halfAngle,
    };
    // Upstream is the upper side of a rising panel, the lower side of a falling one.
    const upstream = isRising ? 1 : -1;
    const half = (main + before) / 2;
    drawCell(pencil, "panels", place, -half * upstream, (half - before) * upstream);
    if (before > 0) drawCell(pencil, "prefilter", place, (half - before) * upstream, half * upstream);
    y += steps[index]!;
  });
  return pencil.items;
}

/** Sheet from floor and ceiling to the ends of the rack. */
function drawBlankOffs(pencil: Pencil, design: FilterBankDesign, x: number, bottom: number, height: number): void {
  const reach = (design.grid.rows[0]! * inch * Math.cos((design.halfAngle * Math.PI) / 180)) / 2;
  const low = x - reach;
  const high = design.grid.rows.length % 2 === 1 ? x + reach : x - reach;
  pencil.line("blank-off", "outline", [low, 0, low, bottom], { label: "blank-off" });
  pencil.line("blank-off", "outline", [high, height - bottom, high, height]);
}

/** Where a panel stands: its middle, its side along `turn` (degrees). */
interface PanelPlace {
  readonly x: number;
  readonly y: number;
  readonly side: number;
  readonly turn: number;
}

/** One filter of a panel, from `inner` to `outer` across it: frame and pleats. */
function drawCell(pencil: Pencil, part: string, place: PanelPlace, inner: number, outer: number): void {
  const half = place.side / 2 - 3;
  const corner = (u: number, v: number) => turned(place.x, place.y, u, v, place.turn);
  pencil.line(
    part,
    "outline",
    [...corner(-half, inner), ...corner(half, inner), ...corner(half, outer), ...corner(-half, outer)],
    {
      closed: true,
      fill: "paper",
    },
  );
  const depth = Math.abs(outer - inner);
  const rim = Math.min(18, place.side / 12);
  const pleat = Math.max(14, Math.min(45, depth * 0.45));
  const count = Math.max(2, Math.round((2 * (half - rim)) / pleat));
  const points: number[] = [];
  for (let fold = 0; fold <= count; fold++) {
    const u = -half + rim + (2 * (half - rim) * fold) / count;
    points.push(...corner(u, inner + (fold % 2 === 0 ? 0.14 : 0.86) * (outer - inner)));
  }
  pencil.line("medium", "fine", points);
}
