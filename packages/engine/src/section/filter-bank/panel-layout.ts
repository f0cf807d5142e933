import { metresPerInch as inch } from "#quantity/inch-pound";
import { filterPanelSides, filterPanelSizes } from "#standard/filter-panel";

/** Panels in a grid: widths of the columns and heights of the rows, inches. */
export interface PanelGrid {
  readonly columns: readonly number[];
  readonly rows: readonly number[];
}

/** True when a panel of that width and height is kept by the trade, standing or lying. */
export function isStandardPanel(width: number, height: number): boolean {
  return filterPanelSizes.some((size) => {
    const [a, b] = [Math.round(size.width / inch), Math.round(size.height / inch)];
    return (a === width && b === height) || (a === height && b === width);
  });
}

/** Widths that go with every one of these heights. */
function widthsFor(heights: readonly number[], sides: readonly number[]): readonly number[] {
  return sides.filter((width) => heights.every((height) => isStandardPanel(width, height)));
}

/** The sides whose sum comes nearest to `length` (m) from below; of equal sums the one with fewest panels. */
export function fillLength(length: number, sides: readonly number[]): readonly number[] {
  const whole = Math.floor(length / inch + 1e-6);
  // Fewest panels that fill exactly this many inches; the last side used.
  const fewest = new Array<number>(whole + 1).fill(Number.POSITIVE_INFINITY);
  const last = new Array<number>(whole + 1).fill(0);
  fewest[0] = 0;
  for (let sum = 1; sum <= whole; sum++) {
    for (const side of sides) {
      const before = fewest[sum - side];
      if (before === undefined || before + 1 >= fewest[sum]!) continue;
      fewest[sum] = before + 1;
      last[sum] = side;
    }
  }
  let sum = whole;
  while (fewest[sum] === Number.POSITIVE_INFINITY) sum--;
  const chosen: number[] = [];
  for (; sum > 0; sum -= last[sum]!) chosen.push(last[sum]!);
  return chosen.sort((a, b) => b - a);
}

/** Sum of inches as metres. */
export function metres(inches: readonly number[]): number {
  return inches.reduce((sum, each) => sum + each, 0) * inch;
}

/** The largest grid of standard panels in `width` by `height` (m); undefined when not one panel fits. */
export function layOutFlat(width: number, height: number, sides: readonly number[]): PanelGrid | undefined {
  return best(
    subsets(sides).map((heights) => {
      const widths = widthsFor(heights, sides);
      const rows = widths.length === 0 ? [] : fillLength(height, heights);
      // Rows may not use every height of the set; widths then may be more.
      return { rows, columns: rows.length === 0 ? [] : fillLength(width, widthsFor(rows, sides)) };
    }),
  );
}

/** Panels that lean against one another in V's, seen from the side. */
export interface LeaningPanels extends PanelGrid {
  /** inches along the slope, the same for all. */
  readonly slopeSide: number;
  /** m that one panel takes of the height, and of the length. */
  readonly pitch: number;
  readonly depth: number;
}

/**
 * The most panels of thickness `thickness` (m) that lean at `halfAngle` (degrees from the airflow) one above the other in
 * `width` by `height` by `length`; undefined when none fits.
 */
export function layOutLeaning(
  width: number,
  height: number,
  length: number,
  thickness: number,
  halfAngle: number,
  sides: readonly number[],
): LeaningPanels | undefined {
  const angle = (halfAngle * Math.PI) / 180;
  const candidates = sides.map((side): LeaningPanels => {
    const pitch = side * inch * Math.sin(angle) + thickness * Math.cos(angle);
    const depth = side * inch * Math.cos(angle) + thickness * Math.sin(angle);
    const count = depth > length + 1e-9 ? 0 : Math.floor(height / pitch + 1e-9);
    const columns = count === 0 ? [] : fillLength(width, widthsFor([side], sides));
    return { columns, rows: new Array<number>(count).fill(side), slopeSide: side, pitch, depth };
  });
  return best(candidates);
}

function best<Grid extends PanelGrid>(grids: readonly Grid[]): Grid | undefined {
  const area = (grid: PanelGrid) => metres(grid.columns) * metres(grid.rows);
  const panels = (grid: PanelGrid) => grid.columns.length * grid.rows.length;
  const usable = grids.filter((grid) => area(grid) > 0);
  return usable.reduce<Grid | undefined>((chosen, grid) => {
    if (chosen === undefined) return grid;
    const gain = area(grid) - area(chosen);
    return gain > 1e-9 || (gain > -1e-9 && panels(grid) < panels(chosen)) ? grid : chosen;
  }, undefined);
}

/** Every choice of at least one side. */
function subsets(sides: readonly number[]): readonly (readonly number[])[] {
  const choices = Array.from({ length: 2 ** sides.length - 1 }, (_, index) => index + 1);
  return choices.map((bits) => sides.filter((_, place) => (bits >> place) % 2 === 1));
}

/** Sides of panels by what the bank may use. */
export const panelSides = {
  "24 in and 12 in": filterPanelSides.filter((side) => side === 24 || side === 12),
  "all standard sizes": filterPanelSides,
} as const;
