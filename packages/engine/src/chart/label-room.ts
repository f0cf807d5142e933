import type { TextItem } from "#section/display";
import { textSizes, textWidth } from "./text-size.ts";

/** A rectangle on the page that is taken, in points with y down. */
interface Taken {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Where a label may stand: its anchor point relative to the thing it names. */
export interface Place {
  readonly dx: number;
  readonly dy: number;
  readonly anchor: TextItem["anchor"];
}

/** Around a point, nearest first: right, left, above, below, and the corners. */
export const placesAround: readonly Place[] = [
  { dx: 8, dy: 4, anchor: "start" },
  { dx: -8, dy: 4, anchor: "end" },
  { dx: 7, dy: 16, anchor: "start" },
  { dx: -7, dy: -8, anchor: "end" },
  { dx: 7, dy: -8, anchor: "start" },
  { dx: -7, dy: 16, anchor: "end" },
  { dx: 0, dy: 19, anchor: "middle" },
  { dx: 0, dy: -12, anchor: "middle" },
];

/** Keeps labels from standing on one another; the first of the places that is free is taken, else the first. */
export class LabelRoom {
  readonly #taken: Taken[] = [];

  /** Marks a rectangle as taken. */
  take(left: number, top: number, right: number, bottom: number): void {
    this.#taken.push({ left, top, right, bottom });
  }

  /** Marks what a text already covers. */
  takeText(item: TextItem): void {
    this.#taken.push(boxOf(item.x, item.y, item.text, item.size, { dx: 0, dy: 0, anchor: item.anchor }));
  }

  /** Chooses a place for a text beside the point, marks it as taken, and returns it. */
  place(x: number, y: number, text: string, size: TextItem["size"], places: readonly Place[]): Place {
    const free = places.find((place) => this.isFree(boxOf(x, y, text, size, place)));
    const chosen = free ?? places[0];
    if (chosen === undefined) throw new RangeError("a label needs at least one place");
    const box = boxOf(x, y, text, size, chosen);
    this.#taken.push(box);
    return chosen;
  }

  private isFree(box: Taken): boolean {
    return this.#taken.every(
      (other) =>
        box.right <= other.left || box.left >= other.right || box.bottom <= other.top || box.top >= other.bottom,
    );
  }
}

function boxOf(x: number, y: number, text: string, size: TextItem["size"], place: Place): Taken {
  const width = textWidth(text, size);
  const height = textSizes[size];
  const shift = place.anchor === "start" ? 0 : place.anchor === "end" ? width : width / 2;
  const left = x + place.dx - shift;
  const base = y + place.dy;
  return { left, right: left + width, top: base - 0.8 * height, bottom: base + 0.25 * height };
}
