import type { BeltDrive } from "../src/component/belt-drive.ts";
import { fanPressureFromFlow, fanSpeedFromPressure } from "../src/component/fan-performance.ts";
import { fanWheelFamily } from "../src/component/fan-wheel.ts";
import type { Motor } from "../src/component/motor.ts";
import type { SpeedControl } from "../src/component/speed-control.ts";
import type { Spring } from "../src/component/spring.ts";
import { selectFans } from "../src/design/fan-selection.ts";
import { createAir } from "../src/section/air.ts";
import type { SectionCondition } from "../src/section/contract.ts";
import { prepareFan } from "../src/section/fan/design.ts";
import type { FanValues } from "../src/section/fan/fields.ts";
import { fan } from "../src/section/fan/kind.ts";
import { createFanRating } from "../src/section/fan/rate.ts";
import { rateSection } from "../src/section/rate-section.ts";

const head = { name: "bench", typical: true, basis: "invented", source: "", date: "", note: "" } as const;
const shape = {
  kind: "generic shape",
  bestFlow: 0.48,
  bestPressure: 0.63,
  bestEfficiency: 0.75,
  stableShare: 0.68,
} as const;
const line = {
  arrangement: "housed double inlet",
  performance: shape,
  smallestDiameter: 0.3,
  largestDiameter: 1.9,
  inletDiameter: 0.78,
  outletWidth: 1.42,
  outletHeight: 1.06,
  blastArea: 0.8,
  housingWidth: 1.48,
  wheelWidth: 0.68,
  blades: 10,
  stoppedLoss: 3,
  classes: [
    { name: "I", tipSpeed: 56 },
    { name: "II", tipSpeed: 73 },
  ],
  referenceDiameter: 0.762,
  wheelMass: 70,
  fanMass: 380,
  gyrationRadius: 0.36,
} as const;
const double = fanWheelFamily.build(line, head);
const single = fanWheelFamily.build(
  {
    ...line,
    arrangement: "housed single inlet",
    performance: { ...shape, bestFlow: 0.257 },
    outletWidth: 0.8,
    housingWidth: 0.84,
  },
  head,
);
const plenum = fanWheelFamily.build(
  {
    ...line,
    arrangement: "plenum wheel",
    performance: { ...shape, bestFlow: 0.23, bestPressure: 0.54 },
    inletDiameter: 0.72,
    outletWidth: 0,
    outletHeight: 0,
    blastArea: 1,
    housingWidth: 0.55,
  },
  head,
);
const motor: Motor = {
  head,
  enclosure: "enclosed",
  poles: "4",
  frequency: 60,
  slip: 0.018,
  serviceFactor: 1.15,
  powerFactor: 0.84,
  massPerKilowatt: 9,
};
const belts: BeltDrive = { head, band: "medium", serviceFactor: 1.5, smallestSheave: 0.107, highestBeltSpeed: 33 };
const springs: Spring = { head, deflection: 0.05, damping: 0.01, horizontalStiffness: 1 };
const speedControl: SpeedControl = { head, lowestSpeed: 0.1, highestSpeed: 1.2 };
const values: FanValues = {
  wheel: double,
  diameter: 0.762,
  class: "II",
  count: 1,
  rows: undefined,
  drive: "belt",
  belts,
  motor,
  motorPower: 22_000,
  motorsInAirstream: true,
  speedControlled: true,
  speedControl,
  fixedSpeed: undefined,
  isolation: "springs",
  springs,
  floor: "slab on grade",
  flexibleConnection: 0.15,
  discharge: "forward",
  outletDuct: 0,
  inletClearance: undefined,
  upstreamSpace: 0.6,
  backdraftDampers: false,
  backdraftLoss: 0.8,
  bearingLoadRating: undefined,
  bearingLife: 1.44e8,
  declaredRating: undefined,
};
const frame = { width: 3, height: 2.6, hand: "right" } as const;
const design = prepareFan(values, frame);
const air = Object.assign(createAir(), {
  dryAirFlow: 9.8,
  dryBulb: 12,
  humidityRatio: 0.008,
  staticPressure: -700,
  totalPressure: -696,
});
// A fan reads nothing of its condition but the barometric pressure and what turns.
const at = {
  condition: { barometricPressure: 101_325 },
  operation: { fanSpeed: 19, fansRunning: true },
} as SectionCondition;
const rating = createFanRating();
const task = {
  frame,
  air,
  at,
  rise: 1350,
  values,
  wheels: [double, single, plenum],
  counts: Array.from({ length: 16 }, (_, index) => index + 1),
  drives: ["belt", "direct"],
  pressureToPeak: 0.9,
} as const;

let turn = 0;
/** A flow that changes from call to call. */
function nextFlow(): number {
  turn = (turn + 1) & 1023;
  return 5 + turn / 256;
}

export const suite = {
  title: "fan",
  tasks: [
    { name: "static pressure from flow", run: () => fanPressureFromFlow(double.curve, 0.762, 19, 1.2, nextFlow()) },
    {
      name: "speed from flow and pressure",
      run: () => fanSpeedFromPressure(double.curve, 0.762, 1.2, nextFlow(), 1200),
    },
    { name: "fan section rated", run: () => rateSection(fan, design, air, at, rating) },
    { name: `selection among ${selectFans(task).looked} fans`, run: () => selectFans(task) },
  ],
};
