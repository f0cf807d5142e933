import { factor, quantity, type ValuesOf } from "#form/field";
import { metresPerInch, wattsPerHorsepower } from "#quantity/inch-pound";
import { type FloorSpan, floorSpans, springDeflections } from "#standard/spring-deflection";
import { defineFamily, type RecordHead } from "./family.ts";

const fields = {
  deflection: quantity("length", {
    meaning: "Static deflection under the machine",
    minimum: "0.25 in",
    maximum: "6 in",
  }),
  damping: factor({ meaning: "Damping over critical damping", default: 0.01, minimum: 0, maximum: 0.5 }),
  horizontalStiffness: factor({
    meaning: "Horizontal stiffness over vertical stiffness",
    default: 1,
    minimum: 0.3,
    maximum: 3,
  }),
} as const;

/** A free-standing spring isolator under its load. */
export interface Spring extends ValuesOf<typeof fields> {
  readonly head: RecordHead;
}

/** Spring isolators, chosen by deflection; their stiffness follows from the load on each. */
export const springFamily = defineFamily({
  name: "spring",
  meaning: "Free-standing spring isolator",
  fields,
  build: (values: ValuesOf<typeof fields>, head: RecordHead): Spring => ({ ...values, head }),
});

const gravity = 9.806_65;

/**
 * Natural frequency of a mass on springs, from their static deflection.
 *
 * @param deflection m, 0.001…0.2: static deflection
 * @returns Hz: natural frequency
 * @outside the same formula goes on
 * @example springNaturalFrequency(0.025) // 3.15 ± 5e-3
 * @source derived-here square root of gravity over deflection
 */
export function springNaturalFrequency(deflection: number): number {
  return Math.sqrt(gravity / deflection) / (2 * Math.PI);
}

/**
 * Force passed to the floor over the force that shakes the machine.
 *
 * @param frequencyRatio 1, 0 or more: disturbing over natural frequency
 * @param damping 1, 0…1: over critical damping
 * @returns 1: transmissibility; above one the springs make it worse
 * @outside infinite at resonance without damping
 * @example springTransmissibility(7.93, 0) // 0.01616 ± 2e-5
 * @source den-hartog-mechanical-vibrations eq. 2.40
 */
export function springTransmissibility(frequencyRatio: number, damping: number): number {
  const damped = (2 * damping * frequencyRatio) ** 2;
  return Math.sqrt((1 + damped) / ((1 - frequencyRatio ** 2) ** 2 + damped));
}

/**
 * Static deflection that isolates a share of the force, without damping.
 *
 * @param frequency Hz, 1…120: disturbing frequency
 * @param isolated 1, 0…0.999: share of the force kept from the floor
 * @returns m: static deflection
 * @outside the same formula goes on
 * @example deflectionFromIsolation(900 / 60, 0.95) * 1000 // 23.18 ± 0.02
 * @source derived-here from the transmissibility
 */
export function deflectionFromIsolation(frequency: number, isolated: number): number {
  return (gravity * (1 + 1 / (1 - isolated))) / (2 * Math.PI * frequency) ** 2;
}

/**
 * Least static deflection of a fan's springs by the handbook's table: large motors take the next longer span. Recalled,
 * shown with this mark.
 *
 * @param speed rev/s, 1…60: of the wheel
 * @param floor choice, slab on grade, 20 ft, 30 ft or 40 ft: span of the floor under the unit
 * @param motorPower W, 0…300000: rated power of the motor
 * @returns m: least static deflection
 * @outside slower and faster fans take the first and last row
 * @example leastSpringDeflection(900 / 60, "30 ft", 20 * 745.7) / 0.0254 // 1.75 ± 1e-9
 * @source ashrae-applications-noise-vibration table of least deflections, from memory
 */
export function leastSpringDeflection(speed: number, floor: FloorSpan, motorPower: number): number {
  const { rows, largeMotor } = springDeflections;
  const row = rows.find((each) => speed * 60 <= each.upTo * (1 + 1e-9)) ?? rows[rows.length - 1]!;
  const isLarge = motorPower >= largeMotor.horsepower * wattsPerHorsepower * (1 - 1e-6);
  const place = Math.min(floorSpans.indexOf(floor) + (isLarge ? 1 : 0), floorSpans.length - 1);
  return Math.max(row.inches[place]!, isLarge ? largeMotor.deflection : 0) * metresPerInch;
}

/**
 * Stiffness of a spring that carries a mass at a deflection.
 *
 * @param mass kg, 0 or more: on the one spring
 * @param deflection m, 0.001…0.2: static deflection
 * @returns N/m: stiffness
 * @outside the same formula goes on
 * @example springStiffness(187.5, 0.038) / 1000 // 48.39 ± 0.01
 * @source definition
 */
export function springStiffness(mass: number, deflection: number): number {
  return (mass * gravity) / deflection;
}

/** Place of a spring or a centre of gravity in plan, m. */
export interface PlanPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * Mass on each spring under a rigid base. Springs need not be symmetric; places are measured from anywhere.
 *
 * @param mass kg, above 0: of base and machine
 * @param centre record: centre of gravity in plan, m
 * @param springs list, three or more not in one line: places in plan, m
 * @returns list: kg on each spring
 * @outside negative where the base would lift off
 * @throws RangeError when the springs stand in one line
 * @example springLoads(1200, {x: 0.15, y: 0.05}, [{x: -0.6, y: -0.4}, {x: 0.6, y: -0.4}, {x: -0.6, y: 0.4}, {x: 0.6, y: 0.4}])[3] // 412.5 ± 1e-9
 * @source derived-here rigid base on equal springs
 */
export function springLoads(mass: number, centre: PlanPoint, springs: readonly PlanPoint[]): number[] {
  const count = springs.length;
  const middle = {
    x: springs.reduce((sum, each) => sum + each.x, 0) / count,
    y: springs.reduce((sum, each) => sum + each.y, 0) / count,
  };
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (const { x, y } of springs) {
    xx += (x - middle.x) ** 2;
    yy += (y - middle.y) ** 2;
    xy += (x - middle.x) * (y - middle.y);
  }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-9 * xx * yy)) {
    throw new RangeError(`springLoads: ${count} springs in one line carry no rigid base; three or more around it do`);
  }
  const ex = centre.x - middle.x;
  const ey = centre.y - middle.y;
  const tiltX = (ex * yy - ey * xy) / determinant;
  const tiltY = (ey * xx - ex * xy) / determinant;
  return springs.map(({ x, y }) => mass * (1 / count + tiltX * (x - middle.x) + tiltY * (y - middle.y)));
}
