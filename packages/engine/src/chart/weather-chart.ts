import type { UnitSystem } from "#quantity/kind";
import { displayUnit, printQuantity, toDisplay } from "#quantity/print";
import type { DisplayItem, DisplayList, Ink } from "#section/display";
import type { ExtremeHour } from "#weather/extremes";
import { extremeHours } from "#weather/extremes";
import type { WeatherYear } from "#weather/weather-year";
import { circle, rectangle, words } from "./items.ts";
import { LabelRoom, placesAround } from "./label-room.ts";
import { type PsychrometricFrame, psychrometricFrame } from "./psychrometric-frame.ts";
import {
  enthalpyScale,
  relativeHumidityCurves,
  saturationCurve,
  squareGrid,
  wetBulbLines,
} from "./psychrometric-grid.ts";

/** What a picture of a year's states shows. */
export interface WeatherChartOptions {
  readonly weather: WeatherYear;
  readonly system: UnitSystem;
  /** pt. */
  readonly width: number;
  readonly height: number;
}

/** Steps of the scale: hours in a cell from which the next darker tone begins. */
const tones = [
  { from: 1, tone: 0.12 },
  { from: 5, tone: 0.28 },
  { from: 15, tone: 0.46 },
  { from: 40, tone: 0.66 },
  { from: 80, tone: 0.88 },
] as const;

/** The states of a year on the psychrometric chart, darker where more hours lie, with the hours that stand out. */
export function weatherChart({ weather, system, width, height }: WeatherChartOptions): DisplayList {
  const pressure = weather.pressure.reduce((sum, value) => sum + value, 0) / weather.hours;
  const extremes = extremeHours(weather);
  const frame = psychrometricFrame(pressure, system, extremes, { width, height });
  const scales = [...relativeHumidityCurves(frame), ...enthalpyScale(frame)];
  return {
    title: `${weather.place.name || "weather"}: states of ${weather.hours} hours at ${printQuantity(pressure, "absolutePressure", system)}`,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height },
    items: [
      ...densityCells(frame, weather.dryBulb, weather.humidityRatio),
      ...squareGrid(frame),
      ...wetBulbLines(frame),
      ...scales,
      saturationCurve(frame),
      ...scaleNames(frame),
      ...toneKey(frame),
      ...extremeMarks(frame, extremes, scales),
    ],
  };
}

/**
 * Cells of a chart by how many states lie in them: a fifth of the dry-bulb scale's step wide, a fifth of the moisture
 * scale's high.
 */
export function densityCells(
  frame: PsychrometricFrame,
  dryBulb: ArrayLike<number>,
  humidityRatio: ArrayLike<number>,
  ink: Ink = "moisture",
): readonly DisplayItem[] {
  const across = frame.dryBulbs.step / 5;
  const up = frame.humidityRatios.step / 5;
  const counts = new Map<string, number>();
  for (let k = 0; k < dryBulb.length; k++) {
    const column = Math.floor((toDisplay(dryBulb[k]!, "temperature", frame.system) - frame.dryBulbs.low) / across);
    const row = Math.floor(toDisplay(humidityRatio[k]!, "humidityRatio", frame.system) / up);
    const key = `${column},${row}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const cellWidth = ((frame.right - frame.left) * across) / (frame.dryBulbs.high - frame.dryBulbs.low);
  const cellHeight = ((frame.bottom - frame.top) * up) / frame.humidityRatios.high;
  return [...counts].map(([key, count]) => {
    const [column, row] = key.split(",").map(Number) as [number, number];
    const left = frame.left + column * cellWidth;
    const low = frame.bottom - row * cellHeight;
    const { tone } = tones.findLast(({ from }) => count >= from)!;
    const label = `${count} ${count === 1 ? "hour" : "hours"}`;
    return rectangle(
      `${ink === "moisture" ? "cell" : ink}-${key}`,
      ink,
      [left, low - cellHeight, left + cellWidth, low],
      {
        fill: ink,
        tone,
        label,
      },
    );
  });
}

function scaleNames(frame: PsychrometricFrame): readonly DisplayItem[] {
  const { system } = frame;
  const dryBulb = `outdoor dry bulb, ${displayUnit("temperature", system)}`;
  const at = [(frame.left + frame.right) / 2, frame.bottom + 32] as const;
  return [
    words("dry-bulb-name", "quiet", at, dryBulb, { size: "small", anchor: "middle" }),
    words("humidity-name", "quiet", [frame.right + 46, frame.top - 12], displayUnit("humidityRatio", system), {
      size: "small",
      anchor: "end",
    }),
  ];
}

function toneKey(frame: PsychrometricFrame): readonly DisplayItem[] {
  const size = 11;
  const left = frame.left + 10;
  const top = frame.top + 34;
  return [
    words("tone-name", "quiet", [left, top - 6], "hours of the year in a cell", { size: "small" }),
    ...tones.flatMap(({ from, tone }, index): readonly DisplayItem[] => {
      const y = top + index * (size + 3);
      const to = tones[index + 1]?.from;
      return [
        rectangle(`tone-${from}`, "moisture", [left, y, left + size, y + size], { fill: "moisture", tone }),
        words(
          `tone-text-${from}`,
          "quiet",
          [left + size + 5, y + 9],
          to === undefined ? `${from} and more` : `${from} to ${to - 1}`,
          {
            size: "small",
          },
        ),
      ];
    }),
  ];
}

function extremeMarks(
  frame: PsychrometricFrame,
  extremes: readonly ExtremeHour[],
  scales: readonly DisplayItem[],
): readonly DisplayItem[] {
  const room = new LabelRoom();
  room.take(frame.right, 0, frame.right + 1000, frame.bottom);
  room.take(0, frame.bottom - 1, frame.right, frame.bottom + 1000);
  for (const item of scales) if (item.shape === "text") room.takeText(item);
  const seen = new Set<number>();
  return extremes.flatMap((each): readonly DisplayItem[] => {
    if (seen.has(each.hour)) return [];
    seen.add(each.hour);
    const [x, y] = [frame.x(each.dryBulb), frame.y(each.humidityRatio)];
    const place = room.place(x, y, each.what, "small", placesAround);
    return [
      circle(`extreme-${each.hour}`, "choice", [x, y], 3, { fill: "paper", label: each.what }),
      words(`extreme-name-${each.hour}`, "choice", [x + place.dx, y + place.dy], each.what, {
        size: "small",
        anchor: place.anchor,
      }),
    ];
  });
}
