import { buildCoil, type Coil, type CoilMake } from "#component/coil/coil";
import { solveCoil } from "#component/coil/march";
import { type CoilInlet, createCoilWork, createPerformance } from "#component/coil/performance";
import { createSteamPerformance, createSteamWork, solveSteamCoil } from "#component/coil/steam-coil";
import { type FinnedSurface, surfaceDistance, wetHeatFactorOf } from "#component/finned-surface/family";
import { leastSquares } from "#numerics/least-squares";

/** A multiplier that may be fitted: dry heat transfer to air, heat transfer in the tubes, ratio of wet to dry. */
export const surfaceFactors = ["air", "water", "wet"] as const;

/** A multiplier that may be fitted. */
export type SurfaceFactor = (typeof surfaceFactors)[number];

/** One tested or rated point of a coil: what it is built of but for the surface, what enters, and what it gave. */
export interface SurfaceTestPoint {
  readonly make: Omit<CoilMake, "surface">;
  readonly inlet: CoilInlet;
  /** °C of saturated steam in the tubes, where they hold steam; the liquid of the inlet then counts for nothing. */
  readonly steamTemperature?: number;
  /** W that liquid or steam took up, negative where it gave. */
  readonly heat: number;
}

/** A multiplier as fitted. */
export interface FittedFactor {
  readonly factor: SurfaceFactor;
  readonly value: number;
  /** Bounds that hold it with 95 % confidence, as far as the scatter of the points tells. */
  readonly low: number;
  readonly high: number;
}

/** A point with what the surface gives. */
export interface FittedPoint {
  readonly measured: number;
  readonly before: number;
  readonly fitted: number;
  readonly wetShare: number;
  readonly rangeDistance: number;
}

/** A surface fitted to test points, or why not. */
export type SurfaceFit =
  | {
      readonly ok: true;
      readonly surface: FinnedSurface;
      /** The points had steam in their tubes. */
      readonly isSteam: boolean;
      readonly factors: readonly FittedFactor[];
      readonly points: readonly FittedPoint[];
      /** Shares: root mean square, mean of sizes and largest of the errors in heat after the fit. */
      readonly scatter: number;
      readonly meanSize: number;
      readonly largest: number;
    }
  | { readonly ok: false; readonly problem: string; readonly needed: string };

/** Least and largest that a record takes. */
const bounds: Readonly<Record<SurfaceFactor, readonly [number, number]>> = {
  air: [0.2, 5],
  water: [0.2, 5],
  wet: [0.5, 2],
};

/** Wider than a factor of two either way a multiplier says nothing. */
const widest = Math.log(2);

/** Difference of a factor's logarithm for slopes: the march is good to some millionths of the heat. */
const slopeStep = 0.02;

/**
 * Fits multipliers of a surface to tested points by least squares of the logarithm of heat given over heat measured, so
 * that each point counts by its share of error.
 */
export function fitSurface(
  surface: FinnedSurface,
  points: readonly SurfaceTestPoint[],
  factors: readonly SurfaceFactor[],
): SurfaceFit {
  if (points.length <= factors.length) {
    return refused(
      `${points.length} points are too few for ${factors.length} multipliers`,
      `at least ${factors.length + 1} points, better three for each`,
    );
  }
  if (factors.includes("wet") && points.some(({ steamTemperature }) => steamTemperature !== undefined)) {
    return refused("steam points condense nothing from the air", "--fit without wet");
  }
  const work = createCoilWork();
  const before = points.map((point) => solved(surface, point, work));
  const wet = before.filter(({ wetShare }) => wetShare > 0);
  if (factors.includes("wet") && wet.length === 0) {
    return refused(
      "no point condenses, so that nothing tells the wet factor",
      "points with a wet coil, or --fit without wet",
    );
  }
  const start = factors.map((factor) => Math.log(startOf(factor, surface, before, points)));
  const residualsOf = (values: readonly number[]) => {
    const trial = withFactors(surface, factors, values);
    return points.map((point) => Math.log(Math.max(1e-6, solved(trial, point, work).heat / point.heat)));
  };
  const fit = leastSquares(residualsOf, start, slopeStep);
  const degrees = points.length - factors.length;
  const variance = fit.residuals.reduce((sum, each) => sum + each * each, 0) / degrees;
  const found = factors.map((factor, i): FittedFactor => {
    const halfWidth =
      studentFactor(degrees) * Math.sqrt(variance * (fit.inverse?.[i]?.[i] ?? Number.POSITIVE_INFINITY));
    const value = Math.exp(fit.values[i]!);
    return { factor, value, low: value * Math.exp(-halfWidth), high: value * Math.exp(halfWidth) };
  });
  const refusal = refusalOf(found, fit.inverse === undefined || !fit.converged);
  if (refusal !== undefined) return refusal;
  return told(withFactors(surface, factors, fit.values), found, points, before, work);
}

function refused(problem: string, needed: string): Extract<SurfaceFit, { ok: false }> {
  return { ok: false, problem, needed };
}

function refusalOf(found: readonly FittedFactor[], isSingular: boolean): SurfaceFit | undefined {
  const vaguest = found.reduce((worst, each) => (each.high / each.value > worst.high / worst.value ? each : worst));
  if (isSingular || !(Math.log(vaguest.high / vaguest.value) < widest)) {
    const which = isSingular ? found.map(({ factor }) => factor).join(" and ") : vaguest.factor;
    return refused(
      `these points do not tell the ${which} multiplier`,
      "fewer multipliers, or points that vary water velocity, air velocity and wetness more",
    );
  }
  for (const { factor, value } of found) {
    const [low, high] = bounds[factor];
    if (value < low || value > high) {
      return refused(
        `the ${factor} multiplier comes out at ${value.toPrecision(3)}`,
        `${low} to ${high}; look for a slip in geometry, flows or units`,
      );
    }
  }
  return undefined;
}

function told(
  surface: FinnedSurface,
  factors: readonly FittedFactor[],
  points: readonly SurfaceTestPoint[],
  before: readonly Solved[],
  work: ReturnType<typeof createCoilWork>,
): SurfaceFit {
  const after = points.map((point, i): FittedPoint => {
    const { heat, wetShare, rangeDistance } = solved(surface, point, work);
    return { measured: point.heat, before: before[i]!.heat, fitted: heat, wetShare, rangeDistance };
  });
  const errors = after.map(({ fitted, measured }) => fitted / measured - 1);
  const sizes = errors.map(Math.abs);
  return {
    ok: true,
    surface,
    isSteam: points.some(({ steamTemperature }) => steamTemperature !== undefined),
    factors,
    points: after,
    scatter: Math.sqrt(errors.reduce((sum, each) => sum + each * each, 0) / errors.length),
    meanSize: sizes.reduce((sum, each) => sum + each, 0) / sizes.length,
    largest: Math.max(...sizes),
  };
}

interface Solved {
  readonly coil: Coil;
  readonly heat: number;
  readonly wetShare: number;
  readonly airReynolds: number;
  readonly rangeDistance: number;
}

function solved(
  surface: FinnedSurface,
  { make, inlet, steamTemperature }: SurfaceTestPoint,
  work: ReturnType<typeof createCoilWork>,
): Solved {
  const coil = buildCoil({ ...make, surface });
  const distance = (airReynolds: number) => surfaceDistance(surface, coil.bank, airReynolds);
  if (steamTemperature !== undefined) {
    const out = createSteamPerformance();
    const { dryAirFlow, dryBulb, humidityRatio } = inlet;
    solveSteamCoil(coil, dryAirFlow, dryBulb, humidityRatio, dryBulb, steamTemperature, createSteamWork(), out);
    const { heat, airReynolds } = out;
    return { coil, heat: -heat, wetShare: 0, airReynolds, rangeDistance: distance(airReynolds) };
  }
  const out = createPerformance();
  work.levels = 0;
  solveCoil(coil, inlet, work, out);
  const { heat, wetShare, airReynolds } = out;
  return { coil, heat, wetShare, airReynolds, rangeDistance: distance(airReynolds) };
}

function startOf(
  factor: SurfaceFactor,
  surface: FinnedSurface,
  before: readonly Solved[],
  points: readonly SurfaceTestPoint[],
): number {
  if (factor === "air") return surface.heatFactor;
  if (factor === "water") return surface.tubeHeatFactor;
  const ratios = points.map((_, i) => wetHeatFactorOf(surface, before[i]!.coil.bank, before[i]!.airReynolds));
  return ratios.reduce((sum, each) => sum + each, 0) / ratios.length;
}

const members = { air: "heatFactor", water: "tubeHeatFactor", wet: "wetHeatFactor" } as const;

function withFactors(
  surface: FinnedSurface,
  factors: readonly SurfaceFactor[],
  values: readonly number[],
): FinnedSurface {
  return { ...surface, ...Object.fromEntries(factors.map((factor, i) => [members[factor], Math.exp(values[i]!)])) };
}

/** Two-sided 95 % points of Student's distribution by degrees of freedom, from memory; the next lower number stands. */
const student: readonly (readonly [number, number])[] = [
  [1, 12.71],
  [2, 4.303],
  [3, 3.182],
  [4, 2.776],
  [5, 2.571],
  [6, 2.447],
  [7, 2.365],
  [8, 2.306],
  [10, 2.228],
  [15, 2.131],
  [20, 2.086],
  [30, 2.042],
  [60, 2.0],
];

function studentFactor(degrees: number): number {
  return student.findLast(([at]) => at <= degrees)?.[1] ?? Number.POSITIVE_INFINITY;
}
