import type { DisplayItem, DisplayList, Ink } from "#section/display";
import { daysOfMonth, monthNames } from "#weather/calendar";
import { line, rectangle, words } from "./items.ts";

/** A class of hours: how it is painted, and what the key says of it. */
export interface CarpetClass {
  readonly key: string;
  readonly words: string;
  readonly ink: Ink;
  /** 0…1; 0 leaves the paper. */
  readonly tone: number;
}

/** A year as a carpet: a column for each day, a row for each hour of the day, a tone for each class. */
export interface CarpetOptions {
  readonly key: string;
  readonly title: string;
  readonly remark: string;
  readonly hours: number;
  readonly classes: readonly CarpetClass[];
  /** Class of an hour, by its place; −1 for an hour that is left blank. */
  readonly classOf: (hour: number) => number;
  /** pt. */
  readonly width: number;
}

/** pt: of an hour's row; left for hours, right for the key, above for the title, below for months. */
const rowHeight = 5;
const margin = { left: 44, right: 190, top: 32, bottom: 22 } as const;

/** The plane of a carpet. */
export interface CarpetFrame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A carpet, with the plane it lies on. */
export interface CarpetList extends DisplayList {
  readonly frame: CarpetFrame;
}

/** Draws the carpet. Midnight is at the bottom, so that a day reads upwards; hours alike that lie side by side are one patch. */
export function carpetPlot(options: CarpetOptions): CarpetList {
  const { key, title, remark, hours, width } = options;
  const frame = {
    left: margin.left,
    right: width - margin.right,
    top: margin.top,
    bottom: margin.top + 24 * rowHeight,
  };
  return {
    title,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width, height: frame.bottom + margin.bottom },
    frame,
    items: [
      words(`${key}-title`, "strong", [frame.left, 14], title),
      words(`${key}-remark`, "quiet", [frame.right, 14], remark, { size: "small", anchor: "end" }),
      ...patches(options, frame),
      ...monthItems(key, frame, hours),
      ...hourItems(key, frame),
      ...keyItems(options, frame),
    ],
  };
}

/** pt of the left edge of a day. */
export function dayPoint({ left, right }: CarpetFrame, day: number, hours: number): number {
  return left + (day * (right - left)) / Math.ceil(hours / 24);
}

/** One item for each class, of a rectangle for each run of days alike at one hour of the day. */
function patches({ key, hours, classes, classOf }: CarpetOptions, frame: CarpetFrame): readonly DisplayItem[] {
  const days = Math.ceil(hours / 24);
  const points = classes.map((): number[] => []);
  for (let hour = 0; hour < 24; hour++) {
    const [low, high] = [frame.bottom - hour * rowHeight, frame.bottom - (hour + 1) * rowHeight];
    for (let day = 0, next = 0; day < days; day = next) {
      const of = classOf(24 * day + hour);
      for (next = day + 1; next < days && classOf(24 * next + hour) === of; ) next++;
      if (of < 0 || classes[of]!.tone === 0) continue;
      const [left, right] = [rounded(dayPoint(frame, day, hours)), rounded(dayPoint(frame, next, hours))];
      points[of]!.push(left, low, right, low, right, high, left, high);
    }
  }
  return classes.flatMap(({ key: name, ink, tone, words: label }, of) => {
    const own = points[of]!;
    if (own.length === 0) return [];
    const breaks = Array.from({ length: own.length / 8 - 1 }, (_, index) => 4 * (index + 1));
    return [line(`${key}-${name}`, ink, own, { closed: true, fill: ink, tone, breaks, label })];
  });
}

function monthItems(key: string, frame: CarpetFrame, hours: number): readonly DisplayItem[] {
  let day = 0;
  return monthNames.flatMap((name, index) => {
    const from = dayPoint(frame, day, hours);
    day += daysOfMonth(index + 1, hours);
    const to = dayPoint(frame, day, hours);
    return [
      line(`${key}-month-${index}`, "hairline", [rounded(to), frame.top, rounded(to), frame.bottom + 6]),
      words(`${key}-month-${index}-name`, "quiet", [(from + to) / 2, frame.bottom + 15], name, {
        size: "small",
        anchor: "middle",
      }),
    ];
  });
}

function hourItems(key: string, frame: CarpetFrame): readonly DisplayItem[] {
  const { left, right, top, bottom } = frame;
  return [
    rectangle(`${key}-frame`, "quiet", [left, top, right, bottom]),
    ...[0, 6, 12, 18, 24].map((hour) =>
      words(`${key}-hour-${hour}`, "quiet", [left - 6, bottom - hour * rowHeight + 4], `${hour} h`, {
        size: "small",
        anchor: "end",
      }),
    ),
  ];
}

/** What the tones mean, with how many hours have each. */
function keyItems({ key, classes, classOf, hours }: CarpetOptions, frame: CarpetFrame): readonly DisplayItem[] {
  const counts = classes.map(() => 0);
  for (let hour = 0; hour < hours; hour++) if (classOf(hour) >= 0) counts[classOf(hour)]!++;
  const step = Math.min(15, (24 * rowHeight) / classes.length);
  const size = Math.min(11, step - 2);
  const left = frame.right + 14;
  return classes.flatMap(({ key: name, ink, tone, words: text }, of) => {
    const y = frame.top + of * step;
    const isEmpty = counts[of] === 0;
    return [
      rectangle(`${key}-${name}-tone`, ink, [left, y, left + size, y + size], { fill: ink, tone }),
      ...(tone === 0 ? [rectangle(`${key}-${name}-edge`, "hairline", [left, y, left + size, y + size])] : []),
      words(`${key}-${name}-words`, ink === "fail" && !isEmpty ? "fail" : "quiet", [left + size + 6, y + 9], text, {
        size: "small",
      }),
      words(`${key}-${name}-count`, "quiet", [frame.right + margin.right - 4, y + 9], `${counts[of]} h`, {
        size: "small",
        anchor: "end",
      }),
    ];
  });
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
