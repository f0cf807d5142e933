import type { Ink } from "../display.ts";
import type { Pencil } from "../pencil.ts";
import type { CoilBlock } from "./block.ts";
import { casingFlange } from "./block.ts";

/** Most tube ends drawn one by one; of more, every second, third … is drawn. */
const mostTubes = 420;

/** Underside of a stacked coil's casing, mm from the floor. */
export function casingBottom(block: CoilBlock, index: number): number {
  return 1000 * (block.base + index * block.pitch);
}

/**
 * The coils seen from their connection side: casing with flanges, the fins as the air meets them edge-on are hairlines, tube
 * ends to scale and staggered, with the distributing tube of `inner` m inside each.
 */
export function drawCoilCore(pencil: Pencil, block: CoilBlock, inner?: number): void {
  const { bank } = block.coil;
  const x = block.start * 1000;
  const flange = casingFlange * 1000;
  const [width, height] = [block.casingDepth * 1000, block.casingHeight * 1000];
  const step = Math.max(
    1,
    Math.ceil((bank.rows * bank.tubesPerRow * block.stacked * (inner === undefined ? 1 : 2)) / mostTubes),
  );
  for (let index = 0; index < block.stacked; index++) {
    const y = casingBottom(block, index);
    pencil.box("casing", "outline", x, y, width, height, { fill: "paper", label: "coil casing" });
    pencil.box("fins", "hairline", x + flange, y + flange, width - 2 * flange, height - 2 * flange);
    for (let row = 0; row < bank.rows; row++) {
      const tubeX = x + flange + (row + 0.5) * bank.longitudinalPitch * 1000;
      const shift = bank.staggered && row % 2 === 1 ? 0.25 : -0.25;
      for (let tube = row % step; tube < bank.tubesPerRow; tube += step) {
        const tubeY = y + flange + (tube + 0.5 + (bank.staggered ? shift : 0)) * bank.transversePitch * 1000;
        pencil.circle("tubes", "fine", tubeX, tubeY, (bank.tubeOutsideDiameter * 1000) / 2, { fill: "paper" });
        if (inner !== undefined) pencil.circle("inner tubes", "hairline", tubeX, tubeY, inner * 500);
      }
    }
  }
}

/**
 * Supply and return headers of liquid coils with their connections end-on, drawn as if seen through; counterflow enters at the
 * leaving side. Headers wider than their row hang over the face, as they do on shallow coils. A return on the far end is dashed.
 */
export function drawHeaders(pencil: Pencil, block: CoilBlock, connection: number, ink: Ink): void {
  const flange = casingFlange * 1000;
  const radius = connection * 560;
  const left = block.start * 1000 + flange;
  const depth = block.coil.bank.depth * 1000;
  const over = Math.max(0, 2.2 * radius - depth / 2);
  const [entering, leaving] = [
    left + Math.min(radius, depth / 4) - over / 2,
    left + depth - Math.min(radius, depth / 4) + over / 2,
  ];
  const counter = block.coil.flow === "counter";
  for (let index = 0; index < block.stacked; index++) {
    const bottom = casingBottom(block, index) + flange * 1.6;
    const top = bottom + block.casingHeight * 1000 - flange * 3.2;
    const header = (part: string, x: number, connectionY: number) => {
      const isFar = part === "return" && block.coil.passes % 2 === 1;
      pencil.box(`${part} header`, "fine", x - radius, bottom, 2 * radius, top - bottom, {
        label: isFar ? `${part} header, on the far end` : `${part} header`,
        ...(isFar ? { dash: "short" } : {}),
      });
      if (isFar) return;
      pencil.circle(`${part} connection`, ink, x, connectionY, radius * 0.9, { fill: "paper", label: part });
      pencil.circle(`${part} connection`, ink, x, connectionY, radius * 0.72);
    };
    const [supplyAt, returnAt] = counter ? [leaving, entering] : [entering, leaving];
    header("supply", supplyAt, bottom + radius * 1.6);
    header("return", returnAt, top - radius * 1.6);
    // Vent at the top of the return header, drain at the foot of the supply header.
    pencil.line("vent", "fine", [returnAt, top, returnAt, top + 18]);
    pencil.line("drain", "fine", [supplyAt, bottom, supplyAt, bottom - 18]);
  }
}

/** Blank-off sheet above the highest coil, so that no air goes round. */
export function drawBlankOff(pencil: Pencil, block: CoilBlock, frameHeight: number): void {
  const top = casingBottom(block, block.stacked - 1) + block.casingHeight * 1000;
  const x = block.start * 1000 + (block.casingDepth * 1000) / 2;
  if (frameHeight * 1000 - top > 8)
    pencil.line("blank-off", "outline", [x, top, x, frameHeight * 1000], { label: "blank-off" });
}
