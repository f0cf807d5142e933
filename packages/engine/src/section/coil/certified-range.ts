import type { Liquid } from "#fluid/liquid";
import { wetBulbFromHumidityRatio } from "#fluid/wet-bulb";
import type { Note } from "../contract.ts";
import { absolutePressure } from "../station.ts";
import type { LiquidCoilFigures } from "./liquid.ts";

type Range = readonly [number, number];

/** A span of ratings: °C of air and its wet bulb, m/s on the face, °C and m/s of the liquid, and how it is told. */
interface Span {
  readonly air: Range;
  readonly wetBulb?: Range;
  readonly face: Range;
  readonly airWords: string;
  readonly water: LiquidSpan;
  readonly glycol: LiquidSpan;
}

interface LiquidSpan {
  readonly liquid: Range;
  readonly tubes: Range;
  readonly words: string;
}

/** Ranges in which coils on liquids are customarily certified; all from memory of the published standard. */
const spans: Readonly<Record<"cooling" | "heating", Span>> = {
  cooling: {
    air: [18.3, 37.8],
    wetBulb: [15.5, 29.5],
    face: [1.016, 4.07],
    airWords: "air 65–100 °F dry bulb, 60–85 °F wet bulb, 200–800 fpm",
    water: { liquid: [1.6, 18.4], tubes: [0.3, 2.44], words: "water 35–65 °F, 1–8 ft/s" },
    glycol: { liquid: [-17.8, 32.2], tubes: [0.3, 1.83], words: "glycol of 10–60 % 0–90 °F, 1–6 ft/s" },
  },
  heating: {
    air: [-17.8, 37.8],
    face: [1.016, 7.62],
    airWords: "air 0–100 °F, 200–1500 fpm",
    water: { liquid: [48.9, 121.1], tubes: [0.15, 2.44], words: "water 120–250 °F, 0.5–8 ft/s" },
    glycol: { liquid: [-17.8, 93.3], tubes: [0.15, 1.83], words: "glycol of 10–60 % 0–200 °F, 0.5–6 ft/s" },
  },
};

/** What rounding of the ranges to SI may take or give: K and m/s of air; m/s in tubes and shares. */
const rounding = 0.06;
const fineRounding = 0.006;

function isWithin(value: number, [low, high]: Range, slack = rounding): boolean {
  return value >= low - slack && value <= high + slack;
}

/** A note where a coil on liquid is rated outside the ranges in which such coils are customarily certified. */
export function certifiedRangeNotes(
  use: "cooling" | "heating",
  rating: LiquidCoilFigures,
  { massFraction }: Liquid,
): readonly Note[] {
  if (rating.liquidMassFlow === 0) return [];
  const span = spans[use];
  const isGlycol = massFraction > 0;
  const { liquid, tubes, words } = isGlycol ? span.glycol : span.water;
  const { entering } = rating;
  const isInside =
    isWithin(entering.dryBulb, span.air) &&
    isWithin(rating.faceVelocity, span.face) &&
    isWithin(rating.liquidEntering, liquid) &&
    isWithin(rating.tubeVelocity, tubes, fineRounding) &&
    (!isGlycol || isWithin(massFraction, [0.1, 0.6], fineRounding)) &&
    (span.wetBulb === undefined ||
      isWithin(
        wetBulbFromHumidityRatio(entering.dryBulb, entering.humidityRatio, absolutePressure(entering)),
        span.wetBulb,
      ));
  if (isInside) return [];
  return [
    {
      what: `outside the ranges in which coils are customarily certified for ${use} (${span.airWords}; ${words})`,
      weight: "information",
      source: "from-memory",
    },
  ];
}
