import type { Frame } from "../contract.ts";
import { blank, boxOf, type SectionPart, type SectionParts, sheetPart } from "../part.ts";
import { screenPart } from "../screen-part.ts";
import type { IntakeHoodDesign } from "./design.ts";

/** The hood before the cabinet: roof, two cheeks, front or floor, screen; its throat in the entry wall. */
export function intakeHoodParts(design: IntakeHoodDesign, frame: Frame): SectionParts {
  const { projection, width, throatHeight, facesDown } = design;
  const y = (frame.width - width) / 2;
  const bottom = frame.height - throatHeight;
  const slope = Math.min(0.55 * projection, 0.32 * throatHeight);
  const roof = Math.hypot(projection, slope) + 0.05;
  const flange = 0.05;
  const box = boxOf(0, y, bottom + 0.03, projection, width, throatHeight - 0.03);
  const front = throatHeight - slope;
  const sheet = (
    key: string,
    name: string,
    blanks: Parameters<typeof sheetPart>[6],
    kind: "roof" | "sheet" = "sheet",
  ) => sheetPart(key, name, kind, "galvanized steel", "16", box, blanks, { shares: true, wet: true });
  const cheek = (throatHeight + front) / 2;
  const closing = facesDown ? front : projection;
  const inside: SectionPart[] = [
    sheet("roof", "hood roof", [blank(roof + flange, width + 2 * flange)], "roof"),
    sheet("cheeks", "hood cheeks", [blank(projection + flange, cheek + 2 * flange, 2)]),
    sheet(facesDown ? "front" : "floor", facesDown ? "hood front" : "hood floor", [
      blank(closing + 2 * flange, width + 2 * flange),
    ]),
    facesDown
      ? screenPart("bird screen", design.screen, boxOf(0, y, bottom + 0.02, projection, width, 0.005))
      : {
          ...screenPart("bird screen", design.screen, boxOf(0.04, y, bottom + 0.03, 0.005, width, front - 0.04)),
          shares: true,
        },
  ];
  const throat = boxOf(0, y, bottom, 0, width, throatHeight);
  return {
    inside,
    walls: [{ key: "throat", name: "throat of the hood", kind: "collar", air: "outside", face: "entry", box: throat }],
  };
}
