import { partMasses, partSheets } from "#standard/part-mass";
import type { DamperPart } from "./damper-part.ts";
import { assembly, boxOf, type PartBox, type PartForm, type SectionPart, solidPart, weighedPart } from "./part.ts";
import { platesForm, ringForm } from "./part-form.ts";

/** m: web and both flanges of a damper's frame, unrolled, besides its depth. */
const frameFlanges = 0.05;

/** The axes along which a damper's width, height and depth lie, and its corner, m. */
export interface DamperPlace {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly lies: "across" | "along top" | "in side wall";
  /** End of the blades at which linkage and actuator sit: the one with the smaller or the larger coordinate. */
  readonly driven: "low" | "high";
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
  const common = { shares: true, bought: part.damper.head.name } as const;
  const frameVolume = perimeter * (depth + frameFlanges) * partSheets.damperFrame;
  const bladeVolume = 2 * part.area * partSheets.damperSkin;
  const linkage = partMasses.damperLinkage * part.area;
  const handle = control === "actuated" ? partMasses.actuator : partMasses.quadrant;
  const handleName = control === "actuated" ? "actuator" : "hand quadrant";
  return assembly(key, name, [
    solidPart("frame", "damper frame", "frame", "galvanized steel", box, frameVolume, {
      ...common,
      form: frameForm(place.lies, box),
    }),
    solidPart("blades", "blades", "blades", "galvanized steel", box, bladeVolume, {
      ...common,
      count: part.blades,
      form: bladeForm(part, place.lies, box),
    }),
    weighedPart(
      "linkage",
      "linkage and bearings",
      "damper",
      "steel",
      drivenEnd(place, box, 0.02, 1),
      linkage,
      partMasses.source,
      common,
    ),
    weighedPart(
      "control",
      handleName,
      "actuator",
      "mixed",
      drivenEnd(place, box, 0.12, 0.2),
      handle,
      partMasses.source,
      {
        shares: true,
        bought: `${handleName} for ${Math.ceil(part.damper.torquePerArea * part.area)} N·m`,
      },
    ),
  ]);
}

/** m: width of a damper's frame. */
const frameWidth = 0.04;

function frameForm(lies: DamperPlace["lies"], box: PartBox): PartForm {
  const share = (side: number) => Math.min(0.3, (1000 * frameWidth) / side);
  if (lies === "across") return ringForm("x", share(box.width), share(box.height));
  if (lies === "along top") return ringForm("z", share(box.length), share(box.width));
  return ringForm("y", share(box.length), share(box.height));
}

/** Blades as they stand, opposed ones turned to both sides. */
function bladeForm(part: DamperPart, lies: DamperPlace["lies"], box: PartBox): PartForm {
  const pitch = (1000 * part.height) / part.blades;
  const isTurnedBack = (blade: number) => part.damper.bladeAction === "opposed" && blade % 2 === 1;
  const along = lies === "along top" ? "first" : "second";
  const [first, second] = lies === "in side wall" ? [box.width, box.height] : [box.length, box.height];
  const angle = along === "first" ? part.bladeAngle : 90 - part.bladeAngle;
  return platesForm(lies === "in side wall" ? "x" : "y", {
    count: part.blades,
    along,
    first,
    second,
    chord: Math.min(0.96 * pitch, along === "first" ? second : first),
    thickness: 10,
    turn: (blade) => (isTurnedBack(blade) ? -angle : angle),
  });
}

/** A piece at the driven end of the blades: `wide` m along them, a share of the damper's height. */
function drivenEnd({ lies, driven }: DamperPlace, box: PartBox, wide: number, share: number): PartBox {
  const along = lies === "in side wall" ? "length" : "width";
  const at = lies === "in side wall" ? "x" : "y";
  const size = Math.min(1000 * wide, box[along]);
  const up = lies === "along top" ? "length" : "height";
  return {
    ...box,
    [at]: driven === "low" ? box[at] : box[at] + box[along] - size,
    [along]: size,
    [up]: share * box[up],
  };
}

function damperBox(part: DamperPart, { x, y, z, lies }: DamperPlace, depth: number) {
  if (lies === "across") return boxOf(x, y, z, depth, part.width, part.height);
  if (lies === "in side wall") return boxOf(x, y, z, part.width, depth, part.height);
  return boxOf(x, y, z, part.height, part.width, depth);
}
