import { listOf, number, record, text } from "../schema/describe.ts";

/** Wires and protection of the motors. */
export const electrical = record({
  voltage: number("V between phases"),
  fullLoadCurrent: number("A of one motor"),
  overloadTrip: number("A of overload protection at each motor, at most"),
  minimumCircuitAmpacity: number("A for all of them"),
  maximumOvercurrentProtection: number("A for all of them, a standard size"),
  serviceFactor: number("that counts at this supply"),
  allowedPower: number("W that each motor may give for good at the site"),
  allowedShare: number("the same over rated power"),
  source: text("bibliography key and place"),
  caution: text(),
});

const belts = record({
  motorSheave: number("m, pitch diameter"),
  fanSheave: number("m, pitch diameter"),
  centreDistance: number("m between the shafts"),
  count: number("belts of section B"),
  fullLoadFanSpeed: number("rev/s of the wheel with the motor at full-load speed"),
  beltSpeed: number("m/s at the rim"),
  pull: number("N on the fan's sheave, all belts"),
  life: number("s of running at this point"),
  lastsLonger: { type: "boolean", description: "the life is only known to be longer" },
});

const bearings = record(
  {
    load: number("N on the bearing beside the sheave"),
    lifeWanted: number("s that nine of ten must reach"),
    ratingWanted: number("N of basic dynamic load rating for that"),
    rating: number("N, of the bearing that the job names"),
    life: number("s that nine of ten of it reach"),
  },
  "rating",
  "life",
);

/** What turns and how long it lasts. */
export const mechanics = record(
  {
    inertia: number("kg m² of one wheel"),
    startingTime: number("s"),
    startedBy: { enum: ["line", "speed control"] },
    belts,
    bearings,
    source: text("bibliography keys"),
    certainty: text("what the figures rest on"),
  },
  "belts",
  "bearings",
);

const rangePoint = record({
  share: number("of design airflow"),
  filterLoading: number("0 clean to 1 change-out"),
  fanSpeed: number("rev/s"),
  pressureToPeak: number("static pressure over peak at this speed"),
  flowToStable: number("flow over the smallest steady flow"),
  motorLoad: number("0 to 1"),
  frequencyRatio: number("speed over the springs' natural frequency"),
});

/** How the fan stands over all its speeds. */
export const range = record(
  {
    lowestSpeed: number("rev/s"),
    highestSpeed: number("rev/s"),
    points: listOf(rangePoint, "along the unit's curves, filters clean and at change-out"),
    nearestPeak: rangePoint,
    leastSteady: rangePoint,
    unsteadyBelow: number("share of design airflow"),
    overloadAbove: number("rev/s above which something on the curve overloads the motor"),
    resonance: number("rev/s; 0 on a rigid base"),
    isolatesAbove: number("rev/s; 0 on a rigid base"),
  },
  "nearestPeak",
  "leastSteady",
  "unsteadyBelow",
  "overloadAbove",
);

/** The array with one fan out. */
export const oneFanOut = record({
  wanted: number("share of design airflow that the duty wants"),
  count: number("fans of the section"),
  cases: listOf(
    record({
      backdraftDampers: { type: "boolean" },
      shareAtSameSpeed: number("of design airflow, the others at the speed they had"),
      shareReached: number("of design airflow, the others as fast as they may, up to design"),
      fanSpeed: number("rev/s there"),
      limitedBy: { enum: ["nothing", "motor", "class", "speed control", "fixed speed"] },
      pressureToPeak: number("static pressure over peak there"),
      stable: number("1 when the others run steadily"),
      electricPower: number("W from the mains, all that turn"),
    }),
    "as built first",
  ),
});

/** The fans against one edition's allowances by component. */
export const powerAllowance = record({
  edition: text(),
  taken: listOf(
    record({ name: text(), power: number("W"), onlyIf: text("what has to be so for it to count") }, "onlyIf"),
    "what is allowed for",
  ),
  allowed: number("W of electric power for sure"),
  allowedAtMost: number("W with every row that may count"),
  drawnClean: number("W from the mains with filters clean"),
  drawnDirty: number("W from the mains with filters at change-out"),
  outcome: { enum: ["held", "exceeded", "cannot tell"] },
  missing: text("what has to be known before it can be told; empty where it can"),
  source: text("bibliography key and place"),
  certainty: text("what the figures rest on"),
});

/** The fans against the energy standard's limit. */
export const powerLimit = record({
  variable: { type: "boolean", description: "the airflow varies in operation" },
  flow: number("m³/s of standard air"),
  credits: listOf(record({ name: text(), pressure: number("Pa"), power: number("W") })),
  shaftLimit: number("W of shaft power, credits included"),
  nameplateLimit: number("W of nameplate power"),
  shaftPower: number("W of this unit's fans"),
  nameplate: number("W of this unit's motors"),
  source: text("bibliography key"),
  certainty: text("what the figures rest on"),
});
