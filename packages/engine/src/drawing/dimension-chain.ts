import { sectionSpan } from "#chart/airway-axis";
import { line, words } from "#chart/items";
import { LabelRoom, type Place } from "#chart/label-room";
import { textSizes, textWidth } from "#chart/text-size";
import type { UnitSystem } from "#quantity/kind";
import { toDisplay } from "#quantity/print";
import type { DisplayItem } from "#section/display";
import type { Unit } from "#unit/unit";

/** pt below the chain's top: its line, the lengths above it, rows of names below it. */
const chainDepth = 26;
const nameDepth = 43;
const rowDepth = 14;
const mostRows = 3;

/** A chain, and the pt that it takes in height. */
export interface DimensionChain {
  readonly items: readonly DisplayItem[];
  readonly depth: number;
}

/** A length as the shop reads it: inches to the nearest eighth, or millimetres. */
export function dimensionText(metres: number, system: UnitSystem): string {
  if (system === "si") return toDisplay(metres, "length", "si").toFixed(0);
  const eighths = Math.round(toDisplay(metres, "length", "ip") * 8);
  const whole = Math.floor(eighths / 8);
  const part = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"][eighths % 8] ?? "";
  return `${whole === 0 && part !== "" ? "" : whole}${part}″`;
}

/** The chain of section lengths with their names, its top at `top` (mm). `textScale` is mm per pt. */
export function dimensionChain(
  unit: Unit,
  top: number,
  textScale: number,
  system: UnitSystem,
  picked: string | undefined,
): DimensionChain {
  const chainY = top - chainDepth * textScale;
  const room = new LabelRoom();
  const items: DisplayItem[] = [];
  let depth = nameDepth;
  for (const section of unit.sections) {
    const { from, to } = sectionSpan(section);
    const width = to - from;
    if (width <= 0) continue;
    const reference = { section: section.name };
    const ink = section.name === picked ? "choice" : "quiet";
    const tick = 5 * textScale;
    const text = dimensionText(width / 1000, system);
    items.push(
      line(`length-${section.name}`, ink, [from, chainY, to, chainY], { reference }),
      line(`length-${section.name}-start`, ink, [from, chainY - tick, from, chainY + tick], { reference }),
      line(`length-${section.name}-end`, ink, [to, chainY - tick, to, chainY + tick], { reference }),
    );
    const middle = (from + to) / 2;
    if (textWidth(text, "small") * textScale < width + 10 * textScale) {
      const at = [middle, chainY + 7 * textScale] as const;
      items.push(words(`length-${section.name}-figure`, ink, at, text, { size: "small", anchor: "middle", reference }));
    }
    const name = nameItems(room, section.name, middle, top, textScale, section.name === picked);
    items.push(...name.items);
    depth = Math.max(depth, name.depth);
  }
  return { items, depth: depth + 6 };
}

/** The section's name in the first row that has room for it, with a leader when that is not the first row. */
function nameItems(
  room: LabelRoom,
  name: string,
  middle: number,
  top: number,
  textScale: number,
  isPicked: boolean,
): DimensionChain {
  const rows: Place[] = Array.from({ length: mostRows }, (_, row) => ({
    dx: 0,
    dy: nameDepth + row * rowDepth,
    anchor: "middle",
  }));
  const place = room.place(middle / textScale, 0, `${name}xx`, "small", rows);
  const y = top - place.dy * textScale;
  const reference = { section: name };
  const item = words(`name-${name}`, isPicked ? "choice" : "outline", [middle, y], name, {
    size: "small",
    anchor: "middle",
    reference,
  });
  if (place.dy === nameDepth) return { items: [item], depth: place.dy };
  const from = top - (chainDepth + 7) * textScale;
  const leader = line(`name-${name}-leader`, "hairline", [middle, from, middle, y + textSizes.small * textScale], {
    reference,
  });
  return { items: [leader, item], depth: place.dy };
}
