import { textSizes, textWidth } from "#chart/text-size";
import type { DisplayItem } from "#section/display";

/** mm: what items cover, letters included; `textScale` is mm for a point. */
export interface Covered {
  readonly left: number;
  readonly low: number;
  readonly right: number;
  readonly high: number;
}

/** The box around items, with y up. */
export function listBox(items: readonly DisplayItem[], textScale: number): Covered {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  const take = (fromX: number, fromY: number, toX: number, toY: number) => {
    left = Math.min(left, fromX);
    low = Math.min(low, fromY);
    right = Math.max(right, toX);
    high = Math.max(high, toY);
  };
  for (const item of items) {
    if (item.shape === "line") {
      for (let index = 0; index < item.points.length; index += 2) {
        take(item.points[index]!, item.points[index + 1]!, item.points[index]!, item.points[index + 1]!);
      }
    } else if (item.shape === "circle") {
      take(item.x - item.radius, item.y - item.radius, item.x + item.radius, item.y + item.radius);
    } else {
      const width = textWidth(item.text, item.size) * textScale;
      const height = textSizes[item.size] * textScale;
      const shift = item.anchor === "start" ? 0 : item.anchor === "end" ? width : width / 2;
      if (item.turn === undefined)
        take(item.x - shift, item.y - 0.25 * height, item.x - shift + width, item.y + 0.8 * height);
      else take(item.x - 0.8 * height, item.y - shift, item.x + 0.25 * height, item.y - shift + width);
    }
  }
  return { left, low, right, high };
}
