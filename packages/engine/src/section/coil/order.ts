import type { BuildLine } from "../contract.ts";
import type { CoilBlock } from "./block.ts";

/** What a coil is to be built as, for whoever makes it. */
export function coilBuild({ block }: { readonly block: CoilBlock }): readonly BuildLine[] {
  const { coil, stacked } = block;
  const { surface } = coil;
  return [
    { name: "coils, one above the other", quantity: "count", value: stacked },
    { name: "surface", text: surface.head.name },
    { name: "fins high, each", quantity: "length", value: coil.tubesPerRow * surface.transversePitch },
    { name: "fins long", quantity: "length", value: coil.finnedLength },
    { name: "rows", quantity: "count", value: coil.rows },
    { name: "circuits, each", quantity: "count", value: coil.circuits },
    { name: "fins", quantity: "pitch", value: coil.finsPerLength },
    { name: `fin thickness, ${coil.finMaterial}`, quantity: "smallLength", value: coil.finThickness },
    { name: `tube wall, ${coil.tubeMaterial}`, quantity: "smallLength", value: coil.tubeWall },
  ];
}
