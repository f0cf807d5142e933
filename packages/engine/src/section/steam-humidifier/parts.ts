import { partSheets } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { assembly, boxOf, type SectionParts, solidPart } from "../part.ts";
import { bar, prisms } from "../part-form.ts";
import { pipeThroughWall } from "../service-parts.ts";
import type { SteamHumidifierDesign } from "./design.ts";

/** Headers below and above, and the tubes between them. */
export function steamHumidifierParts(design: SteamHumidifierDesign, frame: Frame): SectionParts {
  const { dispersion, width, position } = design;
  const y = (frame.width - width) / 2;
  const z = Math.max(0.03, (frame.height - design.height) / 2);
  const height = Math.min(design.height, frame.height - 0.015 - z);
  const header = Math.min(0.09, height / 8, 2 * position);
  const wall = partSheets.dispersionTubeWall;
  const count = Math.max(1, Math.round(width / dispersion.tubeSpacing));
  const tube = Math.min(dispersion.tubeDiameter, header);
  const headerVolume = 4 * header * wall * width;
  const tubeVolume = count * Math.PI * (dispersion.tubeDiameter - wall) * wall * (height - 2 * header);
  const bought = dispersion.head.name;
  const metal = "stainless steel 304";
  const at = (key: string, name: string, from: number) =>
    solidPart(key, name, "header", metal, boxOf(position - header / 2, y, from, header, width, header), headerVolume, {
      bought,
      wet: true,
    });
  const panel = assembly(
    "panel",
    "steam dispersion panel",
    [
      at("header below", "steam header", z),
      at("header above", "steam header", z + height - header),
      solidPart(
        "tubes",
        "dispersion tubes",
        "tubes",
        metal,
        boxOf(position - tube / 2, y, z + header, tube, width, height - 2 * header),
        tubeVolume,
        {
          count,
          bought,
          wet: true,
          form: prisms("z", () =>
            Array.from({ length: count }, (_, index) => {
              const [middle, half] = [(index + 0.5) / count, tube / 2 / width];
              return bar(0, middle - half, 1, middle + half);
            }),
          ),
        },
      ),
    ],
    { pulled: true },
  );
  const steam = { diameter: 0.06, reach: Math.max(0, frame.hand === "right" ? y : frame.width - y - width) };
  const condensate = { ...steam, diameter: 0.034 };
  return {
    inside: [panel],
    walls: [
      pipeThroughWall(
        frame,
        "steam connection",
        "steam connection of the humidifier",
        steam,
        position,
        z + height - header / 2,
      ),
      pipeThroughWall(
        frame,
        "condensate connection",
        "condensate drain of the humidifier",
        condensate,
        position,
        z + header / 2,
      ),
    ],
  };
}
