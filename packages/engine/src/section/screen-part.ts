import type { WireScreen } from "#component/wire-screen";
import { materials } from "#standard/material";
import { type PartBox, type SectionPart, weighedPart } from "./part.ts";

/** Frame of a screen: m² of profile section round its edge. */
const frameSection = 60e-6;

/** A wire screen in a frame that fills the two longer sides of its box: wires both ways, and the edge. */
export function screenPart(key: string, screen: WireScreen, box: PartBox): SectionPart {
  const sides = [box.length, box.width, box.height].sort((a, b) => b - a).map((side) => side / 1000);
  const [long = 0, short = 0] = sides;
  const wire = (Math.PI * screen.wireDiameter ** 2) / 4;
  const volume = (2 * long * short * wire) / screen.meshPitch + 2 * (long + short) * frameSection;
  const mass = volume * materials[screen.metal].density;
  return weighedPart(key, "bird screen", "screen", screen.metal, box, mass, "definition wires and frame", {
    bought: screen.head.name,
    wet: true,
  });
}
