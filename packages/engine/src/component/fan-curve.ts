import { interpolate, monotoneTable, type Table } from "#numerics/interpolate";
import { genericFanShape } from "#standard/generic-fan-shape";
import { genericEfficiencyRatio, genericFlowRatio, genericFreeFlowRatio } from "./fan-shape.ts";

/**
 * A fan's performance without dimension, the same at every size, speed and density as long as similarity holds:
 * flow φ = 4Q/(πD²u), static pressure ψ = 2p/(ρu²), shaft power λ = 8P/(πD²ρu³), with u the tip speed.
 */
export interface FanCurve {
  /** ψ of φ, from no flow to no pressure. */
  readonly pressure: Table;
  /** λ of φ, over the same flows. */
  readonly power: Table;
  /** ψ/φ² at the flows of the table: the resistance that the fan meets there, falling; infinite at no flow. */
  readonly resistance: Float64Array;
  /** φ that was tested or published: less and more are extended. */
  readonly smallestFlow: number;
  readonly largestFlow: number;
  /** φ where no static pressure is left. */
  readonly freeFlow: number;
  /** φ below which the fan may surge. */
  readonly stableFlow: number;
  /** Pressure that the wheel takes per φ² where it no longer adds any: −ψ/φ² of a wheel that stands still. */
  readonly stoppedLoss: number;
  readonly bestFlow: number;
  readonly bestEfficiency: number;
  readonly peakPressure: number;
  readonly peakPressureFlow: number;
  readonly peakPower: number;
}

/** One tested point, dimensionless. */
export interface FanCurvePoint {
  readonly flow: number;
  readonly pressure: number;
  readonly power: number;
}

/**
 * Curve of the published generic shape through a point of best static efficiency.
 *
 * @param bestFlow 1, 0.02…1: flow coefficient at best static efficiency
 * @param bestPressure 1, 0.05…2: static pressure coefficient there
 * @param bestEfficiency 1, 0.2…0.9: best static efficiency
 * @param stableShare 1, 0.2…1: smallest flow of steady running over the flow at best efficiency
 * @param stoppedLoss 1, 0.5…50: loss of the wheel standing still, −ψ/φ²
 * @returns record: the curve
 * @outside answers all the same
 * @example fanCurveFromShape(0.257, 0.634, 0.76, 0.7, 11).freeFlow // 0.455 ± 1e-3
 * @source energyplus-engineering-reference fan component model
 */
export function fanCurveFromShape(
  bestFlow: number,
  bestPressure: number,
  bestEfficiency: number,
  stableShare: number,
  stoppedLoss: number,
): FanCurve {
  const points: FanCurvePoint[] = [];
  const { smallest, largest } = genericFanShape;
  const steps = 50;
  for (let i = 0; i <= steps; i++) {
    const place = largest + ((smallest - largest) * i) / steps;
    const flow = genericFlowRatio(place);
    const pressure = 10 ** place * flow * flow;
    const power = (flow * pressure) / genericEfficiencyRatio(place);
    points.push({
      flow: bestFlow * flow,
      pressure: bestPressure * pressure,
      power: ((bestFlow * bestPressure) / bestEfficiency) * power,
    });
  }
  const freeFlow = bestFlow * genericFreeFlowRatio();
  const curve = buildCurve(points, freeFlow, stableShare * bestFlow, stoppedLoss);
  return { ...curve, bestFlow, bestEfficiency };
}

/**
 * Curve through tested points; between them it is monotone, to the left the first pressure is held, to the right the
 * last slope leads to no pressure.
 *
 * @param points list, four or more: dimensionless points in rising flow
 * @param stableShare 1, 0…1: smallest flow of steady running over the flow at best efficiency; 0 takes the flow at peak pressure
 * @param stoppedLoss 1, 0.5…50: loss of the wheel standing still, −ψ/φ²
 * @returns record: the curve
 * @outside throws
 * @throws RangeError when points are too few, out of order, negative, impossibly efficient, or a system could cross them twice
 * @example fanCurveFromPoints([{flow: 0.1, pressure: 0.7, power: 0.15}, {flow: 0.2, pressure: 0.68, power: 0.19}, {flow: 0.3, pressure: 0.5, power: 0.2}, {flow: 0.4, pressure: 0.2, power: 0.19}], 0, 11).freeFlow // 0.467 ± 1e-3
 * @source derived-here
 */
export function fanCurveFromPoints(
  points: readonly FanCurvePoint[],
  stableShare: number,
  stoppedLoss: number,
): FanCurve {
  checkPoints(points);
  const last = points[points.length - 1]!;
  const before = points[points.length - 2]!;
  const slope = (before.pressure - last.pressure) / (last.flow - before.flow);
  const freeFlow = last.pressure === 0 ? last.flow : last.flow + last.pressure / slope;
  const curve = buildCurve(points, freeFlow, 0, stoppedLoss);
  const best = bestOf(curve);
  return { ...curve, ...best, stableFlow: stableShare > 0 ? stableShare * best.bestFlow : curve.peakPressureFlow };
}

/** Completes the points to no flow and to no pressure and finds peaks. Monotone pieces have their peaks at points. */
function buildCurve(
  points: readonly FanCurvePoint[],
  freeFlow: number,
  stableFlow: number,
  stoppedLoss: number,
): FanCurve {
  const all = [...points];
  const [first, second] = [points[0]!, points[1]!];
  const last = points[points.length - 1]!;
  if (first.flow > 0) {
    const slope = (second.power - first.power) / (second.flow - first.flow);
    const shutOffPower = Math.min(first.power, Math.max(first.power - slope * first.flow, 0.5 * first.power));
    all.unshift({ flow: 0, pressure: first.pressure, power: shutOffPower });
  }
  if (freeFlow > last.flow) all.push({ flow: freeFlow, pressure: 0, power: last.power });
  const flows = all.map((point) => point.flow);
  let peak = all[0]!;
  for (const point of all) if (point.pressure > peak.pressure) peak = point;
  return {
    pressure: monotoneTable(
      flows,
      all.map((point) => point.pressure),
    ),
    power: monotoneTable(
      flows,
      all.map((point) => point.power),
    ),
    resistance: Float64Array.from(all, (point) => point.pressure / point.flow ** 2),
    smallestFlow: first.flow,
    largestFlow: last.flow,
    freeFlow,
    stableFlow,
    stoppedLoss,
    bestFlow: 0,
    bestEfficiency: 0,
    peakPressure: peak.pressure,
    peakPressureFlow: peak.flow,
    peakPower: Math.max(...all.map((point) => point.power)),
  };
}

/** Best static efficiency of a curve, on a grid fine enough for four figures. */
function bestOf(curve: FanCurve): { readonly bestFlow: number; readonly bestEfficiency: number } {
  let bestFlow = 0;
  let bestEfficiency = 0;
  for (let i = 1; i < 1000; i++) {
    const flow = (curve.freeFlow * i) / 1000;
    const efficiency = (flow * interpolate(curve.pressure, flow)) / interpolate(curve.power, flow);
    if (efficiency > bestEfficiency) {
      bestEfficiency = efficiency;
      bestFlow = flow;
    }
  }
  return { bestFlow, bestEfficiency };
}

function checkPoints(points: readonly FanCurvePoint[]): void {
  if (points.length < 4) throw new RangeError(`${points.length} points; a curve needs four or more`);
  points.forEach((point, index) => {
    const place = `point ${index + 1}`;
    const before = points[index - 1];
    if (!(point.flow >= 0) || !(point.pressure >= 0))
      throw new RangeError(`${place}: flow and pressure must be 0 or more`);
    if (!(point.power > 0)) throw new RangeError(`${place}: shaft power must be more than 0`);
    const efficiency = (point.flow * point.pressure) / point.power;
    if (efficiency > 0.92) {
      throw new RangeError(
        `${place}: static efficiency would be ${(100 * efficiency).toFixed(0)} %, more than any fan has (92 %); look at the units of flow, pressure and power`,
      );
    }
    if (before === undefined) return;
    if (!(point.flow > before.flow)) throw new RangeError(`${place}: flow must rise from point to point`);
    if (!(point.pressure / point.flow ** 2 < before.pressure / before.flow ** 2)) {
      throw new RangeError(
        `${place}: pressure rises faster than the square of flow; one system would cross the curve twice`,
      );
    }
  });
  const [before, last] = points.slice(-2) as [FanCurvePoint, FanCurvePoint];
  if (!(last.pressure < before.pressure)) throw new RangeError("the last two points: pressure must fall");
}

/**
 * A fan that gives more or less pressure, and takes more or less power, than its curve at every flow.
 *
 * @param curve record: the fan's curve
 * @param pressure 1, 0.5…1.5: pressure over that of the curve
 * @param power 1, 0.5…2: shaft power over that of the curve
 * @returns record: the curve
 * @outside answers all the same
 * @example scaledFanCurve(fanCurveFromShape(0.257, 0.634, 0.76, 0.7, 11), 0.95, 1.05).bestEfficiency // 0.6876 ± 1e-4
 * @source definition
 */
export function scaledFanCurve(curve: FanCurve, pressure: number, power: number): FanCurve {
  const scaled = ({ x, y, slope }: Table, factor: number): Table => ({
    x,
    y: y.map((value) => value * factor),
    slope: slope.map((value) => value * factor),
  });
  return {
    ...curve,
    pressure: scaled(curve.pressure, pressure),
    power: scaled(curve.power, power),
    resistance: curve.resistance.map((value) => value * pressure),
    bestEfficiency: (curve.bestEfficiency * pressure) / power,
    peakPressure: curve.peakPressure * pressure,
    peakPower: curve.peakPower * power,
  };
}
