import { motorFullLoadCurrent } from "#component/motor";
import { maximumOvercurrentProtection, minimumCircuitAmpacity, overloadTrip } from "#component/motor-circuit";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** A proposal for the electrical connection of all fans together. */
export interface FanElectrical {
  /** V between phases. */
  readonly voltage: number;
  /** A of one motor. */
  readonly fullLoadCurrent: number;
  /** A of overload protection at each motor, at most. */
  readonly overloadTrip: number;
  /** A for all of them. */
  readonly minimumCircuitAmpacity: number;
  readonly maximumOvercurrentProtection: number;
  /** Service factor that counts at this supply: none behind a speed control. */
  readonly serviceFactor: number;
  /** W that each motor may give for good at the site's altitude, and over its rated power. */
  readonly allowedPower: number;
  readonly allowedShare: number;
  readonly source: string;
  readonly caution: string;
}

/** Currents, wires and protection of the fans' motors at a voltage (V between phases). */
export function fanElectrical(design: FanDesign, rating: FanSectionRating, voltage: number): FanElectrical {
  const { motor, motorPower } = design;
  const current = motorFullLoadCurrent(motorPower, voltage, design.motorEfficiency, motor.powerFactor);
  const currents = Array<number>(design.count).fill(current);
  const serviceFactor = design.speedControlled ? 1 : motor.serviceFactor;
  return {
    voltage,
    fullLoadCurrent: current,
    overloadTrip: overloadTrip(current, serviceFactor),
    minimumCircuitAmpacity: minimumCircuitAmpacity(currents),
    maximumOvercurrentProtection: maximumOvercurrentProtection(currents),
    serviceFactor,
    allowedPower: rating.motorAllowed,
    allowedShare: rating.motorAllowed / motorPower,
    source: "nfpa-70 article 430, from memory",
    caution: design.speedControlled
      ? "a proposal computed from power; the input current and protection that the speed control's nameplate asks, the local electrical code and a licensed person decide"
      : "a proposal computed from power; nameplates, the local electrical code and a licensed person decide",
  };
}
