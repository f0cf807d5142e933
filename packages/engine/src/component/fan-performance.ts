import { interpolate } from "#numerics/interpolate";
import { type FanCurve, fanCurveFromShape } from "./fan-curve.ts";

/** Curve of a typical housed airfoil fan with one inlet, for examples. */
export const sampleFanCurve: FanCurve = fanCurveFromShape(0.257, 0.634, 0.76, 0.7, 11);

/**
 * Speed of the blade tips.
 *
 * @param diameter m, 0.1…3: of the wheel
 * @param speed rev/s, 0…60: of the wheel
 * @returns m/s: tip speed
 * @outside the same formula goes on
 * @example tipSpeedFromSpeed(30 * 0.0254, 1200 / 60) // 47.88 ± 0.01
 * @source definition
 */
export function tipSpeedFromSpeed(diameter: number, speed: number): number {
  return Math.PI * diameter * speed;
}

/**
 * Flow coefficient φ = 4Q/(πD²u) of one fan.
 *
 * @param flow m³/s, at least 0: actual flow of the whole fan, through all its inlets
 * @param diameter m, 0.1…3: of the wheel
 * @param speed rev/s, above 0: of the wheel
 * @returns 1: flow coefficient
 * @outside the same formula goes on
 * @example flowCoefficientFromFlow(6, 0.762, 1283 / 60) // 0.257 ± 1e-3
 * @source definition
 */
export function flowCoefficientFromFlow(flow: number, diameter: number, speed: number): number {
  return flow / (0.25 * Math.PI * diameter * diameter * tipSpeedFromSpeed(diameter, speed));
}

/**
 * Static pressure that a fan adds, by the laws of density, speed and size from its dimensionless curve.
 *
 * @param curve record: the fan's curve
 * @param diameter m, 0.1…3: of the wheel
 * @param speed rev/s, 0…60: of the wheel
 * @param density kg/m³, 0.5…1.5: of the air at the inlet
 * @param flow m³/s, at least 0: actual flow of the fan
 * @returns Pa: fan static pressure; negative where the wheel only hinders
 * @outside beyond free delivery the pressure goes on falling, towards the loss of a wheel that stands still
 * @example fanPressureFromFlow(sampleFanCurve, 0.762, 1283 / 60, 1.2, 6.02) // 998 ± 5
 * @source derived-here similarity
 */
export function fanPressureFromFlow(
  curve: FanCurve,
  diameter: number,
  speed: number,
  density: number,
  flow: number,
): number {
  const tip = tipSpeedFromSpeed(diameter, speed);
  const throughflow = flow / (0.25 * Math.PI * diameter * diameter);
  if (throughflow >= curve.freeFlow * tip) {
    return -0.5 * density * curve.stoppedLoss * (throughflow ** 2 - (curve.freeFlow * tip) ** 2);
  }
  return 0.5 * density * tip * tip * interpolate(curve.pressure, throughflow / tip);
}

/**
 * Power at the fan's shaft, bearings included as in the curve.
 *
 * @param curve record: the fan's curve
 * @param diameter m, 0.1…3: of the wheel
 * @param speed rev/s, 0…60: of the wheel
 * @param density kg/m³, 0.5…1.5: of the air at the inlet
 * @param flow m³/s, at least 0: actual flow of the fan
 * @returns W: shaft power
 * @outside beyond free delivery the power coefficient is held
 * @example fanShaftPowerFromFlow(sampleFanCurve, 0.762, 1283 / 60, 1.2, 6.02) // 7900 ± 40
 * @source derived-here similarity
 */
export function fanShaftPowerFromFlow(
  curve: FanCurve,
  diameter: number,
  speed: number,
  density: number,
  flow: number,
): number {
  if (speed <= 0) return 0;
  const coefficient = interpolate(curve.power, flowCoefficientFromFlow(flow, diameter, speed));
  return coefficient * powerScale(diameter, speed, density);
}

/**
 * Highest static pressure of the fan at a speed: what it must not come near.
 *
 * @param curve record: the fan's curve
 * @param diameter m, 0.1…3: of the wheel
 * @param speed rev/s, 0…60: of the wheel
 * @param density kg/m³, 0.5…1.5: of the air at the inlet
 * @returns Pa: peak fan static pressure
 * @outside the same formula goes on
 * @example fanPeakPressure(sampleFanCurve, 0.762, 1283 / 60, 1.2) // 1097 ± 5
 * @source derived-here similarity
 */
export function fanPeakPressure(curve: FanCurve, diameter: number, speed: number, density: number): number {
  return 0.5 * density * tipSpeedFromSpeed(diameter, speed) ** 2 * curve.peakPressure;
}

/**
 * Highest shaft power anywhere on the curve at a speed: what the motor may have to give.
 *
 * @param curve record: the fan's curve
 * @param diameter m, 0.1…3: of the wheel
 * @param speed rev/s, 0…60: of the wheel
 * @param density kg/m³, 0.5…1.5: of the air at the inlet
 * @returns W: largest shaft power
 * @outside the same formula goes on
 * @example fanPeakPower(sampleFanCurve, 0.762, 1283 / 60, 1.2) // 8430 ± 40
 * @source derived-here similarity
 */
export function fanPeakPower(curve: FanCurve, diameter: number, speed: number, density: number): number {
  return curve.peakPower * powerScale(diameter, speed, density);
}

/**
 * Flow of the fan at a flow coefficient.
 *
 * @param coefficient 1, at least 0: flow coefficient
 * @param diameter m, 0.1…3: of the wheel
 * @param speed rev/s, 0…60: of the wheel
 * @returns m³/s: actual flow
 * @outside the same formula goes on
 * @example flowFromFlowCoefficient(0.257, 0.762, 1283 / 60) // 6 ± 0.01
 * @source definition
 */
export function flowFromFlowCoefficient(coefficient: number, diameter: number, speed: number): number {
  return coefficient * 0.25 * Math.PI * diameter * diameter * tipSpeedFromSpeed(diameter, speed);
}

/**
 * Speed at which a fan gives a static pressure at a flow. One answer, since the resistance that a curve meets falls
 * along it: no iteration over speed is needed.
 *
 * @param curve record: the fan's curve
 * @param diameter m, 0.1…3: of the wheel
 * @param density kg/m³, 0.5…1.5: of the air at the inlet
 * @param flow m³/s, at least 0: actual flow of the fan
 * @param pressure Pa, any: fan static pressure wanted
 * @returns rev/s: speed; 0 where even a wheel that stands still would let more through
 * @outside the curve's own range is extended as in fanPressureFromFlow
 * @example fanSpeedFromPressure(sampleFanCurve, 0.762, 1.2, 6.02, 998) * 60 // 1283 ± 5
 * @source derived-here similarity
 */
export function fanSpeedFromPressure(
  curve: FanCurve,
  diameter: number,
  density: number,
  flow: number,
  pressure: number,
): number {
  const disc = 0.25 * Math.PI * diameter * diameter;
  const throughflow = flow / disc;
  const resistance = (2 * pressure) / (density * throughflow * throughflow);
  if (flow <= 0 || resistance > 1e9) {
    return pressure > 0 ? Math.sqrt((2 * pressure) / (density * curve.pressure.y[0]!)) / (Math.PI * diameter) : 0;
  }
  if (resistance <= -curve.stoppedLoss) return 0;
  const coefficient =
    resistance < 0
      ? curve.freeFlow / Math.sqrt(1 + resistance / curve.stoppedLoss)
      : flowCoefficientFromResistance(curve, resistance);
  return throughflow / (coefficient * Math.PI * diameter);
}

/**
 * Flow coefficient at which a curve meets a resistance ψ/φ².
 *
 * @param curve record: the fan's curve
 * @param resistance 1, at least 0: static pressure coefficient over the square of the flow coefficient
 * @returns 1: flow coefficient
 * @outside the same formula goes on
 * @example flowCoefficientFromResistance(sampleFanCurve, 0.634 / 0.257 ** 2) // 0.257 ± 1e-4
 * @source derived-here similarity
 */
export function flowCoefficientFromResistance(curve: FanCurve, resistance: number): number {
  const { x } = curve.pressure;
  let low = 0;
  let high = x.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (curve.resistance[middle]! > resistance) low = middle;
    else high = middle;
  }
  // Between two points ψ − Rφ² falls: false position with the Illinois step, which never leaves the bracket.
  let left = x[low]!;
  let right = x[high]!;
  let above = interpolate(curve.pressure, left) - resistance * left * left;
  let below = interpolate(curve.pressure, right) - resistance * right * right;
  if (above <= 0) return left;
  let flow = right;
  for (let count = 0; count < 60 && below !== 0; count++) {
    flow = (left * below - right * above) / (below - above);
    const excess = interpolate(curve.pressure, flow) - resistance * flow * flow;
    if (Math.abs(excess) < 1e-15 || right - left < 1e-15) break;
    if (excess > 0) {
      left = flow;
      above = excess;
      below /= 2;
    } else {
      right = flow;
      below = excess;
      above /= 2;
    }
  }
  return flow;
}

/** W for a power coefficient of one: density, speed cubed, diameter to the fifth. */
function powerScale(diameter: number, speed: number, density: number): number {
  return 0.125 * Math.PI * diameter * diameter * density * tipSpeedFromSpeed(diameter, speed) ** 3;
}
