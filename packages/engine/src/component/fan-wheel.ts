import { choice, factor, group, integer, list, quantity, text, type ValuesOf, variant } from "#form/field";
import { defineFamily, type RecordHead } from "./family.ts";
import { type FanCurve, fanCurveFromPoints, fanCurveFromShape } from "./fan-curve.ts";
import { flowCoefficientFromFlow, tipSpeedFromSpeed } from "./fan-performance.ts";

/** Housing and inlets of a centrifugal fan. */
export const fanArrangements = ["housed single inlet", "housed double inlet", "plenum wheel"] as const;
/** One of them. */
export type FanArrangement = (typeof fanArrangements)[number];

/** A line of fan wheels of one shape: performance without dimension, and sizes as shares of the wheel's diameter. */
export interface FanWheel {
  readonly head: RecordHead;
  readonly arrangement: FanArrangement;
  readonly curve: FanCurve;
  /** m. */
  readonly smallestDiameter: number;
  readonly largestDiameter: number;
  readonly inlets: 1 | 2;
  /** Throat of the inlet cone over the wheel's diameter. */
  readonly inletDiameter: number;
  /** Fan outlet over the wheel's diameter; 0 for a plenum wheel. */
  readonly outletWidth: number;
  readonly outletHeight: number;
  /** Area above the cut-off over outlet area. */
  readonly blastArea: number;
  readonly housingWidth: number;
  readonly wheelWidth: number;
  readonly blades: number;
  /** Velocity pressures in the inlet that a wheel standing still takes. */
  readonly stoppedLoss: number;
  readonly classes: readonly FanClass[];
  /** m, kg, kg: masses of wheel and whole fan at this diameter. */
  readonly referenceDiameter: number;
  readonly wheelMass: number;
  readonly fanMass: number;
  /** Radius of gyration over the wheel's diameter. */
  readonly gyrationRadius: number;
}

/** A class of construction and the tip speed up to which it may run. */
export interface FanClass {
  readonly name: string;
  /** m/s. */
  readonly tipSpeed: number;
}

const share = (meaning: string, minimum: number, maximum: number) => factor({ meaning, minimum, maximum });
const stableShare = share("Smallest flow of steady running over the flow at best static efficiency", 0.1, 1);

const fields = {
  arrangement: choice(fanArrangements, { meaning: "Housing and inlets" }),
  performance: variant(
    {
      "generic shape": {
        bestFlow: share("Flow coefficient 4Q/(πD²u) at best static efficiency", 0.02, 1.5),
        bestPressure: share("Static pressure coefficient 2p/(ρu²) there", 0.05, 2),
        bestEfficiency: share("Best static efficiency", 0.2, 0.9),
        stableShare,
      },
      "tested points": {
        testDiameter: quantity("length", { meaning: "Wheel of the test", minimum: "4 in", maximum: "120 in" }),
        testSpeed: quantity("rotationalSpeed", {
          meaning: "Speed of the test",
          minimum: "50 rpm",
          maximum: "6000 rpm",
        }),
        testDensity: quantity("density", { meaning: "Air density of the test", default: "0.075 lb/ft³" }),
        stableShare,
        points: list(
          group(
            {
              flow: quantity("actualAirflow", { meaning: "Actual airflow" }),
              staticPressure: quantity("pressureDifference", { meaning: "Fan static pressure" }),
              shaftPower: quantity("shaftPower", { meaning: "Power at the shaft" }),
            },
            { meaning: "A tested point" },
          ),
          { meaning: "Tested points in rising flow", fewest: 4, most: 100 },
        ),
      },
    },
    { meaning: "The curve: the published generic shape through one point, or a test table" },
  ),
  smallestDiameter: quantity("length", { meaning: "Smallest wheel of the line", minimum: "4 in" }),
  largestDiameter: quantity("length", { meaning: "Largest wheel of the line", maximum: "120 in" }),
  inletDiameter: share("Throat of the inlet cone over wheel diameter", 0.3, 1.1),
  outletWidth: share("Fan outlet's width over wheel diameter; 0 for a plenum wheel", 0, 3),
  outletHeight: share("Fan outlet's height over wheel diameter; 0 for a plenum wheel", 0, 2),
  blastArea: share("Blast area over outlet area; 1 for a plenum wheel", 0.3, 1),
  housingWidth: share("Housing, or wheel with back plate and cone, along the shaft over wheel diameter", 0.2, 3),
  wheelWidth: share("Blades along the shaft over wheel diameter, both sides of a double wheel together", 0.1, 1.5),
  blades: integer({ meaning: "Number of blades", minimum: 4, maximum: 64 }),
  stoppedLoss: share("Loss of a wheel standing still, velocity pressures in the inlet", 0.5, 20),
  classes: list(
    group(
      {
        name: text({ meaning: "Class of construction", longest: 20 }),
        tipSpeed: quantity("velocity", { meaning: "Highest tip speed of the class", minimum: "1000 fpm" }),
      },
      { meaning: "A class and its limit" },
    ),
    { meaning: "Classes, lightest first", fewest: 1, most: 6 },
  ),
  referenceDiameter: quantity("length", { meaning: "Wheel to which the masses belong" }),
  wheelMass: quantity("mass", { meaning: "Wheel" }),
  fanMass: quantity("mass", { meaning: "Fan without motor and base" }),
  gyrationRadius: share("Radius of gyration of the wheel over its diameter", 0.1, 0.5),
} as const;

/** Fan wheels, each a line of sizes. */
export const fanWheelFamily = defineFamily({
  name: "fan wheel",
  meaning: "Centrifugal fan wheel with its housing or inlet cone, a line of similar sizes",
  fields,
  build: buildFanWheel,
});

function buildFanWheel(values: ValuesOf<typeof fields>, head: RecordHead): FanWheel {
  const { performance, ...rest } = values;
  const inlets = values.arrangement === "housed double inlet" ? 2 : 1;
  const housed = values.arrangement !== "plenum wheel";
  if (housed && !(values.outletWidth > 0 && values.outletHeight > 0)) {
    throw new RangeError("outlet width and outlet height: a housed fan needs both above 0");
  }
  if (values.smallestDiameter > values.largestDiameter) {
    throw new RangeError("smallest diameter: must not be above the largest diameter");
  }
  const stoppedLoss = values.stoppedLoss / (inlets * values.inletDiameter ** 2) ** 2;
  const curve =
    performance.kind === "generic shape"
      ? fanCurveFromShape(
          performance.bestFlow,
          performance.bestPressure,
          performance.bestEfficiency,
          performance.stableShare,
          stoppedLoss,
        )
      : testedCurve(performance, stoppedLoss);
  return { ...rest, head, inlets, curve };
}

interface TestTable {
  readonly testDiameter: number;
  readonly testSpeed: number;
  readonly testDensity: number;
  readonly stableShare: number;
  readonly points: readonly { readonly flow: number; readonly staticPressure: number; readonly shaftPower: number }[];
}

function testedCurve(test: TestTable, stoppedLoss: number): FanCurve {
  const tip = tipSpeedFromSpeed(test.testDiameter, test.testSpeed);
  const disc = 0.25 * Math.PI * test.testDiameter ** 2;
  const points = test.points.map((point) => ({
    flow: flowCoefficientFromFlow(point.flow, test.testDiameter, test.testSpeed),
    pressure: (2 * point.staticPressure) / (test.testDensity * tip * tip),
    power: (2 * point.shaftPower) / (test.testDensity * tip ** 3 * disc),
  }));
  return fanCurveFromPoints(points, test.stableShare, stoppedLoss);
}

/**
 * Velocity in the throat of a fan's inlet cones.
 *
 * @param flow m³/s, 0 or more: actual flow of the whole fan
 * @param diameter m, 0.1…3: of the wheel
 * @param inletShare 1, 0.3…1.1: throat over wheel diameter
 * @param inlets 1, 1…2: number of inlets
 * @returns m/s: velocity, referred to the throat
 * @outside the same formula goes on
 * @example fanInletVelocity(6, 0.762, 0.72, 1) // 25.4 ± 0.05
 * @source definition
 */
export function fanInletVelocity(flow: number, diameter: number, inletShare: number, inlets: number): number {
  return flow / (inlets * 0.25 * Math.PI * (inletShare * diameter) ** 2);
}

/**
 * Mass of a similar part at another diameter. Between similar solids (third power) and sheet of one gauge (second power):
 * two and a half.
 *
 * @param mass kg, 0 or more: at the reference diameter
 * @param referenceDiameter m, 0.1…3: where the mass holds
 * @param diameter m, 0.1…3: of the wheel
 * @returns kg: mass
 * @outside the same formula goes on
 * @example massFromDiameter(100, 0.762, 1.5) // 544 ± 1
 * @source common-practice
 */
export function massFromDiameter(mass: number, referenceDiameter: number, diameter: number): number {
  return mass * (diameter / referenceDiameter) ** 2.5;
}

/**
 * Time that a motor needs to bring a fan to speed with a steady surplus of torque.
 *
 * @param inertia kg m², 0 or more: wheel's mass times its squared radius of gyration
 * @param speed rev/s, 0…60: wheel speed reached
 * @param motorPower W, above 0: rated power of the motor
 * @param torqueShare 1, 0.3…3: mean accelerating torque over rated torque, fan's own torque taken off
 * @returns s: starting time
 * @outside the same formula goes on
 * @example fanStartingTime(8, 20, 11190, 1.2) // 9.4 ± 0.1
 * @source derived-here kinetic energy over mean power
 */
export function fanStartingTime(inertia: number, speed: number, motorPower: number, torqueShare: number): number {
  return (inertia * (2 * Math.PI * speed) ** 2) / (motorPower * torqueShare);
}
