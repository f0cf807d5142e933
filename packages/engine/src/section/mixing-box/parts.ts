import type { Frame } from "../contract.ts";
import { damperAssembly } from "../damper-parts.ts";
import { boxOf, type SectionPart, type SectionParts, type WallPart } from "../part.ts";
import { againstWall, blankOffs, lightPart, serviceDoor } from "../service-parts.ts";
import type { MixingBoxDesign } from "./design.ts";
import { returnStart } from "./picture.ts";

/** The outside damper in its wall, the return damper behind its opening, a door and a light. */
export function mixingBoxParts(design: MixingBoxDesign, frame: Frame): SectionParts {
  const { outside } = design;
  const control = design.control === "actuated" ? "actuated" : "hand set";
  const y = (frame.width - outside.width) / 2;
  const z = (frame.height - outside.height) / 2;
  const depth = outside.damper.frameDepth;
  const place = { x: 0, y, z, lies: "across", driven: frame.hand === "right" ? "low" : "high" } as const;
  const inside: SectionPart[] = [
    damperAssembly("outside damper", "outside-air damper", outside, place, control),
    ...blankOffs(frame, depth / 2, { y, z, width: outside.width, height: outside.height }),
  ];
  const walls: WallPart[] = [];
  const back = returnParts(design, frame, control);
  if (back !== undefined) {
    inside.push(back.damper);
    walls.push(back.opening);
  }
  const door = serviceDoor(frame, depth, design.length);
  if (door !== undefined) {
    walls.push(door);
    if (back === undefined || design.returnOpening?.place !== "top")
      inside.push(lightPart(frame, depth, design.length));
  }
  return { inside, walls };
}

function returnParts(
  design: MixingBoxDesign,
  frame: Frame,
  control: "actuated" | "hand set",
): { readonly damper: SectionPart; readonly opening: WallPart } | undefined {
  const opening = design.returnOpening;
  if (opening === undefined) return undefined;
  const { part } = opening;
  const depth = part.damper.frameDepth;
  const x = returnStart(design);
  const named = (place: Parameters<typeof damperAssembly>[3], face: WallPart["face"], box: WallPart["box"]) => ({
    damper: damperAssembly("return damper", "return-air damper", part, place, control),
    opening: { key: "return opening", name: "return-air opening", kind: "collar", air: "return", face, box } as const,
  });
  if (opening.place === "side") {
    // Opposite the doors.
    const face = frame.hand === "right" ? "left" : "right";
    const z = (frame.height - part.height) / 2;
    const flat = boxOf(x, againstWall(frame, face, 0), z, part.width, 0, part.height);
    return named({ x, y: againstWall(frame, face, depth), z, lies: "in side wall", driven: "low" }, face, flat);
  }
  const y = (frame.width - part.width) / 2;
  const driven = frame.hand === "right" ? "low" : "high";
  const isTop = opening.place === "top";
  const flat = boxOf(x, y, isTop ? frame.height : 0, part.height, part.width, 0);
  return named({ x, y, z: isTop ? frame.height - depth : 0, lies: "along top", driven }, opening.place, flat);
}
