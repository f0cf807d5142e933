import type { UnitSystem } from "#quantity/kind";
import { displayUnit, printNumber, toDisplay } from "#quantity/print";
import type { DisplayItem, DisplayList, Ink } from "#section/display";
import type { LedgerLine, PressureLedger } from "#unit/ledger";
import { line, rectangle, words } from "./items.ts";
import { textWidth } from "./text-size.ts";
import { type NiceRange, niceRange, tickText } from "./ticks.ts";

/** What the ledger is drawn on. */
export interface LedgerChartOptions {
  /** pt. */
  readonly width: number;
  readonly system: UnitSystem;
}

/** A piece of a bar. */
interface Piece {
  readonly words: string;
  /** Pa; negative where it helps the fan. */
  readonly pressure: number;
  readonly ink: Ink;
  readonly fill: Ink | "paper";
  readonly dash?: "short";
}

/** A bar: what one section takes, or what the unit serves. */
interface Bar {
  readonly key: string;
  readonly name: string;
  readonly section?: string;
  readonly pieces: readonly Piece[];
}

/** pt: of a row and of the bar in it; left for names, right for figures; above for the title, below for the scale. */
const rowHeight = 20;
const barHeight = 12;
const margin = { left: 150, right: 64, top: 32, bottom: 34 } as const;
/** Pa of wind before the intake that is worth a bar. */
const leastWind = 0.05;

/**
 * What the fan's total pressure is spent on, bar behind bar: every section in airflow order, the duct system, the reserve,
 * the velocity pressure at the end. What dust and water add to clean filters and dry fins is a piece of its own. The last
 * bar is the fan's, as long as all of them.
 */
export function ledgerChart(ledger: PressureLedger, title: string, options: LedgerChartOptions): DisplayList {
  const { width, system } = options;
  const bars = barsOf(ledger);
  const starts = startsOf(bars);
  const ends = bars.map((bar, index) => starts[index]! + totalOf(bar));
  const reached = [0, ledger.fanTotal, ...starts, ...ends].map((value) =>
    toDisplay(value, "pressureDifference", system),
  );
  const range = niceRange(Math.min(...reached), Math.max(...reached), 8, 0.001);
  const bottom = margin.top + (bars.length + 1) * rowHeight + 8;
  const field: Field = { left: margin.left, right: width - margin.right, top: margin.top, bottom, range, system };
  const fan: Bar = {
    key: "fan",
    name: "fan total pressure",
    pieces: [{ words: "fan total pressure", pressure: ledger.fanTotal, ink: "strong", fill: "strong" }],
  };
  return {
    title,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height: bottom + margin.bottom },
    items: [
      words("ledger-title", "strong", [margin.left, 16], "What the fan's pressure is spent on"),
      ...scaleItems(field),
      ...bars.flatMap((bar, index) => barItems(field, bar, index, starts[index]!)),
      ...bars.flatMap((_, index) => stepItems(field, index, ends[index]!)),
      ...barItems(field, fan, bars.length, 0),
    ],
  };
}

function barsOf(ledger: PressureLedger): readonly Bar[] {
  const names = [...new Set(ledger.lines.map((each) => each.section))];
  const bars = names.map((section): Bar => {
    const pieces = ledger.lines
      .filter((each) => each.section === section && each.isBeside === undefined && each.isFan === undefined)
      .flatMap(piecesOf);
    return { key: `section-${section}`, name: section, section, pieces };
  });
  const after: readonly Bar[] = [
    served("duct-system", "duct system", ledger.ductSystem, "air", "air"),
    served("reserve", "reserve", ledger.reserve, "choice", "paper", "short"),
    served("velocity-pressure", "velocity at the end", ledger.velocityPressure, "air", "paper"),
  ];
  const wind = served("wind", "wind at the intake", -ledger.intake, "air", "paper");
  return [
    ...(Math.abs(ledger.intake) > leastWind ? [wind] : []),
    ...bars.filter((bar) => bar.pieces.length > 0),
    ...after.filter((bar) => bar.key !== "reserve" || ledger.reserve !== 0),
  ];
}

function served(key: string, name: string, pressure: number, ink: Ink, fill: Ink | "paper", dash?: "short"): Bar {
  const piece: Piece = { words: name, pressure, ink, fill, ...(dash === undefined ? {} : { dash }) };
  return { key, name, pieces: [piece] };
}

/** A loss in one piece, or the part that stays and the part that dust or water adds. */
function piecesOf({ part, pressure, span }: LedgerLine): readonly Piece[] {
  if (span === undefined || span.least >= pressure)
    return [{ words: part, pressure, ink: "outline", fill: "hairline" }];
  const [stays, added, fill] =
    span.of === "filter" ? ["clean", "dust", "quiet"] : (["dry", "water on the fins", "moisture"] as const);
  return [
    { words: `${part}, ${stays}`, pressure: span.least, ink: "outline", fill: "hairline" },
    { words: `${part}, ${added}`, pressure: pressure - span.least, ink: "outline", fill: fill as Ink },
  ];
}

function totalOf(bar: Bar): number {
  return bar.pieces.reduce((sum, piece) => sum + piece.pressure, 0);
}

/** Pa at which each bar begins: where the one before it ends. */
function startsOf(bars: readonly Bar[]): readonly number[] {
  let at = 0;
  return bars.map((bar) => {
    const start = at;
    at += totalOf(bar);
    return start;
  });
}

interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly range: NiceRange;
  readonly system: UnitSystem;
}

/** pt of a pressure on the scale. */
function pressurePoint({ left, right, range, system }: Field, pressure: number): number {
  const reading = toDisplay(pressure, "pressureDifference", system);
  return left + ((reading - range.low) / (range.high - range.low)) * (right - left);
}

function scaleItems(field: Field): readonly DisplayItem[] {
  const { left, right, top, bottom, range, system } = field;
  const ticks = range.ticks.flatMap((tick, index) => {
    const x = left + ((tick - range.low) / (range.high - range.low)) * (right - left);
    return [
      line(`ledger-grid-${index}`, tick === 0 ? "quiet" : "hairline", [x, top, x, bottom]),
      words(`ledger-tick-${index}`, "quiet", [x, bottom + 14], tickText(tick, range.step), {
        size: "small",
        anchor: "middle",
      }),
    ];
  });
  const unit = displayUnit("pressureDifference", system);
  return [...ticks, words("ledger-unit", "quiet", [right, bottom + 29], unit, { size: "small", anchor: "end" })];
}

function barItems(field: Field, bar: Bar, row: number, start: number): readonly DisplayItem[] {
  const { system } = field;
  const middle = field.top + (row + 0.5) * rowHeight + 4;
  const [high, low] = [middle - barHeight / 2, middle + barHeight / 2];
  const reference = bar.section === undefined ? {} : { section: bar.section };
  let at = start;
  const pieces = bar.pieces.map((piece, index) => {
    const from = at;
    at += piece.pressure;
    const edges = [pressurePoint(field, from), pressurePoint(field, at)].sort((one, other) => one - other);
    const value = printNumber(piece.pressure, "pressureDifference", system);
    return rectangle(`ledger-${bar.key}-${index}`, piece.ink, [edges[0]!, high, edges[1]!, low], {
      fill: piece.fill,
      reference,
      label: `${piece.words}: ${value} ${displayUnit("pressureDifference", system)}`,
      ...(piece.dash === undefined ? {} : { dash: piece.dash }),
    });
  });
  const end = Math.max(pressurePoint(field, start), pressurePoint(field, at));
  const total = printNumber(totalOf(bar), "pressureDifference", system);
  return [
    ...pieces,
    words(`ledger-${bar.key}-name`, "strong", [field.left - 10, middle + 4], shortened(bar.name), {
      anchor: "end",
      reference,
    }),
    words(`ledger-${bar.key}-figure`, "quiet", [end + 6, middle + 4], total, { size: "small", reference }),
  ];
}

/** A fine line down from the end of a bar to the beginning of the next. */
function stepItems(field: Field, row: number, pressure: number): readonly DisplayItem[] {
  const x = pressurePoint(field, pressure);
  const from = field.top + (row + 0.5) * rowHeight + 4 + barHeight / 2;
  return [line(`ledger-step-${row}`, "fine", [x, from, x, from + rowHeight - barHeight])];
}

/** A name that fits the room left of the bars. */
function shortened(name: string): string {
  let text = name;
  while (textWidth(text, "normal") > margin.left - 14 && text.length > 4) text = `${text.slice(0, -2)}…`;
  return text;
}
