import { metresPerInch as inch } from "#quantity/inch-pound";
import { partMasses } from "#standard/part-mass";
import type { Frame } from "./contract.ts";
import { blank, boxOf, type PartForm, type SectionPart, sheetPart, type WallPart, weighedPart } from "./part.ts";
import { bar, prisms } from "./part-form.ts";

/** m: narrowest door that a person uses, and the usual one; common practice of owners. */
const narrowestDoor = 18 * inch;
const usualDoor = 24 * inch;
const highestDoor = 72 * inch;
const doorEdge = 0.05;

/** m of the section that the narrowest door needs, with its frame. */
export const doorRoom = narrowestDoor + 2 * doorEdge;

/** m from the right wall to something `width` wide that stands against the wall. */
export function againstWall(frame: Frame, face: "right" | "left", width: number): number {
  return face === "right" ? 0 : frame.width - width;
}

/** A door in the service side, between `from` and `to` m of the section; undefined where a person does not get in. */
export function serviceDoor(
  frame: Frame,
  from: number,
  to: number,
  window = false,
  key = "door",
): WallPart | undefined {
  const width = Math.min(usualDoor, to - from - 2 * doorEdge);
  if (width < narrowestDoor) return undefined;
  const height = Math.min(highestDoor, frame.height - 2 * doorEdge);
  const y = againstWall(frame, frame.hand, 0);
  return {
    key,
    name: "access door",
    kind: "door",
    face: frame.hand,
    box: boxOf((from + to - width) / 2, y, Math.min(0.15, frame.height - doorEdge - height), width, 0, height),
    window,
  };
}

/** A pipe through the service side, or through the `face` told, at `x` and `z` m of the section: a stub on the outside that the site's pipe is joined to. */
export function pipeThroughWall(
  frame: Frame,
  key: string,
  name: string,
  pipe: { readonly diameter: number; readonly reach: number },
  x: number,
  z: number,
  face: "right" | "left" = frame.hand,
): WallPart {
  const { diameter, reach } = pipe;
  const at = againstWall(frame, face, 0);
  const box = boxOf(x - diameter / 2, at, z - diameter / 2, diameter, 0, diameter);
  return { key, name, kind: "pipe", face, box, reach };
}

/** A vapour-tight light under the ceiling in the middle between `from` and `to` m. */
export function lightPart(frame: Frame, from: number, to: number): SectionPart {
  const box = boxOf((from + to) / 2 - 0.06, frame.width / 2 - 0.1, frame.height - 0.1, 0.12, 0.2, 0.1);
  const mass = partMasses.light + partMasses.receptacle;
  return weighedPart("light", "light with receptacle", "light", "mixed", box, mass, partMasses.source, {
    bought: "vapour-tight light with switch and receptacle",
  });
}

/** Sheet that closes the airway beside something `width` by `height` m at (y, z), in the plane at `x` m, 3 mm deep. */
export function blankOffs(
  frame: Frame,
  x: number,
  open: { readonly y: number; readonly z: number; readonly width: number; readonly height: number },
  wet = false,
): readonly SectionPart[] {
  const metal = wet ? "stainless steel 304" : "galvanized steel";
  const flange = 0.025;
  const pieces = [
    { key: "below", y: 0, z: 0, width: frame.width, height: open.z },
    { key: "above", y: 0, z: open.z + open.height, width: frame.width, height: frame.height - open.z - open.height },
    { key: "right", y: 0, z: open.z, width: open.y, height: open.height },
    {
      key: "left",
      y: open.y + open.width,
      z: open.z,
      width: frame.width - open.y - open.width,
      height: open.height,
    },
  ];
  return pieces
    .filter((each) => each.width > 0.008 && each.height > 0.008)
    .map((each) =>
      sheetPart(
        `blank-off ${each.key}`,
        `blank-off ${each.key}`,
        "sheet",
        metal,
        "16",
        boxOf(x, each.y, each.z, 0.003, each.width, each.height),
        [blank(each.width + 2 * flange, each.height + 2 * flange)],
        { wet },
      ),
    );
}

/** Fall of a pan's floor to its drain. */
const panFall = 0.01;

/** A pan of 14-gauge stainless with its lips and its drain coupling; its floor falls along the airflow. */
export function panPart(key: string, name: string, box: ReturnType<typeof boxOf>, drains = 1): SectionPart {
  const [length, width, depth] = [box.length / 1000, box.width / 1000, box.height / 1000];
  return sheetPart(key, name, "pan", "stainless steel 304", "14", box, [blank(length + 2 * depth, width + 2 * depth)], {
    wet: true,
    count: drains,
    form: panForm(length, depth),
  });
}

/** Floor with its fall, and the lips before and behind; lengths in m. */
function panForm(length: number, depth: number): PartForm {
  const thick = 0.002;
  const fall = Math.min(panFall * length, 0.4 * depth);
  const [high, low, up, lip] = [(fall + thick) / depth, thick / depth, fall / depth, thick / length];
  return prisms("y", () => [[0, up, 1, 0, 1, low, 0, high], bar(0, high, lip, 1), bar(1 - lip, low, 1, 1)]);
}
