import { choice, factor, quantity } from "#form/field";
import { standardAirDensity } from "#quantity/standard-air";
import { type BladeAction, damperBladeLaws } from "#standard/damper-blade-law";
import {
  type DamperLeakageClassName,
  damperLeakageClasses,
  damperLeakageClassNames,
  leakagePressure,
} from "#standard/damper-leakage";
import { defineFamily, type RecordHead } from "./family.ts";

/** Low-leakage control damper with airfoil blades. */
export interface Damper {
  readonly head: RecordHead;
  readonly bladeAction: BladeAction;
  readonly leakageClass: DamperLeakageClassName;
  /** Total pressure lost over the velocity pressure in the damper's face, blades wide open, in a duct of its size. */
  readonly openLossCoefficient: number;
  /** The same when closed: what the leakage class makes of it. */
  readonly closedLossCoefficient: number;
  /** m, blade width, across the axle. */
  readonly bladeWidth: number;
  /** m, frame along the flow. */
  readonly frameDepth: number;
  /** N·m for a square metre of face, to close against 500 Pa. */
  readonly torquePerArea: number;
  /** ln K against the angle from closed, as quadratics `c0 + c1 x + c2 x²` below and above the straight part. */
  readonly curve: DamperCurve;
}

/** ln K = low[0] + low[1]·x + low[2]·x² near closed, straight between, high[…] near open; x in degrees from closed. */
export interface DamperCurve {
  readonly a: number;
  readonly b: number;
  readonly lowest: number;
  readonly highest: number;
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

const fields = {
  bladeAction: choice(["opposed", "parallel"], { meaning: "How neighbouring blades turn" }),
  leakageClass: choice(damperLeakageClassNames, { meaning: "Leakage class at 1 in. of water" }),
  openLossCoefficient: factor({
    meaning: "Loss when open, on the velocity in the damper's face, in a duct of the damper's size",
    minimum: 0.05,
    maximum: 1.2,
  }),
  bladeWidth: quantity("length", { meaning: "Width of a blade", minimum: "2 in", maximum: "16 in" }),
  frameDepth: quantity("length", { meaning: "Depth of the frame along the flow", minimum: "2 in", maximum: "16 in" }),
  torquePerArea: quantity("torque", {
    meaning: "Torque for one square metre of face, to close against 500 Pa",
    minimum: "0 N·m",
    maximum: "100 N·m",
  }),
} as const;

/** The family `damper`. */
export const damperFamily = defineFamily({
  name: "damper",
  meaning: "Low-leakage control damper with airfoil blades",
  fields,
  build: (values, head): Damper => {
    const closedLossCoefficient = lossFromLeakage(damperLeakageClasses[values.leakageClass].leakage, leakagePressure);
    const curve = damperCurve(values.bladeAction, values.openLossCoefficient, closedLossCoefficient);
    return { head, ...values, closedLossCoefficient, curve };
  },
});

/**
 * Loss coefficient of a closed damper from its leakage: orifice flow, so that the leakage goes with the root of pressure.
 *
 * @param leakage m³/s per m², above 0: leakage of standard air by face area
 * @param pressure Pa, above 0: pressure across the damper at that leakage
 * @returns factor: pressure over the velocity pressure of the leakage in the face
 * @outside follows the same square law
 * @example lossFromLeakage(0.01524, 249.08891) // 1785387 ± 20
 * @source definition of the loss coefficient; root of pressure by amca-511
 */
export function lossFromLeakage(leakage: number, pressure: number): number {
  return pressure / (0.5 * standardAirDensity * leakage * leakage);
}

/**
 * The loss curve of a damper over its blade angle: straight in ln K between two angles, quadratics outside that join it
 * without a kink and end at the closed and the open loss.
 *
 * @param bladeAction choice: `opposed` or `parallel`
 * @param open factor, above 0: loss coefficient wide open
 * @param closed factor, above open: loss coefficient closed
 * @returns record: the curve
 * @outside throws
 * @throws RangeError when the open loss is so large that the curve would not fall to the open end
 * @example lossFromCurve(damperCurve("opposed", 0.45, 1e6), 45) // 24.90 ± 0.01
 * @source ashrae-825-rp exponential law with quadratics at the ends
 */
export function damperCurve(bladeAction: BladeAction, open: number, closed: number): DamperCurve {
  const { a, b, lowest, highest } = damperBladeLaws[bladeAction];
  const atLowest = a + b * (90 - lowest);
  const atHighest = a + b * (90 - highest);
  const toClosed = Math.log(closed);
  const toOpen = Math.log(open);
  // Through (0, toClosed) and (lowest, atLowest) with slope −b there.
  const bend = (toClosed - atLowest - b * lowest) / (lowest * lowest);
  const low = [toClosed, -b - 2 * bend * lowest, bend] as const;
  // Through (highest, atHighest) with slope −b, and (90, toOpen).
  const span = 90 - highest;
  const rise = (toOpen - atHighest + b * span) / (span * span);
  const high = [atHighest + b * highest + rise * highest * highest, -b - 2 * rise * highest, rise] as const;
  if (2 * rise * span > b) {
    const most = Math.exp(atHighest - (b * span) / 2);
    throw new RangeError(
      `open loss coefficient: ${open} lies too high for ${bladeAction} blades; below ${most.toFixed(2)} is needed`,
    );
  }
  return { a, b, lowest, highest, low, high };
}

/**
 * Loss coefficient at a blade angle, on the velocity in the damper's face.
 *
 * @param curve record: the damper's curve
 * @param bladeAngle degrees, 0…90: from closed (0) to open (90)
 * @returns factor: total pressure lost over the velocity pressure in the face
 * @outside angles below 0 count as closed, above 90 as open
 * @example lossFromCurve(damperCurve("parallel", 0.45, 1e6), 45) // 9.767 ± 0.01
 * @source ashrae-825-rp exponential law with quadratics at the ends
 */
export function lossFromCurve(curve: DamperCurve, bladeAngle: number): number {
  const angle = Math.min(90, Math.max(0, bladeAngle));
  if (angle < curve.lowest) return Math.exp(curve.low[0] + angle * (curve.low[1] + angle * curve.low[2]));
  if (angle > curve.highest) return Math.exp(curve.high[0] + angle * (curve.high[1] + angle * curve.high[2]));
  return Math.exp(curve.a + curve.b * (90 - angle));
}

/**
 * Blade angle at which a damper has a wanted loss.
 *
 * @param curve record: the damper's curve
 * @param lossCoefficient factor, above 0: loss wanted, on the velocity in the face
 * @returns degrees: blade angle, 0 (closed) … 90 (open)
 * @outside losses above the closed one give 0, below the open one 90
 * @example angleFromLoss(damperCurve("opposed", 0.45, 1e6), 24.9022) // 45 ± 0.001
 * @source ashrae-825-rp the same law, solved for the angle
 */
export function angleFromLoss(curve: DamperCurve, lossCoefficient: number): number {
  const wanted = Math.log(lossCoefficient);
  if (wanted >= curve.low[0]) return 0;
  if (wanted > curve.a + curve.b * (90 - curve.lowest)) return fallingRoot(curve.low, wanted, 0, curve.lowest);
  if (wanted >= curve.a + curve.b * (90 - curve.highest)) return 90 - (wanted - curve.a) / curve.b;
  if (wanted <= curve.high[0] + 90 * (curve.high[1] + 90 * curve.high[2])) return 90;
  return fallingRoot(curve.high, wanted, curve.highest, 90);
}

/** Root of the quadratic = wanted where it falls, between two angles. */
function fallingRoot(q: readonly [number, number, number], wanted: number, from: number, to: number): number {
  const [c0, c1, c2] = q;
  if (Math.abs(c2) < 1e-12) return (wanted - c0) / c1;
  const root = Math.sqrt(Math.max(0, c1 * c1 - 4 * c2 * (c0 - wanted)));
  // The falling branch has slope −root.
  return Math.min(to, Math.max(from, (-c1 - root) / (2 * c2)));
}

/**
 * Leakage of a closed damper at any pressure.
 *
 * @param leakageClass choice: `1A`, `1`, `2` or `3`
 * @param pressure Pa, 0…5000: pressure across the closed damper
 * @returns m³/s per m²: standard air by face area
 * @outside follows the root of pressure
 * @example damperLeakage("1A", 4 * 249.08891) // 0.03048 ± 1e-6
 * @source amca-511 classes at 1 in. of water; root of pressure
 */
export function damperLeakage(leakageClass: DamperLeakageClassName, pressure: number): number {
  return damperLeakageClasses[leakageClass].leakage * Math.sqrt(Math.max(0, pressure) / leakagePressure);
}
