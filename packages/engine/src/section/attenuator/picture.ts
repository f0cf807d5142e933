import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { AttenuatorDesign } from "./design.ts";

/**
 * The side of the first baffle, over the whole height: rounded nose, blunt tail, perforated metal; and, cut out in the
 * middle, a plan of some of them with their passages, as drawings of the trade show it.
 */
export function drawAttenuator(design: AttenuatorDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const from = design.spaceBefore * 1000;
  const to = from + design.baffleLength * 1000;
  const height = frame.height * 1000;
  const nose = design.attenuator.baffleWidth * 500;
  pencil.line("baffle", "outline", [from, 0, from, height]);
  pencil.line("baffle", "outline", [to, 0, to, height]);
  pencil.line("baffle", "fine", [from + nose, 0, from + nose, height], { label: "end of the rounded nose" });
  drawPerforation(from + nose, to, 0, height);
  drawPlan(from, to);
  return pencil.items;

  /** Rows of short strokes, far enough apart to be seen as a texture. */
  function drawPerforation(left: number, right: number, low: number, high: number): void {
    const pitch = Math.max(150, (right - left) / 9);
    const rows = Math.max(2, Math.floor((high - low) / 150));
    for (let row = 0; row < rows; row++) {
      const y = low + ((row + 0.5) * (high - low)) / rows;
      const shift = row % 2 === 0 ? 0.25 : 0.65;
      for (let x = left + shift * pitch; x + 22 < right; x += pitch) {
        pencil.line("perforated metal", "hairline", [x, y, x + 22, y]);
      }
    }
  }

  /** Three baffles from above at the same scale, as many as the height has room for. */
  function drawPlan(left: number, right: number): void {
    const width = design.attenuator.baffleWidth * 1000;
    const pitch = width + design.passageWidth * 1000;
    const shown = Math.min(design.baffles, 3, Math.max(1, Math.floor((0.8 * height) / pitch)));
    const low = (height - shown * pitch) / 2;
    pencil.box("plan", "quiet", left, low, right - left, shown * pitch, { fill: "paper", label: "baffles in plan" });
    for (let baffle = 0; baffle < shown; baffle++) {
      const y = low + baffle * pitch + (pitch - width) / 2;
      pencil.line("plan", "fine", baffleOutline(left, right, y, width), { closed: true });
    }
    pencil.line("plan", "air", [left + 0.3 * (right - left), low + pitch, left + 0.6 * (right - left), low + pitch]);
  }
}

/** A baffle from above: half a circle in front, square behind. */
function baffleOutline(left: number, right: number, y: number, width: number): number[] {
  const radius = width / 2;
  const points: number[] = [right, y, left + radius, y];
  for (let step = 1; step < 8; step++) {
    const angle = Math.PI / 2 + (step * Math.PI) / 8;
    points.push(left + radius + radius * Math.cos(angle), y + radius - radius * Math.sin(angle));
  }
  points.push(left + radius, y + width, right, y + width);
  return points;
}
