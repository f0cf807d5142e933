import { partMasses } from "#standard/part-mass";
import { coilConnections } from "../coil/connections.ts";
import { coilParts, coilSpan } from "../coil/parts.ts";
import { steamFittings } from "../coil/steam.ts";
import type { Frame } from "../contract.ts";
import { blank, boxOf, type SectionPart, type SectionParts, sheetPart, weighedPart } from "../part.ts";
import { blankOffs } from "../service-parts.ts";
import type { FaceBypassDesign } from "./design.ts";

/** m: reach of a damper leaf along the flow. */
const leafReach = 0.19;

/** Lanes of coil with channels between them, and the leaves before and behind that open the one and close the other. */
export function faceBypassParts(design: FaceBypassDesign, frame: Frame): SectionParts {
  const { block } = design;
  const fittings = { ...steamFittings(design), blankOff: false };
  const { y, width } = coilSpan(block, frame, fittings);
  const lanes = coilParts(block, frame, fittings);
  const height = block.base + block.pitch * (block.stacked - 1) + block.casingHeight;
  const before = Math.min(leafReach, block.start);
  const end = block.start + block.casingDepth;
  const behind = Math.min(leafReach, block.length - end);
  const places = [
    { key: "leaves before", x: block.start - before, length: before },
    { key: "leaves behind", x: end, length: behind },
  ].filter((each) => each.length > 0.01);
  const leaves = places.map((each) => leafSet(each.key, design, boxOf(each.x, y, 0, each.length, width, height)));
  const around = blankOffs(frame, block.start, { y, z: 0, width, height });
  const box = boxOf(Math.max(0, block.start - before - 0.06), y, height * 0.5, 0.05, 0.15, 0.2);
  const actuator = weighedPart(
    "actuator",
    "damper actuator",
    "actuator",
    "mixed",
    box,
    partMasses.actuator,
    partMasses.source,
    {
      shares: true,
      bought: "actuator for face and bypass dampers",
    },
  );
  return { inside: [...lanes, ...leaves, ...around, actuator], walls: coilConnections(block, frame, fittings) };
}

/** Two face leaves and one bypass leaf for each lane. */
function leafSet(key: string, design: FaceBypassDesign, box: SectionPart["box"]): SectionPart {
  const { block } = design;
  const long = block.coil.finnedLength;
  const blanks = [
    blank(long, Math.min(block.casingHeight / 2, leafReach) + 0.03, 2 * block.stacked),
    blank(long, design.bypassOpening + 0.03, block.stacked),
  ];
  return sheetPart(key, "face and bypass leaves", "damper", "galvanized steel", "14", box, blanks, {
    count: 3 * block.stacked,
  });
}
