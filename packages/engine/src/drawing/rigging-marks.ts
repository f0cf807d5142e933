import type { Split } from "#arrangement/split";
import { circle, line, words } from "#chart/items";
import { LabelRoom, type Place } from "#chart/label-room";
import { textSizes } from "#chart/text-size";
import type { DisplayItem } from "#section/display";

/** A centre of gravity to be marked: mm on the paper, its words, pt of its radius. */
export interface CentreMark {
  readonly key: string;
  readonly at: readonly [number, number];
  readonly text?: string;
  readonly size?: number;
}

const usualSize = 7;

/** Centres of gravity, each with its words where they stand on no other mark and no other words. */
export function centreMarks(marks: readonly CentreMark[], textScale: number): readonly DisplayItem[] {
  const room = new LabelRoom();
  for (const { at, size = usualSize } of marks) {
    const [x, y] = [at[0] / textScale, -at[1] / textScale];
    room.take(x - size - 1, y - size - 1, x + size + 1, y + size + 1);
  }
  return marks.flatMap((mark) => centreMark(mark, textScale, room));
}

/** A circle in quarters, two of them filled, with its words beside it. */
function centreMark(
  { key, at: [x, y], text, size = usualSize }: CentreMark,
  textScale: number,
  room: LabelRoom,
): readonly DisplayItem[] {
  const radius = size * textScale;
  const reference = { part: "centre of gravity" };
  const quarter = (sign: 1 | -1) => {
    const points = [x, y];
    for (let step = 0; step <= 8; step++) {
      const angle = ((step / 8 + (sign === 1 ? 0 : 2)) * Math.PI) / 2;
      points.push(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
    }
    return points;
  };
  const common = { reference, label: text ?? "centre of gravity" };
  const drawn: DisplayItem[] = [
    circle(`${key}-ring`, "strong", [x, y], radius, { fill: "paper", ...common }),
    line(`${key}-first`, "outline", quarter(1), { closed: true, fill: "strong", ...common }),
    line(`${key}-second`, "outline", quarter(-1), { closed: true, fill: "strong", ...common }),
  ];
  if (text === undefined) return drawn;
  const { dx, dy, anchor } = room.place(x / textScale, -y / textScale, `${text}xx`, "small", besideMark(size));
  const at = [x + dx * textScale, y - dy * textScale] as const;
  return [...drawn, words(`${key}-words`, "strong", at, text, { size: "small", anchor, reference })];
}

/** pt: right of a mark, left of it, under and over it. */
function besideMark(size: number): readonly Place[] {
  const level = 0.35 * textSizes.small;
  return [
    { dx: size + 4, dy: level, anchor: "start" },
    { dx: -size - 4, dy: level, anchor: "end" },
    { dx: 0, dy: size + textSizes.small, anchor: "middle" },
    { dx: 0, dy: -size - 4, anchor: "middle" },
  ];
}

/** Where the unit comes apart: a line of long dashes through the whole height of the view, named above. */
export function splitMarks(
  splits: readonly Split[],
  low: number,
  high: number,
  textScale: number,
): readonly DisplayItem[] {
  return splits.slice(1).flatMap(({ from, name }, index) => {
    const reference = { part: `joint ${index + 1}` };
    const label = `joint of ${splits[index]!.name} and ${name}`;
    const at = [from, high + 4 * textScale] as const;
    return [
      line(`split-${index + 1}`, "strong", [from, low, from, high], { dash: "long", label, reference }),
      words(`split-${index + 1}-words`, "strong", at, `${index + 1} | ${index + 2}`, {
        size: "small",
        anchor: "middle",
        reference,
      }),
    ];
  });
}

/** A lifting lug: a plate with its hole. */
export function lugMark(key: string, [x, y]: readonly [number, number], size: number): readonly DisplayItem[] {
  const reference = { part: "lifting lug" };
  const half = size / 2;
  return [
    line(
      key,
      "outline",
      [x - half, y - half, x + half, y - half, x + half, y + 0.2 * half, x, y + half, x - half, y + 0.2 * half],
      {
        closed: true,
        fill: "paper",
        label: "lifting lug",
        reference,
      },
    ),
    circle(`${key}-hole`, "outline", [x, y], 0.28 * half, { fill: "paper", reference }),
  ];
}
