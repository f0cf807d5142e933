import { interpolate, monotoneTable } from "#numerics/interpolate";
import type { FanTestPoint } from "./fan-test-row.ts";

/** How far the points of one speed lie from the curve of the speed with the most points, over its peaks. */
export interface FanTestScatter {
  /** rev/s. */
  readonly speed: number;
  /** Points within the flows of the other curve. */
  readonly points: number;
  /** Root of the mean square, and the farthest with its sign. */
  readonly pressure: number;
  readonly pressureFarthest: number;
  readonly power: number;
  readonly powerFarthest: number;
}

/** Scatter of every speed but the reference. */
export function scatterOf(tested: readonly FanTestPoint[], reference: number): readonly FanTestScatter[] {
  const own = tested.filter((point) => point.speed === reference);
  const others = [...new Set(tested.map((point) => point.speed))].filter((speed) => speed !== reference);
  if (own.length < 2) return [];
  const flows = own.map((point) => point.flow);
  return others.flatMap((speed) => {
    const points = tested.filter(
      (point) => point.speed === speed && point.flow >= flows[0]! && point.flow <= flows[flows.length - 1]!,
    );
    if (points.length === 0) return [];
    const pressures = departures(points, own, flows, (point) => point.pressure);
    const powers = departures(points, own, flows, (point) => point.power);
    return [
      {
        speed,
        points: points.length,
        pressure: rootMeanSquare(pressures),
        pressureFarthest: farthest(pressures),
        power: rootMeanSquare(powers),
        powerFarthest: farthest(powers),
      },
    ];
  });
}

function departures(
  points: readonly FanTestPoint[],
  own: readonly FanTestPoint[],
  flows: readonly number[],
  of: (point: FanTestPoint) => number,
): readonly number[] {
  const table = monotoneTable(flows, own.map(of));
  const peak = Math.max(...own.map(of));
  return points.map((point) => (of(point) - interpolate(table, point.flow)) / peak);
}

function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
}

function farthest(values: readonly number[]): number {
  return values.reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most), 0);
}

/** Departure over the peak from which a point may stand out, and over the usual departure in the same table. */
const leastDeparture = 0.03;
const overUsual = 5;
/** Neighbours on each side that a point is held against. */
const neighbours = 3;
/** When more stand out, the table is rough as a whole. */
const mostMarked = 3;

/**
 * Marks points whose pressure or power departs from a parabola through their neighbours by more than 3 % of the peak and
 * by more than five times what is usual in the table. The first and the last point have neighbours on one side only and
 * are never marked.
 */
export function markOutliers(tested: readonly FanTestPoint[]): readonly FanTestPoint[] {
  const pressures = standingOut(tested, (point) => point.pressure);
  const powers = standingOut(tested, (point) => point.power);
  return tested.map((point, index) => {
    const words = [
      ...(pressures[index] === 0 ? [] : [`pressure ${signed(pressures[index]!)} of its peak off its neighbours`]),
      ...(powers[index] === 0 ? [] : [`power ${signed(powers[index]!)} of its peak off its neighbours`]),
    ];
    return { ...point, outlier: words.join(", ") };
  });
}

function signed(share: number): string {
  return `${share > 0 ? "+" : "−"}${(100 * Math.abs(share)).toFixed(1)} %`;
}

/**
 * Departure over the peak of every point that stands out, 0 for the others. The farthest one is taken out before what is
 * usual is looked at, because it moves the parabolas of its neighbours; then the next one, as long as they stand out.
 */
function standingOut(tested: readonly FanTestPoint[], of: (point: FanTestPoint) => number): readonly number[] {
  const peak = Math.max(...tested.map(of));
  const found = new Map<FanTestPoint, number>();
  let kept = tested;
  for (let count = 0; count < mostMarked; count++) {
    const away = kept.map((_, index) => departure(kept, index, of) / peak);
    const farthest = away.reduce((best, each, index) => (Math.abs(each) > Math.abs(away[best]!) ? index : best), 0);
    const candidate = kept[farthest]!;
    const rest = kept.filter((point) => point !== candidate);
    const sizes = rest.map((_, index) => Math.abs(departure(rest, index, of)) / peak).slice(1, -1);
    const usual = sizes.toSorted((one, other) => one - other)[Math.floor(sizes.length / 2)] ?? 0;
    if (Math.abs(away[farthest]!) < Math.max(leastDeparture, overUsual * usual)) break;
    found.set(candidate, away[farthest]!);
    kept = rest;
  }
  return tested.map((point) => found.get(point) ?? 0);
}

/** From the parabola through its neighbours; 0 for the first and the last point. */
function departure(points: readonly FanTestPoint[], index: number, of: (point: FanTestPoint) => number): number {
  if (index === 0 || index === points.length - 1) return 0;
  const point = points[index]!;
  const around = points.slice(Math.max(0, index - neighbours), index + neighbours + 1).filter((each) => each !== point);
  const expected = parabolaAt(
    around.map((each) => [each.flow, of(each)] as const),
    point.flow,
  );
  return expected === undefined ? 0 : of(point) - expected;
}

/** Value at `x` of the parabola of least squares; undefined with fewer than four points or flows too close for one. */
function parabolaAt(points: readonly (readonly [number, number])[], x: number): number | undefined {
  if (points.length < 4) return undefined;
  const span = Math.max(...points.map(([each]) => Math.abs(each - x)));
  if (span === 0) return undefined;
  // Places are taken from x in shares of the span, so that the value wanted is the constant and the sums stay near 1.
  const sum = (power: number, withValue: boolean) =>
    points.reduce((total, [each, value]) => total + ((each - x) / span) ** power * (withValue ? value : 1), 0);
  const [s0, s1, s2, s3, s4] = [0, 1, 2, 3, 4].map((power) => sum(power, false)) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const [t0, t1, t2] = [0, 1, 2].map((power) => sum(power, true)) as [number, number, number];
  const determinant = s0 * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s2 * s3) + s2 * (s1 * s3 - s2 * s2);
  if (Math.abs(determinant) < 1e-6) return undefined;
  return (t0 * (s2 * s4 - s3 * s3) - s1 * (t1 * s4 - s3 * t2) + s2 * (t1 * s3 - s2 * t2)) / determinant;
}
