import { sheetMass } from "#component/sheet-metal";
import { materials } from "#standard/material";
import type { Frame } from "../contract.ts";
import { assembly, boxOf, type SectionPart, type SectionParts, weighedPart } from "../part.ts";
import { serviceDoor } from "../service-parts.ts";
import type { AttenuatorDesign } from "./design.ts";

/** Share of the perforated sides that is holes; common practice. */
const holes = 0.23;

/** The baffles: perforated sheet of 22 gauge on both sides, edges and noses of 20, fibre between. */
export function attenuatorParts(design: AttenuatorDesign, frame: Frame): SectionParts {
  const { attenuator, baffles, baffleLength, passageWidth, spaceBefore } = design;
  const width = attenuator.baffleWidth;
  const pitch = width + passageWidth;
  const sides = 2 * baffleLength * frame.height * (1 - holes) * sheetMass("galvanized steel", "22");
  const edges = 2 * 1.3 * width * (baffleLength + frame.height) * sheetMass("galvanized steel", "20");
  const fibre = baffleLength * frame.height * width * materials["mineral wool"].density;
  const source = "manufacturers-standard-gauge sides and edges; fibre by density, from-memory";
  const children = Array.from({ length: baffles }, (_, index): SectionPart => {
    const box = boxOf(spaceBefore, passageWidth / 2 + index * pitch, 0, baffleLength, width, frame.height);
    const mass = sides + edges + fibre;
    return weighedPart(`baffle ${index + 1}`, "baffle", "box", "mineral wool", box, mass, source, {
      bought: attenuator.head.name,
    });
  });
  const door = serviceDoor(frame, spaceBefore + baffleLength, design.length);
  return { inside: [assembly("baffles", "baffles", children)], walls: door === undefined ? [] : [door] };
}
