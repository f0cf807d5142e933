import { dryAirPressureDrop, wetToDry } from "#component/coil/air-pressure";
import type { Coil } from "#component/coil/coil";
import type { CoilInlet } from "#component/coil/performance";
import type { FinnedSurface, RatedSurface } from "#component/finned-surface/family";
import { leastSquares } from "#numerics/least-squares";
import { type Bounds, boundsOf, errorsOf, type FitErrors } from "./fit-confidence.ts";

/** A multiplier of friction that may be fitted: dry friction, ratio of wet to dry. */
export type FrictionFactor = "friction" | "wet friction";

/** A point whose air pressure loss was measured, as the fitted surface solves it. */
export interface FrictionPoint {
  readonly coil: Coil;
  readonly inlet: CoilInlet;
  readonly leavingDryBulb: number;
  readonly wetShare: number;
  /** Pa. */
  readonly measured: number;
}

/** Air pressure loss of a point: measured, before the fit and after, Pa. */
export interface FittedLoss {
  readonly measured: number;
  readonly before: number;
  readonly fitted: number;
}

/** Friction fitted: multipliers with bounds, losses by point, errors. Or why not. */
export type FrictionFit =
  | {
      readonly ok: true;
      readonly factors: readonly (Bounds & { readonly factor: FrictionFactor })[];
      readonly changes: Pick<FinnedSurface, "frictionFactor" | "wetFrictionFactor">;
      readonly losses: readonly FittedLoss[];
      readonly errors: FitErrors;
    }
  | { readonly ok: false; readonly problem: string; readonly needed: string };

/** Least and largest that a record takes. */
const limits: Readonly<Record<FrictionFactor, readonly [number, number]>> = {
  friction: [0.2, 5],
  "wet friction": [1, 4],
};

/** Wider than a factor of two either way a multiplier says nothing. */
const widest = Math.log(2);

const slopeStep = 0.01;

/**
 * Fits multipliers of friction by least squares of the logarithm of loss given over loss measured, each point as wet as the
 * surface makes it.
 */
export function fitFriction(points: readonly FrictionPoint[], factors: readonly FrictionFactor[]): FrictionFit {
  if (points.length <= factors.length) {
    return {
      ok: false,
      problem: `${points.length} air pressure losses are too few for ${factors.length} multipliers of friction`,
      needed: `at least ${factors.length + 1} points with an air pressure loss`,
    };
  }
  const first = points[0]!.coil.surface;
  const before = points.map((point) => lossOf(point, first));
  const start = factors.map((factor) => Math.log(factor === "friction" ? first.frictionFactor : startOfWet(points)));
  const fit = leastSquares(
    (values) => {
      const changes = changesOf(first, factors, values);
      return points.map((point) => Math.log(lossOf(point, { ...first, ...changes }) / point.measured));
    },
    start,
    slopeStep,
  );
  const found = boundsOf(fit).map((bounds, i) => ({ factor: factors[i]!, ...bounds }));
  for (const { factor, value, high } of found) {
    if (fit.inverse === undefined || !fit.converged || !(Math.log(high / value) < widest)) {
      return {
        ok: false,
        problem: `these points do not tell the ${factor} multiplier`,
        needed: "dry points and wet ones with their air pressure loss, or --fit without it",
      };
    }
    const [low, most] = limits[factor];
    if (value < low || value > most) {
      return {
        ok: false,
        problem: `the ${factor} multiplier comes out at ${value.toPrecision(3)}`,
        needed: `${low} to ${most}; look for a slip in airflow, density or units of the air pressure loss`,
      };
    }
  }
  const changes = changesOf(first, factors, fit.values);
  const losses = points.map((point, i): FittedLoss => {
    return { measured: point.measured, before: before[i]!, fitted: lossOf(point, { ...first, ...changes }) };
  });
  return { ok: true, factors: found, changes, losses, errors: errorsOf(losses) };
}

function changesOf(
  surface: RatedSurface,
  factors: readonly FrictionFactor[],
  values: readonly number[],
): Pick<FinnedSurface, "frictionFactor" | "wetFrictionFactor"> {
  const of = (factor: FrictionFactor): number | undefined => {
    const value = values[factors.indexOf(factor)];
    return value === undefined ? undefined : Math.exp(value);
  };
  return {
    frictionFactor: of("friction") ?? surface.frictionFactor,
    wetFrictionFactor: of("wet friction") ?? surface.wetFrictionFactor,
  };
}

/** Pa at a point, its coil with another surface's multipliers. */
function lossOf({ coil, inlet, leavingDryBulb, wetShare }: FrictionPoint, surface: RatedSurface): number {
  const { dryAirFlow, humidityRatio, dryBulb, pressure } = inlet;
  const own =
    surface === coil.surface ? coil : { ...coil, surface: { ...surface, correlation: coil.surface.correlation } };
  const dry = dryAirPressureDrop(own, dryAirFlow, humidityRatio, dryBulb, leavingDryBulb, pressure);
  return dry * (1 + wetShare * (wetToDry(own, dryAirFlow, (dryBulb + leavingDryBulb) / 2) - 1));
}

/** Mean ratio of wet to dry of the record as it stands. */
function startOfWet(points: readonly FrictionPoint[]): number {
  const ratios = points.map(({ coil, inlet, leavingDryBulb }) =>
    wetToDry(coil, inlet.dryAirFlow, (inlet.dryBulb + leavingDryBulb) / 2),
  );
  return ratios.reduce((sum, each) => sum + each, 0) / ratios.length;
}
