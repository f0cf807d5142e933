import type { Arrangement } from "#arrangement/arrange";
import type { Part } from "#arrangement/part";
import { line, rectangle } from "#chart/items";
import type { DisplayItem } from "#section/display";
import { paperBox, partReference, silhouettes, type View } from "./projection.ts";

const sideView: View = { side: "side", width: 0 };

/**
 * Doors of the service side that no section draws itself: thin, with the strokes that mark their hinges, so that what stands
 * behind them is still read; dashed where they are on the far side.
 */
export function doorLines(arrangement: Arrangement, pictures: readonly DisplayItem[]): readonly DisplayItem[] {
  const own = pictures.filter(({ reference }) => reference.part === "door" || reference.part === "hatch");
  const drawn = new Set(own.map(({ reference }) => reference.section));
  const dash = arrangement.swings.every(({ face }) => face === "right") ? {} : ({ dash: "short" } as const);
  return arrangement.sections
    .filter(({ section }) => !drawn.has(section.name))
    .flatMap(({ part }) => part.children)
    .flatMap((each) => {
      if (each.kind === "window") return silhouettes(sideView, each, { ink: "fine", ...dash });
      return each.kind === "door" ? doorItems(arrangement, each, dash) : [];
    });
}

function doorItems(arrangement: Arrangement, door: Part, dash: { readonly dash?: "short" }): readonly DisplayItem[] {
  const [left, low, right, high] = paperBox(sideView, door);
  const reference = partReference(door);
  const leaf = rectangle(`${door.key}/leaf`, "fine", [left, low, right, high], {
    label: door.name,
    reference,
    ...dash,
  });
  const swing = arrangement.swings.find(({ part }) => part === door.key);
  if (swing === undefined) return [leaf];
  const [hinge, handle] = swing.hinges === "upstream" ? [left, right] : [right, left];
  const points = [handle, low, hinge, (low + high) / 2, handle, high];
  const inward = swing.opens === "inward" ? ({ dash: "short" } as const) : {};
  return [leaf, line(`${door.key}/swing`, "hairline", points, { reference, ...inward })];
}

/** Condensate traps where they hang beside the rail. */
export function trapLines(arrangement: Arrangement): readonly DisplayItem[] {
  const fitted = arrangement.whole.children.find(({ key }) => key === "fitted");
  return (fitted?.children ?? [])
    .filter(({ kind }) => kind === "trap")
    .flatMap((trap) => silhouettes(sideView, trap, { fill: "paper" }));
}
