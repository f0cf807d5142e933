import { groupedNumber } from "#quantity/print";
import type { DisplayItem, DisplayList, Ink } from "#section/display";
import type { HourFigure } from "#year/hour-figures";
import { meters, meterText } from "#year/meter";
import type { YearReport } from "#year/year-report";
import { circle, line, words } from "./items.ts";
import { multiples } from "./ticks.ts";
import type { YearPictureOptions } from "./year-carpets.ts";
import { yearTitle } from "./year-title.ts";

/** Loads that are drawn, by meter, with their ink. */
const drawn: readonly { readonly key: string; readonly name: string; readonly ink: Ink }[] = [
  { key: "steamHeat", name: "steam coils", ink: "steam" },
  { key: "heatingWater", name: "heating water", ink: "heat" },
  { key: "chilledWater", name: "chilled water", ink: "moisture" },
  { key: "electricity", name: "fan electricity", ink: "strong" },
];

const margin = { left: 44, right: 190, top: 32, bottom: 38 } as const;
/** Points of a curve; enough for a smooth one, few enough for a small file. */
const points = 146;

/**
 * For how many hours each load is reached or exceeded: hours sorted by load, highest first. All are drawn as a share of
 * their highest hour, which stands beside the curve; a ring marks the highest of the job's own conditions.
 */
export function loadDuration(
  { year, system, width }: YearPictureOptions,
  report: Pick<YearReport, "totals">,
  height = 260,
): DisplayList {
  const field = { left: margin.left, right: width - margin.right, top: margin.top, bottom: height - margin.bottom };
  const { hours } = year.plan;
  const x = (count: number) => field.left + (count / hours) * (field.right - field.left);
  const designMost = Math.max(1, ...report.totals.filter(isDrawn).map(({ peak, designPeak }) => designPeak / peak));
  const top = Math.min(1.6, Math.ceil(designMost * 5 - 1e-6) / 5);
  const y = (share: number) => field.bottom - (Math.min(share, top) / top) * (field.bottom - field.top);
  const title = yearTitle("Load duration", year.plan.weather.origin === "synthetic");
  const curves = drawn.flatMap(({ key, name, ink }) => {
    const total = report.totals.find((each) => each.key === key);
    const meter = meters.find((each) => each.key === key)!;
    if (total === undefined || total.peak <= 0) return [];
    const sorted = year.lists[meter.figure as HourFigure].slice().sort((a, b) => b - a);
    const run = Array.from({ length: points }, (_, index) => Math.round((index / (points - 1)) * (hours - 1)));
    const used = sorted.findLastIndex((load) => load > 0) + 1;
    const said = `100 % is ${meterText(meter.key, total.peak, "rate", system)}`;
    return [
      {
        key,
        name: `${name}, ${groupedNumber(used, 0)} h`,
        ink,
        said,
        used,
        path: run.flatMap((at) => [x(at + 0.5), y(Math.max(0, sorted[at]!) / total.peak)]),
        design: total.designPeak / total.peak,
      },
    ];
  });
  return {
    title,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    items: [
      words("duration-title", "strong", [field.left, 14], title),
      ...(curves.some(({ design }) => design > 0) ? ringItems(field, curves.length) : []),
      ...scales(field, hours, top, x, y),
      ...curves.map(({ key, ink, path, name }) => line(`duration-${key}`, ink, path, { label: name })),
      ...curves.flatMap(({ key, ink, name, design }) =>
        design > 0
          ? [
              circle(`duration-${key}-design`, ink, [field.left, y(design)], 3.5, {
                fill: "paper",
                label: `${name} at the job's conditions`,
              }),
            ]
          : [],
      ),
      ...curves.flatMap(({ key, ink, name, said }, index): readonly DisplayItem[] => {
        const at = field.top + 12 + index * 34;
        const left = field.right + 14;
        return [
          line(`duration-${key}-key`, ink, [left, at - 4, left + 16, at - 4]),
          words(`duration-${key}-name`, ink === "strong" ? "strong" : ink, [left + 22, at], name, { size: "small" }),
          words(`duration-${key}-said`, "quiet", [left + 22, at + 14], said, { size: "small" }),
        ];
      }),
    ],
  };
}

function isDrawn({ key, peak }: { readonly key: string; readonly peak: number }): boolean {
  return peak > 0 && drawn.some((each) => each.key === key);
}

/** What the rings mean, below the names of the curves. */
function ringItems({ right, top }: Field, curves: number): readonly DisplayItem[] {
  const y = top + 12 + curves * 34;
  return [
    circle("duration-ring", "quiet", [right + 22, y - 4], 3.5, { fill: "paper" }),
    words("duration-ring-words", "quiet", [right + 36, y], "at the job's conditions", { size: "small" }),
  ];
}

interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function scales(
  { left, right, top, bottom }: Field,
  hours: number,
  most: number,
  x: (count: number) => number,
  y: (share: number) => number,
): readonly DisplayItem[] {
  const shares = multiples(0, most, 0.2).flatMap((share, index) => [
    line(`duration-share-${index}`, share === 0 ? "quiet" : "hairline", [left, y(share), right, y(share)]),
    words(`duration-share-${index}-text`, "quiet", [left - 6, y(share) + 4], `${Math.round(100 * share)} %`, {
      size: "small",
      anchor: "end",
    }),
  ]);
  const counts = multiples(0, hours, 1000).flatMap((count) => [
    line(`duration-hours-${count}`, "hairline", [x(count), top, x(count), bottom + 4]),
    words(`duration-hours-${count}-text`, "quiet", [x(count), bottom + 16], groupedNumber(count, 0), {
      size: "small",
      anchor: "middle",
    }),
  ]);
  return [
    ...shares,
    ...counts,
    words(
      "duration-unit",
      "quiet",
      [right, bottom + 31],
      "hours in which that share of its highest is reached or exceeded",
      {
        size: "small",
        anchor: "end",
      },
    ),
  ];
}
