import type { Frame } from "../contract.ts";
import type { DisplayItem } from "../display.ts";
import { pencilFor } from "../pencil.ts";
import type { SteamHumidifierDesign } from "./design.ts";

/** The panel from the side: header below, a tube with its nozzles, wisps of steam, the trap's leg. */
export function drawSteamHumidifier(design: SteamHumidifierDesign, frame: Frame, name: string): readonly DisplayItem[] {
  const pencil = pencilFor(name);
  const x = design.position * 1000;
  const diameter = design.dispersion.tubeDiameter * 1000;
  const height = design.height * 1000;
  const bottom = Math.max(30, (frame.height * 1000 - height) / 2);
  const top = Math.min(frame.height * 1000 - 15, bottom + height);
  const header = Math.min(90, height / 8);
  pencil.box("header", "outline", x - header / 2, bottom, header, header, { fill: "paper", label: "steam header" });
  pencil.box("header", "outline", x - header / 2, top - header, header, header, { fill: "paper" });
  pencil.box("tubes", "outline", x - diameter / 2, bottom + header, diameter, top - bottom - 2 * header, {
    fill: "paper",
  });
  const room = design.length * 1000 - x - diameter;
  const count = Math.max(3, Math.round((top - bottom - 2 * header) / 160));
  for (let nozzle = 0; nozzle < count; nozzle++) {
    const y = bottom + header + ((nozzle + 0.5) * (top - bottom - 2 * header)) / count;
    pencil.circle("nozzles", "fine", x + diameter / 2, y, Math.max(4, diameter / 7), { fill: "paper" });
    const reach = Math.min(0.7 * room, 260);
    const points: number[] = [];
    for (let step = 0; step <= 8; step++) {
      points.push(x + diameter / 2 + 14 + (reach * step) / 8, y + 12 * Math.sin(step * 1.25) * (step / 8));
    }
    pencil.line("steam", "steam", points);
  }
  pencil.line("supply", "steam", [x, bottom + header / 2, x, -70], { label: "steam supply and trap" });
  pencil.circle("trap", "steam", x, -88, 18, { fill: "paper" });
  return pencil.items;
}
