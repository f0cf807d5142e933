import type { BeltDrive } from "#component/belt-drive";
import type { FanWheel } from "#component/fan-wheel";
import type { Motor } from "#component/motor";
import type { SpeedControl } from "#component/speed-control";
import type { Spring } from "#component/spring";
import { choice, component, factor, flag, group, integer, quantity, text, type ValuesOf } from "#form/field";
import { floorSpans } from "#standard/spring-deflection";

const declaredRatingFields = {
  number: text({ meaning: "Number of the rating or submittal", longest: 60 }),
  revision: text({ meaning: "Revision of it", longest: 20, default: "" }),
  airflow: quantity("actualAirflow", { meaning: "Actual airflow of each fan", minimum: "50 cfm" }),
  staticPressure: quantity("pressureDifference", { meaning: "Fan static pressure", minimum: "0.05 in.wg" }),
  speed: quantity("rotationalSpeed", { meaning: "Wheel speed", minimum: "50 rpm", maximum: "6000 rpm" }),
  shaftPower: quantity("shaftPower", { meaning: "Shaft power of each fan", minimum: "0.01 hp" }),
  density: quantity("density", {
    meaning: "Air density of the rating",
    default: "0.075 lb/ft³",
    minimum: "0.03 lb/ft³",
    maximum: "0.12 lb/ft³",
  }),
} as const;

/** What a job says of its fans. */
export const fanFields = {
  wheel: component<FanWheel>()("fan wheel", {
    meaning: "Line of fan wheels: housing, inlets and curve",
    default: "typical airfoil housed double inlet",
  }),
  diameter: quantity("length", { meaning: "Wheel diameter", minimum: "10 in", maximum: "90 in" }),
  class: text({ meaning: "Class of construction, as the wheel's record names it", default: "II", longest: 20 }),
  count: integer({
    meaning: "Number of equal fans side by side and above one another",
    default: 1,
    minimum: 1,
    maximum: 36,
  }),
  rows: integer({
    meaning: "Rows of an array of plenum wheels, one above another; left out, the squarest array",
    optional: true,
    minimum: 1,
    maximum: 12,
  }),
  drive: choice(["belt", "direct"], {
    meaning: "How the motor drives; left out, belt for housed fans and direct for plenum wheels",
    optional: true,
  }),
  belts: component<BeltDrive>()("belt drive", { meaning: "Belts of a belt drive", default: "typical V-belt" }),
  motor: component<Motor>()("motor", { meaning: "Line of motors", default: "typical premium 4 pole enclosed" }),
  motorPower: quantity("shaftPower", {
    meaning: "Rated power of each motor",
    minimum: "0.25 hp",
    maximum: "250 hp",
  }),
  motorsInAirstream: flag({ meaning: "Motors and drives stand in the air stream and warm it", default: true }),
  speedControlled: flag({ meaning: "Speed follows the flow wanted", default: true }),
  speedControl: component<SpeedControl>()("speed control", {
    meaning: "Speed control of each motor",
    default: "typical variable-frequency drive",
  }),
  fixedSpeed: quantity("rotationalSpeed", {
    meaning:
      "Wheel speed of a drive without speed control; left out, the one that design needs, or a direct motor's own",
    optional: true,
    minimum: "100 rpm",
    maximum: "4500 rpm",
  }),
  isolation: choice(["springs", "rigid"], { meaning: "What the fan stands on", default: "springs" }),
  springs: component<Spring>()("spring", { meaning: "Springs under the fan", default: "typical spring 2 in" }),
  floor: choice(floorSpans, { meaning: "Span of the floor under the unit", default: "slab on grade" }),
  flexibleConnection: quantity("length", {
    meaning: "Flexible connection at a housed fan's outlet; 0 for none",
    default: "6 in",
    minimum: "0 in",
    maximum: "24 in",
  }),
  discharge: choice(["forward", "up", "down"], { meaning: "Where a housed fan blows", default: "forward" }),
  outletDuct: quantity("length", {
    meaning: "Straight duct of the fan outlet's size behind a housed fan",
    default: "0 in",
    minimum: "0 in",
    maximum: "30 ft",
  }),
  inletClearance: quantity("length", {
    meaning: "Free distance before each inlet; left out, what the cabinet leaves",
    optional: true,
    minimum: "2 in",
    maximum: "20 ft",
  }),
  upstreamSpace: quantity("length", {
    meaning: "Clear space between the section before and the fan",
    default: "24 in",
    minimum: "0 in",
    maximum: "20 ft",
  }),
  backdraftDampers: flag({ meaning: "A damper at each fan that closes when it stops", default: false }),
  backdraftLoss: factor({
    meaning: "Loss of an open backdraft damper, velocity pressures on its own face; the default from memory",
    default: 1,
    minimum: 0,
    maximum: 10,
  }),
  bearingLoadRating: quantity("force", {
    meaning: "Basic dynamic load rating of each fan bearing; left out, the one that the life asks is told",
    optional: true,
    minimum: "100 lbf",
  }),
  bearingLife: quantity("time", {
    meaning: "Running time that nine of ten fan bearings must reach (L10); the mean life is five times that",
    default: "40000 h",
    minimum: "1000 h",
    maximum: "1000000 h",
  }),
  declaredRating: group(declaredRatingFields, {
    meaning: "The seller's rating of the fan that was bought, to be held against ours",
    optional: true,
  }),
} as const;

/** What a job says of its fans, read. */
export type FanValues = ValuesOf<typeof fanFields>;
