import type { Coil } from "./coil.ts";
import { solveCoil } from "./march.ts";
import { type CoilInlet, type CoilPerformance, createCoilWork, createPerformance } from "./performance.ts";

/** One tested point: what entered, and the heat between air and liquid that was measured. */
export interface TestPoint {
  readonly inlet: CoilInlet;
  /** W, without sign. */
  readonly heat: number;
}

/** The multipliers of a surface that tests can tell. */
export const fittedFactors = ["heatFactor", "tubeHeatFactor", "wetHeatFactor"] as const;

/** One of them. */
export type FittedFactor = (typeof fittedFactors)[number];

/** A multiplier as it was found. */
export interface FactorFit {
  readonly factor: FittedFactor;
  readonly value: number;
  /** Standard error of the value, from the scatter of the points; NaN where there are no more points than factors. */
  readonly standardError: number;
}

/** What a fit gives: the factors, what the points are off with them, and why a factor was left alone. */
export interface SurfaceFit {
  readonly factors: readonly FactorFit[];
  /** Predicted over measured less one, point by point. */
  readonly residuals: readonly number[];
  readonly meanAbsoluteError: number;
  readonly rootMeanSquare: number;
  readonly leftAlone: readonly { readonly factor: FittedFactor; readonly reason: string }[];
}

/** Bounds of any factor, and the steps in its logarithm for slopes. */
const least = 0.3;
const most = 3;
const slopeStep = 0.01;

/**
 * Fits multipliers of a coil's surface to tested points: least squares of the relative error of heat, by Gauss–Newton steps
 * in the factors' logarithms. A factor that the points cannot tell is left alone, with the reason: the wet one needs two points on
 * which half of the rows are wet, the water side needs four points whose velocities differ by half.
 *
 * @param coil record: the coil that was tested
 * @param points list: the tested points
 * @param wanted list: factors to be found
 * @returns record: factors with standard errors, residuals
 * @outside factors are held within 0.3…3
 * @throws RangeError when there is no point or a point measured no heat
 * @example (() => { try { fitSurface({}, [], ["heatFactor"]); } catch (error) { return error.name; } })() // "RangeError"
 * @source definition Gauss–Newton least squares
 */
export function fitSurface(coil: Coil, points: readonly TestPoint[], wanted: readonly FittedFactor[]): SurfaceFit {
  if (points.length === 0) throw new RangeError("no tested point is given; one or more are wanted");
  const without = points.findIndex(({ heat }) => !(heat > 0));
  if (without >= 0) throw new RangeError(`point ${without + 1} measured no heat; heat above 0 W is wanted`);
  const leftAlone = wanted.flatMap((factor) => {
    const reason = reasonAgainst(factor, coil, points, wanted.length);
    return reason === undefined ? [] : [{ factor, reason }];
  });
  const free = wanted.filter((factor) => !leftAlone.some((each) => each.factor === factor));
  const logarithms = free.map((factor) => Math.log(startOf(coil, factor, points)));
  for (let step = 0; step < 20 && free.length > 0; step++) {
    const { residuals, slopes } = linearise(coil, points, free, logarithms);
    const change = solveNormal(slopes, residuals);
    for (let i = 0; i < free.length; i++) {
      const limited = Math.max(-0.3, Math.min(0.3, change[i]!));
      logarithms[i] = Math.min(Math.log(most), Math.max(Math.log(least), logarithms[i]! + limited));
    }
    if (Math.max(...change.map(Math.abs)) < 1e-5) break;
  }
  return summary(coil, points, free, logarithms, leftAlone);
}

/** Relative errors with factors as they stand. */
function errorsWith(
  coil: Coil,
  points: readonly TestPoint[],
  free: readonly FittedFactor[],
  logs: readonly number[],
): number[] {
  const changes = Object.fromEntries(free.map((factor, i) => [factor, Math.exp(logs[i]!)]));
  const changed: Coil = { ...coil, surface: { ...coil.surface, ...changes } };
  return points.map(({ inlet, heat }) => Math.abs(solved(changed, inlet).heat) / heat - 1);
}

function solved(coil: Coil, inlet: CoilInlet): CoilPerformance {
  const out = createPerformance();
  solveCoil(coil, inlet, createCoilWork(), out);
  return out;
}

function linearise(coil: Coil, points: readonly TestPoint[], free: readonly FittedFactor[], logs: readonly number[]) {
  const residuals = errorsWith(coil, points, free, logs);
  const slopes = free.map((_, i) => {
    const moved = logs.map((value, j) => (i === j ? value + slopeStep : value));
    return errorsWith(coil, points, free, moved).map((error, p) => (error - residuals[p]!) / slopeStep);
  });
  return { residuals, slopes };
}

/** Step that the normal equations ask for: −(JᵀJ)⁻¹ Jᵀ r. */
function solveNormal(slopes: readonly (readonly number[])[], residuals: readonly number[]): number[] {
  const inverse = invert(normalMatrix(slopes));
  const right = slopes.map((slope) => slope.reduce((sum, value, p) => sum + value * residuals[p]!, 0));
  return inverse.map((row) => -row.reduce((sum, value, j) => sum + value * right[j]!, 0));
}

function normalMatrix(slopes: readonly (readonly number[])[]): number[][] {
  return slopes.map((a) => slopes.map((b) => a.reduce((sum, value, p) => sum + value * b[p]!, 0)));
}

/** Inverse of a small symmetric matrix by Gauss–Jordan; a touch of the diagonal keeps idle factors from running away. */
function invert(matrix: readonly (readonly number[])[]): number[][] {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [
    ...row.map((value, j) => (i === j ? value * (1 + 1e-9) + 1e-12 : value)),
    ...row.map((_, j) => (i === j ? 1 : 0)),
  ]);
  for (let k = 0; k < n; k++) {
    const pivot = rows[k]![k]!;
    rows[k] = rows[k]!.map((value) => value / pivot);
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const share = rows[i]![k]!;
      rows[i] = rows[i]!.map((value, j) => value - share * rows[k]![j]!);
    }
  }
  return rows.map((row) => row.slice(n));
}

function summary(
  coil: Coil,
  points: readonly TestPoint[],
  free: readonly FittedFactor[],
  logs: readonly number[],
  leftAlone: SurfaceFit["leftAlone"],
): SurfaceFit {
  const { residuals, slopes } = linearise(coil, points, free, logs);
  const squares = residuals.reduce((sum, value) => sum + value * value, 0);
  const spare = points.length - free.length;
  const inverse = invert(normalMatrix(slopes));
  const factors = free.map((factor, i) => {
    const value = Math.exp(logs[i]!);
    const standardError = spare > 0 ? value * Math.sqrt((squares / spare) * inverse[i]![i]!) : Number.NaN;
    return { factor, value, standardError };
  });
  return {
    factors,
    residuals,
    meanAbsoluteError: residuals.reduce((sum, value) => sum + Math.abs(value), 0) / residuals.length,
    rootMeanSquare: Math.sqrt(squares / residuals.length),
    leftAlone,
  };
}

function startOf(coil: Coil, factor: FittedFactor, points: readonly TestPoint[]): number {
  if (factor !== "wetHeatFactor") return coil.surface[factor];
  return coil.surface.wetHeatFactor ?? solved(coil, points[0]!.inlet).wetFactor;
}

/** Why the points cannot tell a factor; undefined when they can. */
function reasonAgainst(
  factor: FittedFactor,
  coil: Coil,
  points: readonly TestPoint[],
  wanted: number,
): string | undefined {
  if (points.length < wanted) return `${wanted} factors need as many points; there are ${points.length}`;
  if (factor === "heatFactor") return undefined;
  const performances = points.map(({ inlet }) => solved(coil, inlet));
  if (factor === "wetHeatFactor") {
    const wet = performances.filter(({ wetShare }) => wetShare >= 0.5).length;
    return wet >= 2 ? undefined : `two points with half of the rows wet are needed; there are ${wet}`;
  }
  const velocities = performances.map(({ tubeVelocity }) => tubeVelocity);
  const spread = Math.max(...velocities) / Math.min(...velocities);
  if (points.length < 4) return `four points are needed; there are ${points.length}`;
  return spread >= 1.5 ? undefined : "the tube velocities of the points differ by less than half";
}
