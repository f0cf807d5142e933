import type { Frame } from "../contract.ts";
import { boxOf, type SectionParts, weighedPart } from "../part.ts";
import type { SpecialDesign } from "./design.ts";

/** A box of the mass that was entered. */
export function specialParts(design: SpecialDesign, frame: Frame): SectionParts {
  const box = boxOf(0, 0, 0, design.length, frame.width, design.boxHeight);
  const part = weighedPart("special", design.what, "box", "mixed", box, design.mass, `entered: ${design.source}`, {
    bought: design.what,
  });
  return { inside: [design.price === undefined ? part : { ...part, price: design.price }], walls: [] };
}
