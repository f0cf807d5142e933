import { partSheets } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { assembly, boxOf, type PartForm, type SectionParts, solidPart } from "../part.ts";
import { prisms, ringForm } from "../part-form.ts";
import { blankOffs, panPart } from "../service-parts.ts";
import type { MoistureEliminatorDesign } from "./design.ts";

/** Way along a bent blade over its depth, with its hooks; common practice. */
const bladeUnrolled = 1.25;
/** m of frame profile, unrolled, besides the depth. */
const frameFlanges = 0.06;

/** Zigzag blades side by side, seen from above. */
function bentBlades(count: number): PartForm {
  return prisms("z", () =>
    Array.from({ length: count }, (_, index) => {
      const [middle, bend, thick] = [(index + 0.5) / count, 0.3 / count, 0.06 / count];
      const way = [0, 1, 0, 1, 0].map((side, step) => [step / 4, middle + bend * (side - 0.5)] as const);
      const back = way.map(([x, y]) => [x, y + thick] as const).reverse();
      return [...way, ...back].flat();
    }),
  );
}

/** Bent stainless blades in their frame, and the pan under them. */
export function moistureEliminatorParts(design: MoistureEliminatorDesign, frame: Frame): SectionParts {
  const { eliminator, width } = design;
  const depth = eliminator.depth;
  const y = (frame.width - width) / 2;
  const height = Math.min(design.height, frame.height - 0.05);
  const z = Math.max(0.045, (frame.height - height) / 2);
  const x = (design.length - depth) / 2;
  const box = boxOf(x, y, z, depth, width, height);
  const count = Math.max(1, Math.round(width / eliminator.bladePitch));
  const bladeVolume = count * bladeUnrolled * depth * height * partSheets.eliminatorBlade;
  const frameVolume = 2 * (width + height) * (depth + frameFlanges) * partSheets.damperFrame;
  const extras = { shares: true, wet: true, bought: eliminator.head.name } as const;
  const metal = "stainless steel 304";
  const parts = assembly("eliminator", "moisture eliminator", [
    solidPart("blades", "eliminator blades", "blades", metal, box, bladeVolume, {
      ...extras,
      count,
      form: bentBlades(Math.min(count, 80)),
    }),
    solidPart("frame", "eliminator frame", "frame", metal, box, frameVolume, {
      ...extras,
      form: ringForm("x", Math.min(0.3, 0.04 / width), Math.min(0.3, 0.04 / height)),
    }),
  ]);
  const from = Math.max(0, x - 0.02);
  const pan = boxOf(from, 0, 0.008, Math.min(design.length, x + depth + 0.04) - from, frame.width, 0.03);
  const open = { y, z, width, height };
  return {
    inside: [panPart("pan", "drain pan", pan), parts, ...blankOffs(frame, x + depth / 2, open, true).slice(1)],
    walls: [],
  };
}
