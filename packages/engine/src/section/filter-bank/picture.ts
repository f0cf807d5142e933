import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { type Pencil, pencilFor } from "../pencil.ts";
import { turned } from "../pencil-shape.ts";
import type { FilterBankDesign } from "./design.ts";

/** The bank from the side: panels across the airway, or leaning in V's; their pleats; sheet that closes what is left. */
export function drawFilterBank(design: FilterBankDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const height = frame.height * 1000;
  const thickness = design.medium.panelDepth * 1000;
  const before = (design.prefilter?.panelDepth ?? 0) * 1000;
  const pitch = design.rowPitch * 1000;
  const used = design.rack === "flat" ? sum(design.grid.rows) * 25.4 : design.grid.rows.length * pitch;
  const bottom = (height - used) / 2;
  const x = Math.min(design.length * 500, design.length * 1000 - design.rackDepth * 500 - 5);
  if (bottom > 1) {
    pencil.line("blank-off", "outline", [x, 0, x, bottom]);
    pencil.line("blank-off", "outline", [x, height - bottom, x, height]);
  }
  let y = bottom;
  design.grid.rows.forEach((row, index) => {
    const side = row * 25.4;
    const step = design.rack === "flat" ? side : pitch;
    // A flat panel stands upright; leaning ones alternate so that their edges meet.
    const isRising = design.rack === "flat" || index % 2 === 0;
    const turn = isRising ? design.halfAngle : -design.halfAngle;
    drawPanel(pencil, "panels", x, y + step / 2, side, thickness + before, turn);
    if (before > 0) {
      // Upstream is the upper side of a rising panel, the lower side of a falling one.
      const across = (isRising ? 1 : -1) * ((thickness + before) / 2 - before);
      const from = turned(x, y + step / 2, -side / 2 + 3, across, turn);
      const to = turned(x, y + step / 2, side / 2 - 3, across, turn);
      pencil.line("prefilter", "outline", [...from, ...to], { label: "prefilter" });
    }
    y += step;
  });
  return pencil.items;
}

/** A panel about its middle, its face along `turn`: frame and pleats. */
function drawPanel(
  pencil: Pencil,
  part: string,
  x: number,
  y: number,
  side: number,
  thickness: number,
  turn: number,
): void {
  const half = side / 2 - 3;
  const deep = thickness / 2;
  const corner = (u: number, v: number) => turned(x, y, u, v, turn);
  pencil.line(
    part,
    "outline",
    [...corner(-half, -deep), ...corner(half, -deep), ...corner(half, deep), ...corner(-half, deep)],
    {
      closed: true,
      fill: "paper",
    },
  );
  const rim = Math.min(18, side / 12);
  const pleat = Math.max(14, Math.min(45, thickness * 0.45));
  const count = Math.max(2, Math.round((2 * (half - rim)) / pleat));
  const points: number[] = [];
  for (let fold = 0; fold <= count; fold++) {
    const u = -half + rim + (2 * (half - rim) * fold) / count;
    points.push(...corner(u, fold % 2 === 0 ? -0.72 * deep : 0.72 * deep));
  }
  pencil.line("medium", "fine", points);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, each) => total + each, 0);
}
