import type { PartForm } from "./part.ts";
import { turned } from "./pencil-shape.ts";

type Axis = "x" | "y" | "z";

/** Round about an axis. */
export function roundForm(axis: Axis): PartForm {
  return { shape: "cylinder", axis };
}

/** Outlines drawn out along an axis; they are made when somebody looks. */
export function prisms(axis: Axis, outlines: () => readonly (readonly number[])[]): PartForm {
  return { shape: "prisms", axis, outlines };
}

/** A rectangle between two corners, in shares. */
export function bar(left: number, low: number, right: number, high: number): readonly number[] {
  return [left, low, right, low, right, high, left, high];
}

/** A ring of edges, `across` and `up` wide in shares of the box, along an axis. */
export function ringForm(axis: Axis, across: number, up: number): PartForm {
  return prisms(axis, () => [
    bar(0, 0, 1, up),
    bar(0, 1 - up, 1, 1),
    bar(0, up, across, 1 - up),
    bar(1 - across, up, 1, 1 - up),
  ]);
}

/** What lies round an opening in a flat sheet, seen along the sheet's normal; the opening in shares. */
export function aroundForm(axis: Axis, left: number, low: number, right: number, high: number): PartForm {
  return prisms(axis, () =>
    [bar(0, 0, 1, low), bar(0, high, 1, 1), bar(0, low, left, high), bar(right, low, 1, high)].filter(
      ([fromX = 0, fromY = 0, toX = 0, , , toY = 0]) => toX - fromX > 1e-4 && toY - fromY > 1e-4,
    ),
  );
}

/** Plates in a row. Lengths in one unit, whichever. */
export interface Plates {
  readonly count: number;
  /** Direction in which they follow one another: the outline's first coordinate or its second. */
  readonly along: "first" | "second";
  /** Sides of the box in both. */
  readonly first: number;
  readonly second: number;
  readonly chord: number;
  readonly thickness: number;
  /** Degrees anticlockwise from the outline's first coordinate, of each plate. */
  readonly turn: (index: number) => number;
}

/** Plates in a row, each turned about its own middle, as the outlines that an axis draws out. */
export function platesForm(axis: Axis, plates: Plates): PartForm {
  const { count, along, first, second, chord, thickness, turn } = plates;
  return prisms(axis, () =>
    Array.from({ length: count }, (_, index) => {
      const at = (index + 0.5) / count;
      const middle = along === "first" ? [at * first, second / 2] : [first / 2, at * second];
      const corner = (u: number, v: number) => {
        const [x, y] = turned(middle[0]!, middle[1]!, (u * chord) / 2, (v * thickness) / 2, turn(index));
        return [x / first, y / second];
      };
      return [...corner(-1, -1), ...corner(1, -1), ...corner(1, 1), ...corner(-1, 1)];
    }),
  );
}
