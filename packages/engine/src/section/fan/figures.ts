import type { FigureLine, WorkingLine } from "../contract.ts";
import type { FanDesign } from "./design.ts";
import type { FanSectionRating } from "./rate.ts";

/** What a fan section shows, most important first. */
export const fanFigures: readonly FigureLine<FanSectionRating>[] = [
  { figure: "fanSpeed", name: "fan speed", quantity: "rotationalSpeed" },
  { figure: "fansRunning", name: "fans that turn", quantity: "count" },
  { figure: "backflow", name: "flow back through failed fans", quantity: "actualAirflow" },
  { figure: "flowPerFan", name: "airflow of each fan", quantity: "actualAirflow" },
  { figure: "staticPressure", name: "fan static pressure", quantity: "pressureDifference" },
  { figure: "fanTotalPressure", name: "fan total pressure", quantity: "pressureDifference" },
  { figure: "shaftPower", name: "shaft power of each fan", quantity: "shaftPower" },
  { figure: "electricPower", name: "electric power of all", quantity: "electricPower" },
  { figure: "staticEfficiency", name: "static efficiency", quantity: "share" },
  { figure: "totalEfficiency", name: "total efficiency", quantity: "share" },
  { figure: "energyIndex", name: "fan energy index", quantity: "factor" },
  { figure: "temperatureRise", name: "fan heat, rise", quantity: "temperatureDifference" },
  { figure: "pressureToPeak", name: "static pressure over peak at this speed", quantity: "share" },
  { figure: "flowToStable", name: "flow over smallest steady flow", quantity: "share" },
  { figure: "motorLoad", name: "motor load", quantity: "share" },
  { figure: "peakMotorLoad", name: "motor load at the curve's highest power", quantity: "share" },
  { figure: "tipSpeed", name: "tip speed", quantity: "velocity" },
  { figure: "tipSpeedShare", name: "tip speed over limit of the class", quantity: "share" },
  { figure: "outletVelocity", name: "outlet velocity", quantity: "velocity" },
  { figure: "inletVelocity", name: "velocity in the inlet's throat", quantity: "velocity" },
  { figure: "inletEffectLoss", name: "inlet effect, from memory", quantity: "pressureDifference" },
  { figure: "outletEffectLoss", name: "outlet effect, from memory", quantity: "pressureDifference" },
  { figure: "backdraftLossPressure", name: "backdraft damper", quantity: "pressureDifference" },
  { figure: "totalPressureRise", name: "total pressure added", quantity: "pressureDifference" },
  { figure: "motorOutput", name: "motor output, each", quantity: "shaftPower" },
  { figure: "motorInput", name: "motor input, each", quantity: "electricPower" },
  { figure: "frequencyRatio", name: "speed over springs' natural frequency", quantity: "factor" },
  { figure: "transmissibility", name: "force passed to the floor", quantity: "share" },
];

type Line = WorkingLine<FanDesign, FanSectionRating>;

const density = {
  symbol: "ρ",
  name: "density before the fan",
  quantity: "density",
  value: (rating: FanSectionRating) => rating.density,
} as const;
const tip = {
  symbol: "u",
  name: "tip speed",
  quantity: "velocity",
  value: (rating: FanSectionRating) => rating.tipSpeed,
} as const;
const diameter = {
  symbol: "D",
  name: "wheel diameter",
  quantity: "length",
  value: (_: FanSectionRating, design: FanDesign) => design.diameter,
} as const;
const flow = {
  symbol: "Q",
  name: "airflow of each fan",
  quantity: "actualAirflow",
  value: (rating: FanSectionRating) => rating.flowPerFan,
} as const;

/** The arithmetic behind the main figures. */
export const fanWorking: readonly Line[] = [
  {
    figure: "tipSpeed",
    name: "tip speed",
    quantity: "velocity",
    equation: "u = π D n",
    terms: [
      diameter,
      { symbol: "n", name: "fan speed", quantity: "rotationalSpeed", value: (rating) => rating.fanSpeed },
    ],
    evaluate: (rating, design) => Math.PI * design.diameter * rating.fanSpeed,
    source: "definition",
  },
  {
    figure: "staticPressure",
    name: "fan static pressure",
    quantity: "pressureDifference",
    equation: "p = ψ ρ u² / 2, ψ read from the curve at φ = 4 Q / (π D² u)",
    terms: [
      {
        symbol: "ψ",
        name: "static pressure coefficient",
        quantity: "factor",
        value: (rating) => rating.pressureCoefficient,
      },
      { symbol: "φ", name: "flow coefficient", quantity: "factor", value: (rating) => rating.flowCoefficient },
      density,
      tip,
    ],
    evaluate: (rating) =>
      rating.fanSpeed > 0
        ? rating.pressureCoefficient * 0.5 * rating.density * rating.tipSpeed ** 2
        : rating.staticPressure,
    source: "derived-here fan laws; the curve's source is its record's",
  },
  {
    figure: "fanTotalPressure",
    name: "fan total pressure",
    quantity: "pressureDifference",
    equation: "pt = p + ρ v² / 2",
    terms: [
      {
        symbol: "p",
        name: "fan static pressure",
        quantity: "pressureDifference",
        value: (rating) => rating.staticPressure,
      },
      density,
      { symbol: "v", name: "outlet velocity", quantity: "velocity", value: (rating) => rating.outletVelocity },
    ],
    evaluate: (rating) => rating.staticPressure + 0.5 * rating.density * rating.outletVelocity ** 2,
    source: "definition",
  },
  {
    figure: "totalPressureRise",
    name: "total pressure added",
    quantity: "pressureDifference",
    equation: "Δp = pt − inlet effect − outlet effect − backdraft damper",
    terms: [
      {
        symbol: "pt",
        name: "fan total pressure",
        quantity: "pressureDifference",
        value: (rating) => rating.fanTotalPressure,
      },
      {
        symbol: "inlet effect",
        name: "inlet effect",
        quantity: "pressureDifference",
        value: (rating) => rating.inletEffectLoss,
      },
      {
        symbol: "outlet effect",
        name: "outlet effect",
        quantity: "pressureDifference",
        value: (rating) => rating.outletEffectLoss,
      },
      {
        symbol: "backdraft damper",
        name: "backdraft damper",
        quantity: "pressureDifference",
        value: (rating) => rating.backdraftLossPressure,
      },
    ],
    evaluate: (rating) =>
      rating.fanTotalPressure - rating.inletEffectLoss - rating.outletEffectLoss - rating.backdraftLossPressure,
    source: "amca-201 effects from memory",
  },
  {
    figure: "shaftPower",
    name: "shaft power of each fan",
    quantity: "shaftPower",
    equation: "P = λ ρ π D² u³ / 8, λ read from the curve at φ",
    terms: [
      { symbol: "λ", name: "power coefficient", quantity: "factor", value: (rating) => rating.powerCoefficient },
      density,
      diameter,
      tip,
    ],
    evaluate: (rating, design) =>
      0.5 * rating.powerCoefficient * rating.density * 0.25 * Math.PI * design.diameter ** 2 * rating.tipSpeed ** 3,
    source: "derived-here fan laws; the curve's source is its record's",
  },
  {
    figure: "staticEfficiency",
    name: "static efficiency",
    quantity: "share",
    equation: "η = Q p / P",
    terms: [
      flow,
      {
        symbol: "p",
        name: "fan static pressure",
        quantity: "pressureDifference",
        value: (rating) => rating.staticPressure,
      },
      { symbol: "P", name: "shaft power", quantity: "shaftPower", value: (rating) => rating.shaftPower },
    ],
    evaluate: (rating) => (rating.fanSpeed > 0 ? (rating.flowPerFan * rating.staticPressure) / rating.shaftPower : 0),
    source: "definition",
  },
  {
    figure: "heatToAir",
    name: "heat to the air",
    quantity: "power",
    equation: "H = number of fans × power that stays in the stream",
    terms: [
      { symbol: "number", name: "fans that turn", quantity: "count", value: (rating) => rating.fansRunning },
      {
        symbol: "power",
        name: "motor input (motors in the stream) or shaft power",
        quantity: "power",
        value: (rating, design) => (design.motorsInAirstream ? rating.motorInput : rating.shaftPower),
      },
    ],
    evaluate: (rating, design) =>
      rating.fansRunning * (design.motorsInAirstream ? rating.motorInput : rating.shaftPower),
    source: "definition energy balance; the kinetic energy at the outlet ends as heat downstream",
  },
];
