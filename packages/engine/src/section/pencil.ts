import type { DisplayItem, Ink } from "./display.ts";

/** What a line may have besides its points. */
export interface LineOptions {
  readonly closed?: boolean;
  readonly fill?: Ink | "paper";
  readonly dash?: "short" | "long";
  readonly label?: string;
}

/** Draws a section's picture, millimetres with y up: keys count within a part, so that they stay over edits. */
export interface Pencil {
  readonly items: readonly DisplayItem[];
  /** Straight pieces through `[x1, y1, x2, y2, …]`. */
  readonly line: (part: string, ink: Ink, points: readonly number[], options?: LineOptions) => void;
  readonly box: (
    part: string,
    ink: Ink,
    x: number,
    y: number,
    width: number,
    height: number,
    options?: LineOptions,
  ) => void;
  readonly circle: (
    part: string,
    ink: Ink,
    x: number,
    y: number,
    radius: number,
    options?: { readonly fill?: Ink | "paper"; readonly label?: string },
  ) => void;
  readonly text: (
    part: string,
    ink: Ink,
    x: number,
    y: number,
    text: string,
    anchor?: "start" | "middle" | "end",
  ) => void;
}

/** A pencil for the section of that name. */
export function pencilFor(section: string): Pencil {
  const items: DisplayItem[] = [];
  const counts = new Map<string, number>();
  const base = (part: string, ink: Ink) => {
    const count = counts.get(part) ?? 0;
    counts.set(part, count + 1);
    return { key: `${section}/${part}/${count}`, reference: { section, part }, ink };
  };
  const line: Pencil["line"] = (part, ink, points, options = {}) => {
    items.push({ ...base(part, ink), shape: "line", points: points.map(toHundredth), ...options });
  };
  return {
    items,
    line,
    box: (part, ink, x, y, width, height, options = {}) =>
      line(part, ink, [x, y, x + width, y, x + width, y + height, x, y + height], { closed: true, ...options }),
    circle: (part, ink, x, y, radius, options = {}) => {
      items.push({
        ...base(part, ink),
        shape: "circle",
        x: toHundredth(x),
        y: toHundredth(y),
        radius: toHundredth(radius),
        ...options,
      });
    },
    text: (part, ink, x, y, text, anchor = "middle") => {
      items.push({
        ...base(part, ink),
        shape: "text",
        x: toHundredth(x),
        y: toHundredth(y),
        text,
        anchor,
        size: "small",
      });
    },
  };
}

/** Hundredths of a millimetre are enough, and keep committed pictures short. */
function toHundredth(value: number): number {
  return Math.round(value * 100) / 100;
}
