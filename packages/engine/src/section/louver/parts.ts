import { partSheets } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { assembly, boxOf, type SectionPart, type SectionParts, solidPart } from "../part.ts";
import { platesForm, ringForm } from "../part-form.ts";
import { screenPart } from "../screen-part.ts";
import { blankOffs, panPart } from "../service-parts.ts";
import type { LouverDesign } from "./design.ts";

/** Blade with its hooks and drain channel, unrolled, over depth by the cosine of its angle; common practice. */
const bladeUnrolled = 1.3;

/** Blades in their frame, screen and pan, with sheet beside them. */
export function louverParts(design: LouverDesign, frame: Frame): SectionParts {
  const { louver, width, height } = design;
  const y = (frame.width - width) / 2;
  const z = (frame.height - height) / 2;
  const depth = louver.bladeDepth;
  const inside: SectionPart[] = [louverAssembly(design, boxOf(0, y, z, depth, width, height))];
  if (design.screen !== undefined && design.length > depth + 0.03) {
    inside.push(screenPart("bird screen", design.screen, boxOf(depth + 0.018, y, z, 0.004, width, height)));
  }
  if (design.drainPan && design.length > depth + 0.02) {
    const from = depth + 0.025;
    if (design.length - from > 0.05) {
      inside.push(panPart("pan", "drain pan", boxOf(from, 0, 0.006, design.length - 0.01 - from, frame.width, 0.06)));
    }
  }
  return { inside: [...inside, ...blankOffs(frame, 0, { y, z, width, height }, true)], walls: [] };
}

const edgeShare = (edge: number, side: number) => Math.min(0.3, edge / side);

function louverAssembly(design: LouverDesign, box: SectionPart["box"]): SectionPart {
  const { louver, width, height } = design;
  const count = Math.max(1, Math.round(height / louver.bladePitch));
  const lean = (louver.bladeAngle * Math.PI) / 180;
  const unrolled = (bladeUnrolled * louver.bladeDepth) / Math.cos(lean);
  const mullions = Math.ceil(width / louver.widestPiece) - 1;
  const profile = louver.bladeDepth + 2 * louver.jambWidth;
  const edges = 2 * (width + height) + 2 * mullions * height;
  const bought = louver.head.name;
  const extras = { shares: true, wet: true, bought } as const;
  return assembly("louver", "louver", [
    solidPart(
      "blades",
      "louver blades",
      "blades",
      "aluminium",
      box,
      count * unrolled * width * partSheets.louverBlade,
      {
        ...extras,
        count,
        form: platesForm("y", {
          count: Math.min(count, 60),
          along: "second",
          first: box.length,
          second: box.height,
          chord: Math.min((1000 * louver.bladeDepth) / Math.cos(lean), (1.6 * box.height) / count),
          thickness: 4,
          turn: () => louver.bladeAngle,
        }),
      },
    ),
    solidPart("frame", "louver frame", "frame", "aluminium", box, edges * profile * partSheets.louverBlade, {
      ...extras,
      form: ringForm("x", edgeShare(louver.jambWidth, width), edgeShare(louver.headAndSill / 2, height)),
    }),
  ]);
}
