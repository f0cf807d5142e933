import { buildCoil, type Coil, type CoilMake } from "#component/coil/coil";
import { solveCoil } from "#component/coil/march";
import { type CoilInlet, createCoilWork, createPerformance } from "#component/coil/performance";
import { createSteamPerformance, createSteamWork, solveSteamCoil } from "#component/coil/steam-coil";
import { chooseCorrelation, customaryReynolds } from "#component/finned-surface/choose-correlation";
import { airSideCorrelations, distanceFromRange } from "#component/finned-surface/correlation";
import { type FinnedSurface, surfaceDistance, wetHeatFactorOf } from "#component/finned-surface/family";
import { leastSquares } from "#numerics/least-squares";
import { type Bounds, boundsOf, errorsOf, type FitErrors } from "./fit-confidence.ts";
import { type FittedLoss, fitFriction } from "./friction-fit.ts";

/**
 * A multiplier that may be fitted: dry heat transfer to air, heat transfer in the tubes, ratio of wet to dry; dry friction,
 * and its ratio of wet to dry.
 */
export const surfaceFactors = ["air", "water", "wet", "friction", "wet friction"] as const;

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
  /** Pa of air pressure loss over the coil, where it was measured. */
  readonly airPressureDrop?: number | undefined;
}

/** A multiplier as fitted. */
export interface FittedFactor extends Bounds {
  readonly factor: SurfaceFactor;
}

/** A point with what the surface gives. */
export interface FittedPoint {
  readonly measured: number;
  readonly before: number;
  readonly fitted: number;
  readonly wetShare: number;
  readonly rangeDistance: number;
  /** Air pressure loss, where it was measured. */
  readonly loss: FittedLoss | undefined;
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
      /** Errors in heat after the fit, and in air pressure loss where points tell it. */
      readonly heatErrors: FitErrors;
      readonly lossErrors: FitErrors | undefined;
    }
  | { readonly ok: false; readonly problem: string; readonly needed: string };

/** Those of heat, and those of friction. */
type HeatFactor = "air" | "water" | "wet";
const isOfFriction = (factor: SurfaceFactor): factor is "friction" | "wet friction" => factor.endsWith("friction");

/** Least and largest that a record takes. */
const bounds: Readonly<Record<HeatFactor, readonly [number, number]>> = {
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
 * that each point counts by its share of error; then those of friction likewise to the air pressure losses. Dry friction is
 * fitted wherever points tell a loss, asked or not. A surface whose correlation would be chosen by itself gets the one nearest
 * to all points, and names it: multipliers mean nothing without.
 */
export function fitSurface(
  given: FinnedSurface,
  points: readonly SurfaceTestPoint[],
  factors: readonly SurfaceFactor[],
): SurfaceFit {
  const surface = named(given, points);
  const ofHeat = factors.filter((factor) => !isOfFriction(factor)) as HeatFactor[];
  const withLoss = points.filter(({ airPressureDrop }) => airPressureDrop !== undefined);
  const asked = factors.filter(isOfFriction);
  if (asked.length > 0 && withLoss.length === 0) {
    return refused("no point tells an air pressure loss", "a column air pressure drop, or --fit without friction");
  }
  const work = createCoilWork();
  const before = points.map((point) => solved(surface, point, work));
  const heat = fitHeat(surface, points, ofHeat, before, work);
  if (!heat.ok) return heat;
  const after = points.map((point) => solved(heat.surface, point, work));
  if (withLoss.length === 0) return told(heat.surface, heat.factors, points, before, after, undefined);
  const losses = points.flatMap(({ inlet, airPressureDrop: measured }, i) =>
    measured === undefined ? [] : [{ ...after[i]!, inlet, measured }],
  );
  const friction = fitFriction(losses, ["friction", ...asked.filter((factor) => factor !== "friction")]);
  if (!friction.ok) return friction;
  const fitted = { ...heat.surface, ...friction.changes };
  return told(fitted, [...heat.factors, ...friction.factors], points, before, after, friction);
}

/** The surface with the correlation that lies nearest to its range for the worst of the points. */
function named(surface: FinnedSurface, points: readonly SurfaceTestPoint[]): FinnedSurface {
  if (surface.correlation !== undefined) return surface;
  const banks = points.map(({ make }) => buildCoil({ ...make, surface }).bank);
  const chosen = banks.map((bank) => chooseCorrelation(surface.pattern, bank).name);
  const candidates = airSideCorrelations.filter(({ name }) => chosen.includes(name));
  const worst = (each: (typeof candidates)[number]) =>
    Math.max(...banks.map((bank) => distanceFromRange(each, bank, customaryReynolds(bank))));
  return { ...surface, correlation: candidates.reduce((a, b) => (worst(b) < worst(a) ? b : a)).name };
}

interface HeatFit {
  readonly ok: true;
  readonly surface: FinnedSurface;
  readonly factors: readonly FittedFactor[];
}

function fitHeat(
  surface: FinnedSurface,
  points: readonly SurfaceTestPoint[],
  factors: readonly HeatFactor[],
  before: readonly Solved[],
  work: ReturnType<typeof createCoilWork>,
): HeatFit | Extract<SurfaceFit, { ok: false }> {
  if (factors.length === 0) return { ok: true, surface, factors: [] };
  if (points.length <= factors.length) {
    return refused(
      `${points.length} points are too few for ${factors.length} multipliers`,
      `at least ${factors.length + 1} points, better three for each`,
    );
  }
  if (factors.includes("wet") && points.some(({ steamTemperature }) => steamTemperature !== undefined)) {
    return refused("steam points condense nothing from the air", "--fit without wet");
  }
  if (factors.includes("wet") && before.every(({ wetShare }) => wetShare === 0)) {
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
  const found = boundsOf(fit).map((each, i) => ({ factor: factors[i]!, ...each }));
  const refusal = refusalOf(found, fit.inverse === undefined || !fit.converged);
  return refusal ?? { ok: true, surface: withFactors(surface, factors, fit.values), factors: found };
}

function refused(problem: string, needed: string): Extract<SurfaceFit, { ok: false }> {
  return { ok: false, problem, needed };
}

function refusalOf(
  found: readonly (FittedFactor & { readonly factor: HeatFactor })[],
  isSingular: boolean,
): Extract<SurfaceFit, { ok: false }> | undefined {
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
  after: readonly Solved[],
  friction: { readonly losses: readonly FittedLoss[]; readonly errors: FitErrors } | undefined,
): SurfaceFit {
  const losses = [...(friction?.losses ?? [])];
  const told = points.map((point, i): FittedPoint => {
    const { heat, wetShare, rangeDistance } = after[i]!;
    const loss = friction === undefined || point.airPressureDrop === undefined ? undefined : losses.shift();
    return { measured: point.heat, before: before[i]!.heat, fitted: heat, wetShare, rangeDistance, loss };
  });
  return {
    ok: true,
    surface,
    isSteam: points.some(({ steamTemperature }) => steamTemperature !== undefined),
    factors,
    points: told,
    heatErrors: errorsOf(told),
    lossErrors: friction?.errors,
  };
}

interface Solved {
  readonly coil: Coil;
  readonly heat: number;
  readonly leavingDryBulb: number;
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
  const distance = (airReynolds: number) => surfaceDistance(coil.surface, coil.bank, airReynolds);
  if (steamTemperature !== undefined) {
    const out = createSteamPerformance();
    const { dryAirFlow, dryBulb, humidityRatio } = inlet;
    solveSteamCoil(coil, dryAirFlow, dryBulb, humidityRatio, dryBulb, steamTemperature, createSteamWork(), out);
    const { heat, leavingDryBulb, airReynolds } = out;
    return { coil, heat: -heat, leavingDryBulb, wetShare: 0, airReynolds, rangeDistance: distance(airReynolds) };
  }
  const out = createPerformance();
  work.levels = 0;
  solveCoil(coil, inlet, work, out);
  const { heat, leavingDryBulb, wetShare, airReynolds } = out;
  return { coil, heat, leavingDryBulb, wetShare, airReynolds, rangeDistance: distance(airReynolds) };
}

function startOf(
  factor: HeatFactor,
  surface: FinnedSurface,
  before: readonly Solved[],
  points: readonly SurfaceTestPoint[],
): number {
  if (factor === "air") return surface.heatFactor;
  if (factor === "water") return surface.tubeHeatFactor;
  const ratios = points.map((_, i) =>
    wetHeatFactorOf(before[i]!.coil.surface, before[i]!.coil.bank, before[i]!.airReynolds),
  );
  return ratios.reduce((sum, each) => sum + each, 0) / ratios.length;
}

const members = { air: "heatFactor", water: "tubeHeatFactor", wet: "wetHeatFactor" } as const;

function withFactors(surface: FinnedSurface, factors: readonly HeatFactor[], values: readonly number[]): FinnedSurface {
  return { ...surface, ...Object.fromEntries(factors.map((factor, i) => [members[factor], Math.exp(values[i]!)])) };
}
