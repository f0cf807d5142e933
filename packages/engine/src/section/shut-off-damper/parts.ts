import type { Frame } from "../contract.ts";
import { damperAssembly } from "../damper-parts.ts";
import type { SectionParts } from "../part.ts";
import { blankOffs } from "../service-parts.ts";
import type { ShutOffDamperDesign } from "./design.ts";

/** The damper with its actuator in the middle of the section, and sheet around it. */
export function shutOffDamperParts(design: ShutOffDamperDesign, frame: Frame): SectionParts {
  const { part } = design;
  const y = (frame.width - part.width) / 2;
  const z = (frame.height - part.height) / 2;
  const x = (design.length - part.damper.frameDepth) / 2;
  const place = { x, y, z, lies: "across", driven: frame.hand === "right" ? "low" : "high" } as const;
  return {
    inside: [
      damperAssembly("damper", "shut-off damper", part, place, "actuated"),
      ...blankOffs(frame, design.length / 2, { y, z, width: part.width, height: part.height }),
    ],
    walls: [],
  };
}
