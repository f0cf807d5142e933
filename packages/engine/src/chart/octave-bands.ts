import type { DisplayItem, DisplayList, Ink, LineItem } from "#section/display";
import { octaveBands } from "#standard/fan-sound";
import { limitOutcome, type SoundOutlet, type UnitSound, uncountedAddition } from "#unit/sound";
import { circle, line, words } from "./items.ts";
import { type NiceRange, niceRange, tickText } from "./ticks.ts";

/** A-weighted limits of the duty, dB(A). */
export interface SoundLimits {
  readonly intake?: number | undefined;
  readonly discharge?: number | undefined;
  readonly casing?: number | undefined;
}

/** What the chart is drawn on. */
export interface OctaveBandOptions {
  /** pt. */
  readonly width: number;
  readonly height: number;
  readonly limits: SoundLimits;
}

/** One way out of the unit as a curve. */
interface Curve {
  readonly key: string;
  readonly name: string;
  readonly ink: Ink;
  readonly dash: LineItem["dash"];
  readonly outlet: SoundOutlet;
  readonly limit: number | undefined;
}

/** pt left for the scale, right for names, above for the title, below for the bands. */
const margin = { left: 44, right: 236, top: 30, bottom: 77 } as const;
/** pt between names at the right edge, and between the whiskers of curves that meet. */
const nameStep = 30;
const whiskerStep = 5;

/** Sound power by octave band where it leaves the unit, with what each figure may be off by and its A-weighted sum. */
export function octaveBandChart(sound: UnitSound, title: string, options: OctaveBandOptions): DisplayList {
  const curves = curvesOf(sound, options.limits);
  const readings = curves.flatMap(({ outlet: { levels, uncertainty } }) =>
    levels.flatMap((level) => [level - uncertainty, level + uncertainty]),
  );
  const range = niceRange(Math.min(...readings), Math.max(...readings), 8, 40);
  const field = fieldOf(options, range);
  return {
    title,
    unit: "pt",
    up: false,
    box: { x: 0, y: 0, width: options.width, height: options.height },
    items: [
      words("sound-title", "strong", [margin.left, 14], "Sound power by octave band"),
      words("sound-unit", "quiet", [margin.left + 210, 14], "dB re 1 pW, with its uncertainty", { size: "small" }),
      ...scaleItems(field),
      ...curves.flatMap((curve, index) => curveItems(field, curve, (index - (curves.length - 1) / 2) * whiskerStep)),
      ...nameItems(field, curves),
      ...uncountedItems(field, sound.uncounted),
    ],
  };
}

function curvesOf(sound: UnitSound, limits: SoundLimits): readonly Curve[] {
  const curves: Curve[] = [
    { key: "intake", name: "intake", ink: "air", dash: "long", outlet: sound.intake, limit: limits.intake },
    {
      key: "discharge",
      name: "discharge",
      ink: "strong",
      dash: undefined,
      outlet: sound.discharge,
      limit: limits.discharge,
    },
    { key: "casing", name: "casing", ink: "outline", dash: "short", outlet: sound.casing, limit: limits.casing },
  ];
  if (sound.returnOpening === undefined) return curves;
  const outlet = sound.returnOpening;
  return [...curves, { key: "return", name: "return opening", ink: "quiet", dash: "long", outlet, limit: undefined }];
}

interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly range: NiceRange;
}

function fieldOf({ width, height }: OctaveBandOptions, range: NiceRange): Field {
  return { left: margin.left, right: width - margin.right, top: margin.top, bottom: height - margin.bottom, range };
}

function bandPoint({ left, right }: Field, band: number): number {
  return left + ((band + 0.5) * (right - left)) / octaveBands.length;
}

function levelPoint({ top, bottom, range }: Field, level: number): number {
  return bottom - ((level - range.low) / (range.high - range.low)) * (bottom - top);
}

function scaleItems(field: Field): readonly DisplayItem[] {
  const { left, right, bottom, range } = field;
  const levels = range.ticks.flatMap((tick, index) => {
    const y = levelPoint(field, tick);
    return [
      line(`sound-grid-${index}`, index === 0 ? "quiet" : "hairline", [left, y, right, y]),
      words(`sound-tick-${index}`, "quiet", [left - 8, y + 4], tickText(tick, range.step), {
        size: "small",
        anchor: "end",
      }),
    ];
  });
  const bands = octaveBands.map((frequency, band) =>
    words(`sound-band-${frequency}`, "quiet", [bandPoint(field, band), bottom + 16], bandName(frequency), {
      size: "small",
      anchor: "middle",
    }),
  );
  return [
    ...levels,
    ...bands,
    words("sound-band-unit", "quiet", [right, bottom + 31], "Hz, middle of the band", { size: "small", anchor: "end" }),
  ];
}

/** `63`, and from a thousand on `1k`: eight names that do not touch on a narrow page. */
function bandName(frequency: number): string {
  return frequency < 1000 ? String(frequency) : `${frequency / 1000}k`;
}

/** The curve through the middles of the bands, a point and a whisker at each. */
function curveItems(field: Field, { key, name, ink, dash, outlet }: Curve, shift: number): readonly DisplayItem[] {
  const { levels, uncertainty } = outlet;
  const reference = { figure: `sound.${key}` };
  const points = levels.flatMap((level, band) => [bandPoint(field, band) + shift, levelPoint(field, level)]);
  const marks = levels.flatMap((level, band) => {
    const x = bandPoint(field, band) + shift;
    const label = `${name}, ${octaveBands[band]} Hz: ${level.toFixed(0)} dB ±${uncertainty.toFixed(0)}`;
    return [
      line(`sound-${key}-${octaveBands[band]}-band`, "hairline", [
        x,
        levelPoint(field, level - uncertainty),
        x,
        levelPoint(field, level + uncertainty),
      ]),
      circle(`sound-${key}-${octaveBands[band]}`, ink, [x, levelPoint(field, level)], 2.5, {
        fill: ink,
        label,
        reference,
      }),
    ];
  });
  return [
    line(`sound-${key}`, ink, points, { ...(dash === undefined ? {} : { dash }), label: name, reference }),
    ...marks,
  ];
}

/** Under the bands: what is not among the sums, and what the trade holds of it. */
function uncountedItems({ left, bottom }: Field, uncounted: UnitSound["uncounted"]): readonly DisplayItem[] {
  if (uncounted.length === 0) return [];
  const beyond = uncounted.filter(({ isBounded }) => !isBounded).map(({ section }) => section);
  const lines = [
    "flow noise of coils, filters and eliminators is not counted:",
    `held to add at most ${uncountedAddition.toFixed(1)} dB, from memory`,
    ...(beyond.length === 0 ? [] : [`${beyond.join(", ")}: faster than that holds for`]),
  ];
  return lines.map((said, index) =>
    words(`sound-uncounted-${index}`, "quiet", [left, bottom + 45 + 13 * index], said, { size: "small" }),
  );
}

/** Names with the A-weighted sums right of the field, each as near to the end of its curve as the others let it. */
function nameItems(field: Field, curves: readonly Curve[]): readonly DisplayItem[] {
  const ends = curves
    .map((curve) => ({ curve, y: levelPoint(field, curve.outlet.levels.at(-1)!) }))
    .sort((one, other) => one.y - other.y);
  const x = field.right + 12;
  const lowest = field.bottom - (ends.length - 1) * nameStep;
  let free = field.top;
  return ends.flatMap(({ curve, y }, index) => {
    const { key, name, ink, outlet, limit } = curve;
    const at = Math.min(Math.max(y, free), lowest + index * nameStep);
    free = at + nameStep;
    const sum = `${outlet.weighted.toFixed(0)} dB(A) ±${outlet.uncertainty.toFixed(0)}`;
    const outcome = limit === undefined ? undefined : limitOutcome(outlet, limit);
    const said = limit === undefined ? sum : `${sum}, limit ${limit.toFixed(0)}: ${outcome}`;
    return [
      words(`sound-${key}-name`, ink, [x, at], name),
      words(`sound-${key}-sum`, outcome === "exceeded" ? "fail" : "quiet", [x, at + 13], said, { size: "small" }),
    ];
  });
}
