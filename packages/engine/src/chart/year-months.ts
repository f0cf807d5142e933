import type { UnitSystem } from "#quantity/kind";
import { groupedNumber } from "#quantity/print";
import type { DisplayItem, DisplayList, Ink } from "#section/display";
import { monthNames } from "#weather/calendar";
import { meters, meterText } from "#year/meter";
import type { YearReport } from "#year/year-report";
import { line, rectangle, words } from "./items.ts";
import { niceRange, tickText } from "./ticks.ts";
import { yearTitle } from "./year-title.ts";

/** What the months are drawn on. */
export interface MonthsOptions {
  readonly system: UnitSystem;
  /** pt. */
  readonly width: number;
}

const inks: Readonly<Record<string, Ink>> = {
  steam: "steam",
  steamHeat: "steam",
  steamCondensate: "steam",
  heatingWater: "heat",
  "heating water": "heat",
  chilledWater: "moisture",
  "chilled water": "moisture",
  coilCondensate: "water",
  electricity: "strong",
  "electric demand": "outline",
  recovered: "air",
  recoveredCooling: "air",
  humidifierWater: "water",
  "water for humidification": "water",
};

/** A row of the picture: one amount in every month. */
interface Row {
  readonly key: string;
  readonly name: string;
  readonly sum: string;
  /** As read, without their unit. */
  readonly figures: readonly string[];
  readonly months: readonly number[];
  readonly ink: Ink;
}

const margin = { left: 44, right: 190, top: 32 } as const;
const costHeight = 130;
const rowHeight = 58;
/** pt between two rows. */
const gap = 14;

/** Twelve months: what they cost, piled up by utility, and below that what each meter counted, each on its own scale. */
export function yearMonths(
  report: Pick<YearReport, "totals" | "cost" | "isSynthetic">,
  { system, width }: MonthsOptions,
): DisplayList {
  const rows = rowsOf(report, system);
  const right = width - margin.right;
  const first = margin.top + costHeight + 34;
  const height = first + rows.length * (rowHeight + gap) + 8;
  const title = yearTitle("What a month costs", report.isSynthetic);
  return {
    title,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    items: [
      words("months-title", "strong", [margin.left, 14], title),
      ...costItems(report, right),
      ...rows.flatMap((row, index) => rowItems(row, first + index * (rowHeight + gap), right)),
    ],
  };
}

function rowsOf({ totals }: Pick<YearReport, "totals">, system: UnitSystem): readonly Row[] {
  // Steam by its heat is told with the coils; its mass follows from it.
  const shown = totals.filter(({ key }) => key !== "steamCondensate" && !(key === "steam" && has(totals, "steamHeat")));
  return shown.map(({ key, months, total }) => ({
    key,
    name: meters.find((each) => each.key === key)!.name,
    sum: meterText(key, total, "total", system),
    figures: months.map((month) => compactFigure(meterText(key, month, "total", system))),
    months,
    ink: inks[key] ?? "outline",
  }));
}

function has(totals: YearReport["totals"], wanted: string): boolean {
  return totals.some(({ key }) => key === wanted);
}

function monthLeft(month: number, right: number): number {
  return margin.left + (month * (right - margin.left)) / 12;
}

/** Bars of a month's width less a gap. */
function barEdges(month: number, right: number): readonly [number, number] {
  return [monthLeft(month, right) + 4, monthLeft(month + 1, right) - 4];
}

function costItems({ cost }: Pick<YearReport, "cost">, right: number): readonly DisplayItem[] {
  const bottom = margin.top + costHeight;
  const paid = cost.lines.filter((each) => each.cost > 0);
  const sums = monthNames.map((_, month) => paid.reduce((sum, each) => sum + each.months[month]! / 100, 0));
  const range = niceRange(0, Math.max(...sums), 4, 1);
  const y = (money: number) => bottom - (money / range.high) * (costHeight - 8);
  const bars = monthNames.flatMap((month, at) => {
    let from = 0;
    const [low, high] = barEdges(at, right);
    return paid.map(({ name, months }) => {
      const to = from + months[at]! / 100;
      const item = rectangle(`months-cost-${name}-${at}`, inks[name] ?? "outline", [low, y(from), high, y(to)], {
        fill: inks[name] ?? "outline",
        tone: 0.75,
        label: `${month}, ${name}: ${money(to - from)} ${cost.currency}`,
      });
      from = to;
      return item;
    });
  });
  const legend = paid.flatMap(({ name, cost: sum }, index): readonly DisplayItem[] => {
    const at = margin.top + 4 + index * 16;
    const ink = inks[name] ?? "outline";
    return [
      rectangle(`months-key-${name}`, ink, [right + 14, at, right + 25, at + 11], { fill: ink, tone: 0.75 }),
      words(`months-key-${name}-words`, "quiet", [right + 31, at + 9], short(name), { size: "small" }),
      words(`months-key-${name}-sum`, "quiet", [right + margin.right - 4, at + 9], money(sum / 100), {
        size: "small",
        anchor: "end",
      }),
    ];
  });
  const below = margin.top + 4 + paid.length * 16 + 12;
  return [
    words("months-currency", "quiet", [right, 14], cost.currency, { size: "small", anchor: "end" }),
    ...range.ticks.flatMap((tick, index) => [
      line(`months-grid-${index}`, tick === 0 ? "quiet" : "hairline", [margin.left, y(tick), right, y(tick)]),
      words(`months-tick-${index}`, "quiet", [margin.left - 6, y(tick) + 4], compact(tick, range.step), {
        size: "small",
        anchor: "end",
      }),
    ]),
    ...bars,
    ...monthNames.map((name, month) =>
      words(
        `months-name-${month}`,
        "quiet",
        [(monthLeft(month, right) + monthLeft(month + 1, right)) / 2, bottom + 15],
        name,
        {
          size: "small",
          anchor: "middle",
        },
      ),
    ),
    ...legend,
    words("months-sum", "strong", [right + margin.right - 4, below], `${money(cost.cost / 100)} ${cost.currency}`, {
      anchor: "end",
    }),
  ];
}

function rowItems({ key, name, sum, figures, months, ink }: Row, top: number, right: number): readonly DisplayItem[] {
  const bottom = top + rowHeight;
  const most = Math.max(...months.map(Math.abs), 1e-9);
  const y = (amount: number) => bottom - (Math.max(0, amount) / most) * (rowHeight - 24);
  return [
    words(`months-${key}-title`, "strong", [right + 14, top + 24], sum, { size: "small" }),
    words(`months-${key}-words`, "quiet", [right + 14, top + 38], short(name), { size: "small" }),
    line(`months-${key}-base`, "quiet", [margin.left, bottom, right, bottom]),
    ...months.flatMap((amount, month): readonly DisplayItem[] => {
      const [low, high] = barEdges(month, right);
      const label = `${monthNames[month]}, ${name}: ${figures[month]} of ${sum}`;
      if (amount <= 0.002 * most) return [];
      return [
        rectangle(`months-${key}-${month}`, ink, [low, y(amount), high, bottom], { fill: ink, tone: 0.75, label }),
        words(`months-${key}-${month}-figure`, "quiet", [(low + high) / 2, y(amount) - 4], figures[month]!, {
          size: "small",
          anchor: "middle",
        }),
      ];
    }),
  ];
}

function short(name: string): string {
  return name
    .replace("condensate of the cooling coil, reclaimable", "condensate, reclaimable")
    .replace("water for humidification", "humidifying water");
}

function money(amount: number): string {
  return groupedNumber(amount, 0);
}

/** The number alone; from a thousand on by thousands or millions. */
function compactFigure(text: string): string {
  const number = text.replace(/ .*$/, "");
  const value = Number(number.replaceAll(",", ""));
  if (value >= 999_500) return `${(value / 1e6).toFixed(2)}M`;
  return value >= 999.5 ? `${(value / 1e3).toFixed(value >= 99_950 ? 0 : 1)}k` : number;
}

function compact(tick: number, step: number): string {
  return step >= 1 ? groupedNumber(tick, 0) : tickText(tick, step);
}
