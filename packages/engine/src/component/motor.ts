import { choice, factor, type ValuesOf } from "#form/field";
import { wattsPerHorsepower } from "#quantity/inch-pound";
import { motorPartLoad } from "#standard/drive-losses";
import { motorEfficiencies } from "#standard/motor-efficiency";
import { defineFamily, type RecordHead } from "./family.ts";
import { inputPowerFromPartLoad } from "./part-load.ts";

/** Enclosures of the efficiency table: totally enclosed fan-cooled, open drip-proof. */
export const motorEnclosures = ["enclosed", "open"] as const;
/** One of them. */
export type MotorEnclosure = (typeof motorEnclosures)[number];
/** Numbers of poles of the efficiency table. */
export const motorPoles = ["2", "4", "6", "8"] as const;
/** One of them. */
export type MotorPoles = (typeof motorPoles)[number];

const fields = {
  enclosure: choice(motorEnclosures, { meaning: "Totally enclosed fan-cooled, or open drip-proof" }),
  poles: choice(motorPoles, { meaning: "Number of poles" }),
  frequency: factor({ meaning: "Supply frequency, Hz", default: 60, minimum: 50, maximum: 60 }),
  slip: factor({ meaning: "Slip at full load over synchronous speed", default: 0.02, minimum: 0, maximum: 0.1 }),
  serviceFactor: factor({ meaning: "Service factor on a sine-wave supply", default: 1.15, minimum: 1, maximum: 1.4 }),
  powerFactor: factor({ meaning: "Power factor at full load", default: 0.84, minimum: 0.5, maximum: 1 }),
  massPerKilowatt: factor({ meaning: "kg of motor for each kW of rated power", default: 9, minimum: 2, maximum: 40 }),
} as const;

/** A line of motors of standard sizes. */
export interface Motor extends ValuesOf<typeof fields> {
  readonly head: RecordHead;
}

/** Three-phase induction motors; the size is chosen where one is used. */
export const motorFamily = defineFamily({
  name: "motor",
  meaning: "Three-phase induction motor of premium efficiency, a line of standard sizes",
  fields,
  build: (values: ValuesOf<typeof fields>, head: RecordHead): Motor => ({ ...values, head }),
});

/**
 * Nominal efficiency at full load that the regulation asks, by size; between sizes linear, beyond the ends held.
 *
 * @param enclosure choice, enclosed or open: the motor's enclosure
 * @param poles choice, 2, 4, 6 or 8: as text
 * @param power W, 746…149140: rated shaft power
 * @returns 1: efficiency
 * @outside holds the efficiency of the smallest or largest size
 * @example motorNominalEfficiency("enclosed", "4", 10 * 745.7) // 0.917 ± 1e-6
 * @source 10-cfr-431-25
 */
export function motorNominalEfficiency(enclosure: MotorEnclosure, poles: MotorPoles, power: number): number {
  const column = motorPoles.indexOf(poles);
  const horsepower = power / wattsPerHorsepower;
  const rows = motorEfficiencies;
  let above = rows.findIndex((row) => row.horsepower >= horsepower * (1 - 1e-4));
  if (above === -1) above = rows.length - 1;
  const high = rows[above]!;
  const low = rows[Math.max(above - 1, 0)]!;
  const span = high.horsepower - low.horsepower;
  const share = span === 0 ? 1 : Math.min(Math.max((horsepower - low.horsepower) / span, 0), 1);
  return (low[enclosure][column]! + share * (high[enclosure][column]! - low[enclosure][column]!)) / 100;
}

/**
 * Smallest standard motor that gives a power.
 *
 * @param power W, 0…149140: shaft power that the motor has to give
 * @returns W: rated power of the standard size; undefined above 200 hp
 * @outside the same formula goes on
 * @example standardMotorPower(12000) / 745.69987 // 20 ± 1e-6
 * @source 10-cfr-431-25
 */
export function standardMotorPower(power: number): number | undefined {
  const row = motorEfficiencies.find((each) => each.horsepower * wattsPerHorsepower >= power * (1 - 1e-9));
  return row === undefined ? undefined : row.horsepower * wattsPerHorsepower;
}

/**
 * Electric power into a motor at any load: the published part-load curve of four-pole motors of its size, raised so that
 * full load has the nominal efficiency. Finite when idling.
 *
 * @param ratedPower W, 746…149140: rated shaft power
 * @param nominalEfficiency 1, 0.5…1: at full load
 * @param shaftPower W, 0 or more: what the motor gives
 * @returns W: electric power
 * @outside above rated load the curve goes on
 * @example motorInputPower(10 * 745.7, 0.917, 10 * 745.7) // 8131.9 ± 0.1
 * @source energyplus-engineering-reference fan component model, motor part load
 */
export function motorInputPower(ratedPower: number, nominalEfficiency: number, shaftPower: number): number {
  const { rows } = motorPartLoad;
  const atFullLoad = inputPowerFromPartLoad(rows, ratedPower, ratedPower) / ratedPower;
  return inputPowerFromPartLoad(rows, ratedPower, shaftPower) / atFullLoad / nominalEfficiency;
}

/**
 * Speed of an induction motor at full load.
 *
 * @param poles 1, 2…8: number of poles
 * @param frequency Hz, 10…120: of the supply
 * @param slip 1, 0…0.1: slip at full load
 * @returns rev/s: shaft speed
 * @outside the same formula goes on
 * @example motorFullLoadSpeed(4, 60, 0.02) * 60 // 1764 ± 1e-9
 * @source definition
 */
export function motorFullLoadSpeed(poles: number, frequency: number, slip: number): number {
  return ((2 * frequency) / poles) * (1 - slip);
}

/**
 * Shaft power that a motor may give for good: service factor on the line, none on a speed control, and above 1000 m less,
 * as thinner air cools less. With a service factor on the line, altitude takes that first (up to 2740 m); otherwise the
 * allowed temperature rise falls by 1 % each 100 m and losses go with the square of load.
 *
 * @param ratedPower W, 746…149140: rated shaft power
 * @param serviceFactor 1, 1…1.4: on the nameplate
 * @param speedControlled flag, yes or no: fed by a speed control
 * @param altitude m, 0…4000: of the site
 * @returns W: power allowed
 * @outside below sea level as at sea level
 * @example motorAllowedPower(7457, 1.15, true, 1860) // 7129 ± 1
 * @source from-memory NEMA MG 1 on altitude; square law derived here
 */
export function motorAllowedPower(
  ratedPower: number,
  serviceFactor: number,
  speedControlled: boolean,
  altitude: number,
): number {
  if (altitude <= 1006) return ratedPower * (speedControlled ? 1 : serviceFactor);
  if (!speedControlled && serviceFactor >= 1.15 && altitude <= 2743) return ratedPower;
  return ratedPower * Math.sqrt(Math.max(1 - (altitude - 1000) / 10_000, 0));
}

/**
 * Current of a three-phase motor at full load, from its power: a figure for a proposal. The nameplate and the local
 * electrical code decide, with a licensed person.
 *
 * @param ratedPower W, 746…149140: rated shaft power
 * @param voltage V, 200…690: line to line
 * @param efficiency 1, 0.5…1: at full load
 * @param powerFactor 1, 0.5…1: at full load
 * @returns A: line current
 * @outside the same formula goes on
 * @example motorFullLoadCurrent(20 * 745.7, 460, 0.93, 0.84) // 23.96 ± 0.05
 * @source definition three-phase power
 */
export function motorFullLoadCurrent(
  ratedPower: number,
  voltage: number,
  efficiency: number,
  powerFactor: number,
): number {
  return ratedPower / (Math.sqrt(3) * voltage * efficiency * powerFactor);
}
