import { partMasses, partSheets } from "#standard/part-mass";
import type { DamperPart } from "./damper-part.ts";
import { assembly, boxOf, type SectionPart, solidPart, weighedPart } from "./part.ts";

/** m: web and both flanges of a damper's frame, unrolled, besides its depth. */
const frameFlanges = 0.05;

/** The axes along which a damper's width, height and depth lie, and its corner, m. */
export interface DamperPlace {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly lies: "across" | "along top" | "in side wall";
}

/** A damper with frame, double-skin blades, linkage and actuator or hand quadrant. */
export function damperAssembly(
  key: string,
  name: string,
  part: DamperPart,
  place: DamperPlace,
  control: "actuated" | "hand set",
): SectionPart {
  const depth = part.damper.frameDepth;
  const box = damperBox(part, place, depth);
  const perimeter = 2 * (part.width + part.height);
  const bought = part.damper.head.name;
  const frameVolume = perimeter * (depth + frameFlanges) * partSheets.damperFrame;
  const bladeVolume = 2 * part.area * partSheets.damperSkin;
  const linkage = partMasses.damperLinkage * part.area;
  const handle = control === "actuated" ? partMasses.actuator : partMasses.quadrant;
  const handleName = control === "actuated" ? "actuator" : "hand quadrant";
  return assembly(key, name, [
    { ...solidPart("frame", "damper frame", "frame", "galvanized steel", box, frameVolume, { shares: true }), bought },
    solidPart("blades", "blades", "blades", "galvanized steel", box, bladeVolume, {
      shares: true,
      count: part.blades,
      bought,
    }),
    weighedPart("linkage", "linkage and bearings", "damper", "steel", box, linkage, partMasses.source, {
      shares: true,
      bought,
    }),
    weighedPart("control", handleName, "actuator", "mixed", box, handle, partMasses.source, {
      shares: true,
      bought: `${handleName} for ${Math.ceil(part.damper.torquePerArea * part.area)} N·m`,
    }),
  ]);
}

function damperBox(part: DamperPart, { x, y, z, lies }: DamperPlace, depth: number) {
  if (lies === "across") return boxOf(x, y, z, depth, part.width, part.height);
  if (lies === "in side wall") return boxOf(x, y, z, part.width, depth, part.height);
  return boxOf(x, y, z, part.height, part.width, depth);
}
