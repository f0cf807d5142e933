import { type Liquid, liquidDensity, liquidViscosity } from "#fluid/liquid";
import type { Coil } from "./coil.ts";
import { tubeFriction, turbulatorFriction } from "./tube-side.ts";

/** Velocity heads lost in a return bend, and at both ends of a circuit (out of the header, into the header). */
export const returnBendLoss = 1.2;
export const circuitEndsLoss = 1.5;
/** Velocity heads of the connection lost in both headers. */
export const headerLoss = 1.5;

/** m, inside diameters of the pipe that coil connections are made of, 1 to 8 in. nominal, schedule 40. */
export const connectionSizes: readonly { readonly nominal: string; readonly diameter: number }[] = [
  { nominal: "1 in", diameter: 0.0266 },
  { nominal: "1-1/4 in", diameter: 0.0351 },
  { nominal: "1-1/2 in", diameter: 0.0409 },
  { nominal: "2 in", diameter: 0.0525 },
  { nominal: "2-1/2 in", diameter: 0.0627 },
  { nominal: "3 in", diameter: 0.0779 },
  { nominal: "4 in", diameter: 0.1023 },
  { nominal: "5 in", diameter: 0.1282 },
  { nominal: "6 in", diameter: 0.1541 },
  { nominal: "8 in", diameter: 0.2027 },
];

/** m/s to which connections are sized. */
export const connectionVelocity = 2.1;

/**
 * The smallest connection that carries a flow at no more than 2.1 m/s (7 ft/s); the largest of the list beyond.
 *
 * @param volumeFlow m³/s, 0…1: of one coil
 * @returns record: nominal size and inside diameter
 * @outside the largest of the list
 * @example connectionFor(0.006).nominal // "2-1/2 in"
 * @source common-practice header and connection velocity of 5…8 ft/s
 */
export function connectionFor(volumeFlow: number): (typeof connectionSizes)[number] {
  const least = Math.sqrt((4 * volumeFlow) / (Math.PI * connectionVelocity));
  return connectionSizes.find((each) => each.diameter >= least) ?? connectionSizes[connectionSizes.length - 1]!;
}

/**
 * Pressure that a liquid loses from connection to connection: straight tubes by Darcy, return bends, the ends of the
 * circuits, headers and connections.
 *
 * @param coil record: the coil
 * @param liquid record: what flows
 * @param massFlow kg/s, 0…1000: of all circuits
 * @param temperature °C, -40…150: mean
 * @param connection m, 0.02…0.3: inside diameter of the connections
 * @returns Pa: loss
 * @outside keeps answering; 0 without flow
 * @example liquidPressureDrop({ bank: { tubeInsideDiameter: 0.014605 }, bore: 0.000167529, circuits: 1, passes: 1, finnedLength: 1,
 *   turbulators: false }, { substance: "water", massFraction: 0 }, 0.1675, 5, 10) // 1839 ± 10
 * @source gnielinski-2013 tubes; idelchik-handbook bends and ends, orders of magnitude
 */
export function liquidPressureDrop(
  coil: Coil,
  liquid: Liquid,
  massFlow: number,
  temperature: number,
  connection: number,
): number {
  if (!(massFlow > 0)) return 0;
  const diameter = coil.bank.tubeInsideDiameter;
  const density = liquidDensity(liquid, temperature);
  const massFlux = massFlow / (coil.circuits * coil.bore);
  const head = (massFlux * massFlux) / (2 * density);
  const reynolds = (massFlux * diameter) / liquidViscosity(liquid, temperature);
  const friction = tubeFriction(reynolds) * (coil.turbulators ? turbulatorFriction : 1);
  const tubes = (friction * coil.passes * coil.finnedLength) / diameter;
  const bends = returnBendLoss * (coil.passes - 1);
  const connectionFlux = massFlow / ((Math.PI * connection * connection) / 4);
  const headers = (headerLoss * connectionFlux * connectionFlux) / (2 * density);
  return head * (tubes + bends + circuitEndsLoss) + headers;
}
