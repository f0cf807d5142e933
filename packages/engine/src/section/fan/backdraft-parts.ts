import { metresPerInch } from "#quantity/inch-pound";
import { partMasses, partSheets } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { assembly, boxOf, type SectionPart, solidPart, weighedPart } from "../part.ts";
import { platesForm, ringForm } from "../part-form.ts";
import { backdraftBlades, backdraftDepth, backdraftSide, backdraftStandOff } from "./backdraft.ts";
import type { FanDesign } from "./design.ts";

/** m: width of the frame. */
const frameWidth = 0.03;

/** The damper before a plenum wheel's inlet, hung on the inlet wall, its middle at `y` and `z` m. */
export function backdraftPart(design: FanDesign, frame: Frame, y: number, z: number): SectionPart {
  const side = backdraftSide(design);
  const blades = backdraftBlades(side);
  const box = boxOf(
    design.upstreamSpace - backdraftDepth - backdraftStandOff,
    y - side / 2,
    z - side / 2,
    backdraftDepth,
    side,
    side,
  );
  const bought = { bought: `backdraft damper ${inches(side)} × ${inches(side)}`, shares: true } as const;
  const ring = frameWidth / side;
  const linkage = partMasses.damperLinkage * side ** 2;
  const atEnd = frame.hand === "right" ? box.y : box.y + box.width - 1000 * frameWidth;
  return assembly("backdraft", "backdraft damper", [
    solidPart(
      "frame",
      "damper frame",
      "frame",
      "galvanized steel",
      box,
      4 * side * (backdraftDepth + 0.05) * partSheets.damperFrame,
      {
        ...bought,
        form: ringForm("x", ring, ring),
      },
    ),
    solidPart("blades", "blades", "blades", "aluminium", box, side ** 2 * partSheets.backdraftBlade, {
      ...bought,
      count: blades,
      form: platesForm("y", {
        count: blades,
        along: "second",
        first: box.length,
        second: box.height,
        chord: Math.min((0.96 * box.height) / blades, box.length),
        thickness: 4,
        turn: () => openBladeTurn,
      }),
    }),
    weighedPart(
      "linkage",
      "linkage and counterweight",
      "damper",
      "steel",
      { ...box, y: atEnd, width: 1000 * frameWidth },
      linkage,
      partMasses.source,
      bought,
    ),
  ]);
}

/** Degrees from the stream at which blades hang that the stream holds open. */
const openBladeTurn = 20;

function inches(metres: number): string {
  return `${Math.round(metres / metresPerInch)} in`;
}
