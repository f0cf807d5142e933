import { saturationHumidityRatio } from "#fluid/saturation";
import { inverted } from "#numerics/least-squares";
import { airflowShare, type YearPlan } from "./plan.ts";

/** K between the outdoor temperatures at which degree-hours are counted. */
const reach = 10;
/** Hours that one sum may lean on at the least: with fewer, weights would be bent out of shape. */
const hoursForSum = 4;
/** Most by which a step may change the logarithm of a weight. */
const longestStep = 0.5;
const mostSteps = 25;
/** Share of a sum that is as good as none. */
const tolerance = 1e-9;

/**
 * Weights for chosen hours, as near to those given as may be, at which sums known before any hour is solved come out as
 * they are over `standsFor`: hours, air moved, degree-hours below and above what the coils are to give, moisture beyond
 * what the air may and short of what it must have. Each weight is multiplied by the exponential of a sum (raking), so that
 * none turns negative; where hours are too few for all sums, the first ones are met.
 */
export function calibratedWeights(
  plan: YearPlan,
  chosen: readonly number[],
  weights: readonly number[],
  standsFor: readonly number[],
): readonly number[] {
  const most = Math.max(1, Math.floor(chosen.length / hoursForSum));
  const sums: Float64Array[] = [];
  for (const list of knownOf(plan).map((each) => scaledTo(each, standsFor))) {
    // A sum that the chosen hours cannot tell from those before it asks for nothing new.
    if (sums.length < most && inverseOf([...sums, list], chosen, weights) !== undefined) sums.push(list);
  }
  const wanted = sums.map((list) => sumOver(standsFor, (hour) => list[hour]!));
  let best = weights;
  let now = weights;
  let bestMiss = Number.POSITIVE_INFINITY;
  for (let step = 0; step < mostSteps; step++) {
    const miss = sums.map((list, i) => wanted[i]! - sumOver(chosen, (hour, at) => now[at]! * list[hour]!));
    const size = Math.hypot(...miss);
    if (size >= bestMiss) break;
    best = now;
    bestMiss = size;
    if (size < tolerance * standsFor.length) break;
    const inverse = inverseOf(sums, chosen, now);
    if (inverse === undefined) break;
    const factors = inverse.map((row) => row.reduce((total, each, j) => total + each * miss[j]!, 0));
    now = now.map((weight, at) => {
      const power = sums.reduce((total, list, i) => total + factors[i]! * list[chosen[at]!]!, 0);
      return weight * Math.exp(Math.max(-longestStep, Math.min(longestStep, power)));
    });
  }
  return best;
}

/** How weights are to follow what the sums miss; undefined where the hours do not tell the sums apart. */
function inverseOf(sums: readonly Float64Array[], chosen: readonly number[], weights: readonly number[]) {
  return inverted(sums.map((a) => sums.map((b) => sumOver(chosen, (hour, at) => weights[at]! * a[hour]! * b[hour]!))));
}

/** What is known of every hour before it is solved and goes about with what it will use; what matters most comes first. */
function knownOf(plan: YearPlan): readonly Float64Array[] {
  const { duty, weather, humidityRatio, pressure, hours } = plan;
  const { winterSupply, coilLeaving, supply, maximumDewPoint, winterMinimumDewPoint } = duty.setPoints;
  const coldest = coilLeaving ?? supply ?? winterSupply;
  const list = (of: (hour: number) => number) => new Float64Array(hours).map((_, hour) => of(hour));
  const air = list((hour) => airflowShare(plan, hour));
  const below = (knot: number) => list((hour) => air[hour]! * Math.max(0, knot - weather.dryBulb[hour]!));
  const above = (knot: number) => list((hour) => air[hour]! * Math.max(0, weather.dryBulb[hour]! - knot));
  const saturated = (dewPoint: number, hour: number) => saturationHumidityRatio(dewPoint, pressure[hour]!);
  const moister = maximumDewPoint ?? coldest;
  return [
    list(() => 1),
    air,
    below(winterSupply),
    above(coldest),
    list((hour) => air[hour]! * Math.max(0, humidityRatio[hour]! - saturated(moister, hour))),
    ...(winterMinimumDewPoint === undefined
      ? []
      : [list((hour) => air[hour]! * Math.max(0, saturated(winterMinimumDewPoint, hour) - humidityRatio[hour]!))]),
    below(winterSupply - reach),
    above(coldest + reach),
    below(winterSupply - 2 * reach),
  ];
}

/** A list brought to a mean square of one over some hours. */
function scaledTo(list: Float64Array, hours: readonly number[]): Float64Array {
  const square = sumOver(hours, (hour) => list[hour]! ** 2) / hours.length;
  return square > 0 ? list.map((value) => value / Math.sqrt(square)) : list.map(() => 0);
}

function sumOver(hours: readonly number[], value: (hour: number, at: number) => number): number {
  return hours.reduce((total, hour, at) => total + value(hour, at), 0);
}
