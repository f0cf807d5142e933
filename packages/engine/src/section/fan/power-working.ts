import { referenceFanElectricPower, referenceFanShaftPower } from "#component/fan-energy-index";
import { motorInputPower } from "#component/motor";
import { speedControlInputPower } from "#component/speed-control";
import { controlSize, driveEfficiencyOf, type FanSectionRating } from "./rate.ts";
import { type FanWorkingLine, term } from "./working-line.ts";

const shaftPower = term("P_fan", "shaft power of the fan", "shaftPower", (rating) => rating.shaftPower);
const motorOutput = term("P", "motor output", "shaftPower", (rating) => rating.motorOutput);
const plate = term("P_N", "on the plate", "shaftPower", (_, design) => design.motorPower);
const running = term("number", "fans that turn", "count", (rating) => rating.fansRunning);

/** W of one fan from the mains. */
function mainsOfOne({ electricPower, fansRunning }: FanSectionRating): number {
  return fansRunning > 0 ? electricPower / fansRunning : 0;
}

/** The arithmetic of drive, motor, speed control and what becomes of their power. */
export const powerWorking: readonly FanWorkingLine[] = [
  {
    figure: "driveEfficiency",
    name: "belts' efficiency",
    quantity: "share",
    equation: "η = exp(c₁ + c₂ y + … + c₅ y⁴), y = ln(P_fan / hp), of the band; 1 for a direct drive",
    terms: [shaftPower],
    evaluate: (rating, design) => driveEfficiencyOf(design, rating.shaftPower),
    source: "amca-203 belts, fitted in energyplus-engineering-reference",
  },
  {
    figure: "motorOutput",
    name: "motor output, each",
    quantity: "shaftPower",
    equation: "P = P_fan / η",
    terms: [shaftPower, term("η", "belts' efficiency", "share", (rating) => rating.driveEfficiency)],
    evaluate: (rating) => rating.shaftPower / rating.driveEfficiency,
    source: "definition",
  },
  {
    figure: "motorLoad",
    name: "motor load",
    quantity: "share",
    equation: "x = P / P_N",
    terms: [motorOutput, plate],
    evaluate: (rating, design) => rating.motorOutput / design.motorPower,
    source: "definition",
  },
  {
    figure: "motorLoadEfficiency",
    name: "motor's efficiency at this load",
    quantity: "share",
    equation: "η = η_N f(x)/f(1), x = P/P_N, f the part-load curve of motors of this size",
    terms: [
      term(
        "η_N",
        "at full load, as the regulation asks [10-cfr-431-25]",
        "share",
        (_, design) => design.motorEfficiency,
      ),
      motorOutput,
      plate,
      term("f(x)/f(1)", "part-load curve over that at full load", "factor", (rating, design) =>
        rating.fanSpeed > 0 ? rating.motorOutput / motorInputPower(design.motorPower, 1, rating.motorOutput) : 0,
      ),
    ],
    evaluate: (rating, design) =>
      rating.fanSpeed > 0
        ? (design.motorEfficiency * rating.motorOutput) / motorInputPower(design.motorPower, 1, rating.motorOutput)
        : 0,
    source: "energyplus-engineering-reference fan component model, motor part load",
  },
  {
    figure: "motorInput",
    name: "motor input, each",
    quantity: "electricPower",
    equation: "P_in = P / η",
    terms: [motorOutput, term("η", "motor's efficiency at this load", "share", (rating) => rating.motorLoadEfficiency)],
    evaluate: (rating) => (rating.fanSpeed > 0 ? rating.motorOutput / rating.motorLoadEfficiency : 0),
    source: "definition",
  },
  {
    figure: "speedControlEfficiency",
    name: "speed control's efficiency",
    quantity: "share",
    equation: "η = g(x), x = P_in/P_N,in, g the curve of controls of this size; 1 without one",
    terms: [
      term("P_in", "motor input", "electricPower", (rating) => rating.motorInput),
      term("P_N,in", "motor input at its plate's power", "electricPower", (_, design) => controlSize(design)),
    ],
    evaluate: (rating, design) =>
      design.speedControlled && rating.fanSpeed > 0
        ? rating.motorInput / speedControlInputPower(controlSize(design), rating.motorInput)
        : 1,
    source: "energyplus-engineering-reference variable-frequency drive",
  },
  {
    figure: "electricPower",
    name: "electric power of all",
    quantity: "electricPower",
    equation: "number × P_in / η",
    terms: [
      running,
      term("P_in", "motor input", "electricPower", (rating) => rating.motorInput),
      term("η", "speed control's efficiency", "share", (rating) => rating.speedControlEfficiency),
    ],
    evaluate: (rating) => (rating.fansRunning * rating.motorInput) / rating.speedControlEfficiency,
    source: "definition",
  },
  {
    figure: "energyIndex",
    name: "fan energy index",
    quantity: "factor",
    equation: "P_ref / P, P_ref of a reference fan with reference belts and motor at the same flow and pressure",
    terms: [
      term("Q", "airflow of each fan", "actualAirflow", (rating) => rating.flowPerFan),
      term("p", "total pressure into a duct, static without", "pressureDifference", (rating, { housed }) =>
        housed ? rating.fanTotalPressure : rating.staticPressure,
      ),
      term("P_ref", "electric power of the reference", "electricPower", (rating, { housed }) =>
        rating.energyIndex > 0 ? referencePower(rating, housed) : 0,
      ),
      term("P", "electric power of one fan", "electricPower", mainsOfOne),
    ],
    evaluate: (rating, { housed }) =>
      rating.energyIndex > 0 ? referencePower(rating, housed) / mainsOfOne(rating) : 0,
    source: "amca-208 in the form read in doe-measur; reference on static pressure from memory",
  },
  {
    figure: "heatToAir",
    name: "heat to the air",
    quantity: "power",
    equation: "H = number of fans × power that stays in the stream",
    terms: [
      running,
      term("power", "motor input (motors in the stream) or shaft power", "power", (rating, design) =>
        design.motorsInAirstream ? rating.motorInput : rating.shaftPower,
      ),
    ],
    evaluate: (rating, design) =>
      rating.fansRunning * (design.motorsInAirstream ? rating.motorInput : rating.shaftPower),
    source: "definition energy balance; the kinetic energy at the outlet ends as heat downstream",
  },
];

function referencePower(rating: FanSectionRating, housed: boolean): number {
  const pressure = housed ? rating.fanTotalPressure : rating.staticPressure;
  return referenceFanElectricPower(referenceFanShaftPower(rating.flowPerFan, pressure, rating.density, !housed));
}
