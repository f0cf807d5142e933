import { type HousingReach, type MotorPlace, motorPlace, type ScrollShape } from "./housing.ts";

/** What the base of a housed fan depends on. */
interface OnBase {
  readonly drive: "belt" | "direct";
  readonly discharge: "forward" | "up" | "down";
  readonly diameter: number;
  readonly motorPower: number;
  readonly scroll: ScrollShape | undefined;
  readonly reach: HousingReach | undefined;
}

/** m: body of a motor by its power; common frame sizes taken as one line. */
export function motorSize(power: number): { readonly diameter: number; readonly length: number } {
  const kilowatts = power / 1000;
  return { diameter: 0.147 * kilowatts ** 0.3, length: 0.25 * kilowatts ** 0.3 };
}

/** Where the motor stands, from the fan's shaft in m; undefined where it drives directly. */
export function motorAt(fan: OnBase): MotorPlace | undefined {
  const { scroll, reach } = fan;
  if (fan.drive === "direct" || scroll === undefined || reach === undefined) return undefined;
  const body = motorSize(fan.motorPower).diameter;
  return motorPlace(scroll, fan.discharge, fan.diameter, reach.below * fan.diameter, body);
}

/** m from the shaft to both ends of the base under a housed fan and its motor. */
export function baseEnds(fan: OnBase): { readonly from: number; readonly to: number } {
  const motor = motorAt(fan)?.x ?? 0;
  const body = motorSize(fan.motorPower).diameter;
  const half = 0.62 * fan.diameter;
  const behind = fan.discharge === "down" ? (fan.reach?.behind ?? 0) * fan.diameter : half;
  return { from: Math.min(-half, motor - 0.75 * body), to: Math.max(half, behind, motor + 0.75 * body) };
}
