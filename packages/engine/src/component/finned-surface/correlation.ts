import type { FinnedBank } from "./finned-bank.ts";
import {
  compactLouverColburn,
  compactLouverFriction,
  herringboneColburn,
  herringboneFriction,
  wangLouverColburn,
  wangLouverFriction,
  wangWavyColburn,
  wangWavyFriction,
} from "./formed-fin.ts";
import {
  circularFinColburn,
  elmahdyMitalasColburn,
  grayWebbColburn,
  mcQuistonColburn,
  mcQuistonFriction,
  type SurfaceFunction,
  wangPlainColburn,
  wangPlainFriction,
} from "./plain-fin.ts";
import {
  across,
  acrossTubes,
  along,
  alongTubes,
  collar,
  gapTubes,
  limitOf,
  pitch,
  type RangeLimit,
  reynolds,
  rows,
} from "./range-limit.ts";
import type { WetHeatModel } from "./wet-fin.ts";

/** How the fin sheet is formed. */
export const finPatterns = ["plain", "wavy", "lanced"] as const;
/** Plain, wavy or lanced. */
export type FinPattern = (typeof finPatterns)[number];

/** A published air-side correlation: what it gives, for which fins, within which range. */
export interface AirSideCorrelation {
  readonly name: string;
  readonly pattern: FinPattern;
  /** Bibliography key. */
  readonly source: string;
  readonly colburn: SurfaceFunction;
  /** Year of the publication, and whether equations and range were read in print or stand here from memory. */
  readonly year: number;
  readonly certainty: "published" | "from memory";
  /** Where the publication gives friction too; otherwise plain fins' friction stands in. */
  readonly friction?: SurfaceFunction;
  /** The wet factor that belongs to it, where its authors give one. */
  readonly wetHeat?: WetHeatModel;
  /** Not for continuous plates: stands beside as a rival, and is never chosen by itself. */
  readonly onlyRival?: true;
  readonly limits: readonly RangeLimit[];
}

/** All air-side correlations, ranges as their publications or the tables that quote them give them. */
export const airSideCorrelations: readonly AirSideCorrelation[] = [
  {
    name: "Wang-Chi-Chang 2000",
    pattern: "plain",
    source: "wang-chi-chang-2000",
    year: 2000,
    certainty: "published",
    wetHeat: "Wang 2000",
    colburn: wangPlainColburn,
    friction: wangPlainFriction,
    limits: [
      reynolds(300, 20_000),
      rows(1, 6),
      collar(0.0069, 0.0136),
      pitch(0.001, 0.0087),
      across(0.0204, 0.0318),
      along(0.0127, 0.032),
    ],
  },
  {
    name: "Gray-Webb 1986",
    pattern: "plain",
    source: "gray-webb-1986",
    year: 1986,
    certainty: "from memory",
    colburn: grayWebbColburn,
    limits: [reynolds(500, 24_700), rows(1, 8), acrossTubes(1.97, 2.55), alongTubes(1.7, 2.58), gapTubes(0.08, 0.64)],
  },
  {
    name: "McQuiston 1978",
    pattern: "plain",
    source: "mcquiston-1978",
    year: 1978,
    certainty: "from memory",
    wetHeat: "McQuiston 1978",
    colburn: mcQuistonColburn,
    friction: mcQuistonFriction,
    limits: [reynolds(3000, 15_000), rows(1, 8), collar(0.0095, 0.016), pitch(0.0018, 0.0064), across(0.0254, 0.051)],
  },
  {
    name: "Elmahdy-Mitalas 1977",
    pattern: "plain",
    source: "elmahdy-mitalas-1977",
    year: 1977,
    certainty: "published",
    wetHeat: "Elmahdy-Mitalas 1977",
    colburn: elmahdyMitalasColburn,
    limits: [
      {
        what: "Reynolds number of the hydraulic diameter",
        low: 200,
        high: 1500,
        value: (bank, number) => (number * bank.hydraulicDiameter) / bank.collarDiameter,
      },
      rows(4, 12),
      collar(0.015, 0.017),
      pitch(0.0018, 0.0032),
      across(0.031, 0.0382),
    ],
  },
  {
    name: "circular fins 1984",
    pattern: "plain",
    source: "nbsir-84-2996",
    year: 1984,
    certainty: "published",
    onlyRival: true,
    colburn: circularFinColburn,
    limits: [
      reynolds(1000, 30_000),
      rows(1, 4),
      collar(0.0125, 0.05),
      pitch(0.002, 0.0064),
      limitOf("finned over bare area", (bank) => bank.outsideArea / bank.bareArea)(5, 30),
    ],
  },
  {
    name: "Wang wavy 1997",
    pattern: "wavy",
    source: "wang-1997-wavy",
    year: 1997,
    certainty: "published",
    colburn: wangWavyColburn,
    friction: wangWavyFriction,
    limits: [reynolds(400, 8000), rows(1, 4), collar(0.0083, 0.0104), pitch(0.0017, 0.0032), across(0.025, 0.026)],
  },
  {
    name: "Wang herringbone 2000",
    pattern: "wavy",
    source: "shah-sekulic-2003",
    year: 2000,
    certainty: "published",
    colburn: herringboneColburn,
    friction: herringboneFriction,
    limits: [
      reynolds(300, 8000),
      rows(1, 6),
      collar(0.00858, 0.01038),
      pitch(0.00121, 0.00366),
      across(0.0254, 0.0254),
      along(0.01905, 0.02504),
    ],
  },
  {
    name: "Wang louver 1998",
    pattern: "lanced",
    source: "wang-1998-louver",
    year: 1998,
    certainty: "published",
    colburn: wangLouverColburn,
    friction: wangLouverFriction,
    limits: [reynolds(300, 8000), rows(1, 4), collar(0.0083, 0.0104), pitch(0.0012, 0.0025), across(0.025, 0.026)],
  },
  {
    name: "Wang-Lee-Chang 1999",
    pattern: "lanced",
    source: "wang-lee-chang-1999",
    year: 1999,
    // The equations were read, their range stands here from memory.
    certainty: "from memory",
    colburn: compactLouverColburn,
    friction: compactLouverFriction,
    limits: [
      reynolds(300, 8000),
      rows(1, 6),
      collar(0.00693, 0.01042),
      pitch(0.0012, 0.00249),
      across(0.0177, 0.0254),
      along(0.0127, 0.022),
    ],
  },
];

/**
 * The correlation that gives a surface's friction: its own where it gives friction, else that of plain fins.
 *
 * @param correlation record: of the surface's heat
 * @returns record: the correlation whose friction stands
 * @example frictionCorrelation({ name: "x" }).year // 2000
 * @source definition
 */
export function frictionCorrelation(correlation: AirSideCorrelation): AirSideCorrelation {
  return correlation.friction === undefined ? airSideCorrelations[0]! : correlation;
}

/** Names, for the field that chooses. */
export const correlationNames: readonly string[] = airSideCorrelations.map((each) => each.name);

/**
 * The correlation of a name.
 *
 * @param name text: as in `airSideCorrelations`
 * @returns record: the correlation
 * @throws RangeError when there is none of that name
 * @example correlationOfName("Gray-Webb 1986").source // "gray-webb-1986"
 * @source definition look-up
 */
export function correlationOfName(name: string): AirSideCorrelation {
  const found = airSideCorrelations.find((each) => each.name === name);
  if (found === undefined)
    throw new RangeError(`no air-side correlation "${name}"; there are ${correlationNames.join(", ")}`);
  return found;
}

/**
 * How far a case lies outside a correlation's published range: 0 inside, else the largest overshoot of a variable as a
 * share of the limit it passes (0.25: a quarter beyond).
 *
 * @param correlation record: the correlation
 * @param bank record: the finned bank
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns share: 0 or more
 * @outside this is the measure of being outside
 * @example distanceFromRange({ limits: [{ low: 300, high: 20000, value: (_, re) => re }] }, {}, 25000) // 0.25
 * @source definition
 */
export function distanceFromRange(correlation: AirSideCorrelation, bank: FinnedBank, reynolds: number): number {
  let most = 0;
  for (const limit of correlation.limits) {
    const value = limit.value(bank, reynolds);
    // A part in a million is rounding of unit conversion, not a departure.
    const beyond = Math.max(value / limit.high - 1, limit.low / value - 1);
    if (beyond > 1e-6) most = Math.max(most, beyond);
  }
  return most;
}

/**
 * Colburn factor of a correlation at any Reynolds number: below the published range the coefficient of heat transfer
 * stays what it is at the lower end, as in developed laminar flow (j falls as 1/Re).
 *
 * @param correlation record: the correlation
 * @param bank record: the finned bank
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns factor: Colburn j
 * @outside above the range the correlation is extrapolated
 * @example colburnFactor({ limits: [{ low: 300, high: 20000 }], colburn: (_, re) => 1 / re }, {}, 150) // 0.006666667 ± 1e-9
 * @source derived-here laminar limit
 */
export function colburnFactor(correlation: AirSideCorrelation, bank: FinnedBank, reynolds: number): number {
  const low = lowestReynolds(correlation, bank);
  return reynolds >= low ? correlation.colburn(bank, reynolds) : (correlation.colburn(bank, low) * low) / reynolds;
}

/**
 * Fanning friction factor of a correlation at any Reynolds number, with plain fins' friction where the publication gives
 * none; below the range as in laminar flow (f falls as 1/Re).
 *
 * @param correlation record: the correlation
 * @param bank record: the finned bank
 * @param reynolds number, 1…50000: with the collar diameter and the narrowest passage
 * @returns factor: Fanning f
 * @outside above the range the correlation is extrapolated
 * @example frictionFactor({ limits: [{ low: 300, high: 20000 }], friction: () => 0.03 }, {}, 150) // 0.06
 * @source derived-here laminar limit
 */
export function frictionFactor(correlation: AirSideCorrelation, bank: FinnedBank, reynolds: number): number {
  const from = frictionCorrelation(correlation);
  const friction = from.friction ?? wangPlainFriction;
  const low = lowestReynolds(from, bank);
  return reynolds >= low ? friction(bank, reynolds) : (friction(bank, low) * low) / reynolds;
}

/** The first limit of every correlation is that of the Reynolds number; brought to the collar diameter. */
function lowestReynolds(correlation: AirSideCorrelation, bank: FinnedBank): number {
  const limit = correlation.limits[0]!;
  if (limit.what === "Reynolds number of the hydraulic diameter") {
    return (limit.low * bank.collarDiameter) / bank.hydraulicDiameter;
  }
  return limit.low;
}
