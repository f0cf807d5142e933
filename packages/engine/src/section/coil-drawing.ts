import type { CoilBlock } from "./coil-block.ts";
import { casingFlange } from "./coil-block.ts";
import type { Ink } from "./display.ts";
import type { Pencil } from "./pencil.ts";

/** Most tube ends drawn one by one; of more, every second, third … is drawn. */
const mostTubes = 420;

/** Underside of a stacked coil's casing, mm from the floor. */
export function casingBottom(block: CoilBlock, index: number): number {
  return 1000 * (block.base + index * block.pitch);
}

/**
 * The coils seen from their connection side: casing with flanges, the fins as the air meets them edge-on are hairlines, tube
 * ends to scale and staggered; `inner` draws the distributing tube inside each.
 */
export function drawCoilCore(pencil: Pencil, block: CoilBlock, inner: boolean): void {
  const { bank } = block.coil;
  const x = block.start * 1000;
  const flange = casingFlange * 1000;
  const [width, height] = [block.casingDepth * 1000, block.casingHeight * 1000];
  const step = Math.max(1, Math.ceil((bank.rows * bank.tubesPerRow * block.stacked * (inner ? 2 : 1)) / mostTubes));
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
        if (inner) pencil.circle("inner tubes", "hairline", tubeX, tubeY, bank.tubeOutsideDiameter * 310);
      }
    }
  }
}

/** Supply and return headers of liquid coils with their connections end-on; counterflow enters at the leaving side. */
export function drawHeaders(pencil: Pencil, block: CoilBlock, connection: number, ink: Ink): void {
  const flange = casingFlange * 1000;
  const diameter = connection * 1000 * 1.12;
  const left = block.start * 1000 + flange;
  const right = left + block.coil.bank.depth * 1000;
  const supplyAt = block.coil.flow === "counter" ? right : left;
  const returnAt = block.coil.flow === "counter" ? left : right;
  const inward = (at: number) => (at === right ? at - diameter * 0.8 : at - diameter * 0.2);
  for (let index = 0; index < block.stacked; index++) {
    const bottom = casingBottom(block, index) + flange * 1.6;
    const height = block.casingHeight * 1000 - flange * 3.2;
    pencil.box("supply header", "outline", inward(supplyAt), bottom, diameter, height, {
      fill: "paper",
      label: "supply header",
    });
    pencil.box("return header", "outline", inward(returnAt), bottom, diameter, height, {
      fill: "paper",
      label: "return header",
    });
    const radius = diameter / 2;
    pencil.circle("supply connection", ink, inward(supplyAt) + radius, bottom + radius * 1.4, radius * 0.8, {
      fill: "paper",
      label: "supply",
    });
    pencil.circle("return connection", ink, inward(returnAt) + radius, bottom + height - radius * 1.4, radius * 0.8, {
      fill: "paper",
      label: "return",
    });
    // Vent at the top of the return header, drain at the foot of the supply header.
    pencil.line("vent", "fine", [
      inward(returnAt) + radius,
      bottom + height,
      inward(returnAt) + radius,
      bottom + height + 18,
    ]);
    pencil.line("drain", "fine", [inward(supplyAt) + radius, bottom, inward(supplyAt) + radius, bottom - 18]);
  }
}

/** Blank-off sheet above the highest coil, so that no air goes round. */
export function drawBlankOff(pencil: Pencil, block: CoilBlock, frameHeight: number): void {
  const top = casingBottom(block, block.stacked - 1) + block.casingHeight * 1000;
  const x = block.start * 1000 + (block.casingDepth * 1000) / 2;
  if (frameHeight * 1000 - top > 8)
    pencil.line("blank-off", "outline", [x, top, x, frameHeight * 1000], { label: "blank-off" });
}
