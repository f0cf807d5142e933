import { powerWorking } from "./power-working.ts";
import { backdraftLossFromFlow, outletLossOf } from "./rise.ts";
import { type FanWorkingLine, term } from "./working-line.ts";

const density = term("ρ", "density before the fan", "density", (rating) => rating.density);
const tip = term("u", "tip speed", "velocity", (rating) => rating.tipSpeed);
const diameter = term("D", "wheel diameter", "length", (_, design) => design.diameter);
const staticPressure = term("p", "fan static pressure", "pressureDifference", (rating) => rating.staticPressure);
const outletVelocity = term("v", "outlet velocity", "velocity", (rating) => rating.outletVelocity);
const lawsSource = "derived-here fan laws; the curve's source is its record's";

const pressureWorking: readonly FanWorkingLine[] = [
  {
    figure: "tipSpeed",
    name: "tip speed",
    quantity: "velocity",
    equation: "u = π D n",
    terms: [diameter, term("n", "fan speed", "rotationalSpeed", (rating) => rating.fanSpeed)],
    evaluate: (rating, design) => Math.PI * design.diameter * rating.fanSpeed,
    source: "definition",
  },
  {
    figure: "staticPressure",
    name: "fan static pressure",
    quantity: "pressureDifference",
    equation: "p = ψ ρ u² / 2, ψ read from the curve at φ = 4 Q / (π D² u)",
    terms: [
      term("ψ", "static pressure coefficient", "factor", (rating) => rating.pressureCoefficient),
      term("φ", "flow coefficient", "factor", (rating) => rating.flowCoefficient),
      density,
      tip,
    ],
    evaluate: (rating) =>
      rating.fanSpeed > 0
        ? rating.pressureCoefficient * 0.5 * rating.density * rating.tipSpeed ** 2
        : rating.staticPressure,
    source: lawsSource,
  },
  {
    figure: "fanTotalPressure",
    name: "fan total pressure",
    quantity: "pressureDifference",
    equation: "pt = p + ρ v² / 2",
    terms: [staticPressure, density, outletVelocity],
    evaluate: (rating) => rating.staticPressure + 0.5 * rating.density * rating.outletVelocity ** 2,
    source: "definition",
  },
  {
    figure: "inletEffectLoss",
    name: "inlet effect, from memory",
    quantity: "pressureDifference",
    equation: "Δp = K ρ V² / 2, K by the clearance before the inlet over the wheel's diameter",
    terms: [
      term("K", "velocity pressures in the throat", "factor", (_, design) => design.inletLoss),
      term("clearance", "free before each inlet", "length", (_, design) => design.clearance),
      diameter,
      density,
      term("V", "velocity in the inlet's throat", "velocity", (rating) => rating.inletVelocity),
    ],
    evaluate: (rating, design) => design.inletLoss * 0.5 * rating.density * rating.inletVelocity ** 2,
    source: "amca-201 from memory",
  },
  {
    figure: "outletEffectLoss",
    name: "outlet effect, from memory",
    quantity: "pressureDifference",
    equation: "Δp = K ρ v² / 2, K by blast area and straight duct over the effective length",
    terms: [
      term("K", "velocity pressures in the outlet", "factor", (rating, design) =>
        outletLossOf(design, rating.outletVelocity),
      ),
      term("blast area", "over the outlet's", "factor", (_, design) => design.wheel.blastArea),
      term("duct", "straight behind the outlet", "length", (_, design) => design.outletDuct),
      density,
      outletVelocity,
    ],
    evaluate: (rating, design) =>
      outletLossOf(design, rating.outletVelocity) * 0.5 * rating.density * rating.outletVelocity ** 2,
    source: "amca-201 from memory",
  },
  {
    figure: "backdraftLossPressure",
    name: "backdraft damper",
    quantity: "pressureDifference",
    equation: "Δp = K ρ v² / 2, v = Q / A on the open damper's own face",
    terms: [
      term("K", "velocity pressures on the damper's face", "factor", (_, design) =>
        design.backdraftDampers ? design.backdraftLoss : 0,
      ),
      term("Q", "airflow of each fan", "actualAirflow", (rating) => rating.flowPerFan),
      term("A", "face of the damper", "area", (_, design) => design.backdraftFace),
      density,
    ],
    evaluate: ({ density, flowPerFan }, design) => backdraftLossFromFlow(design, density, flowPerFan),
    source: "from-memory loss of open blades",
  },
  {
    figure: "totalPressureRise",
    name: "total pressure added",
    quantity: "pressureDifference",
    equation: "Δp = pt − inlet effect − outlet effect − backdraft damper",
    terms: [
      term("pt", "fan total pressure", "pressureDifference", (rating) => rating.fanTotalPressure),
      term("inlet effect", "inlet effect", "pressureDifference", (rating) => rating.inletEffectLoss),
      term("outlet effect", "outlet effect", "pressureDifference", (rating) => rating.outletEffectLoss),
      term("backdraft damper", "backdraft damper", "pressureDifference", (rating) => rating.backdraftLossPressure),
    ],
    evaluate: (rating) =>
      rating.fanTotalPressure - rating.inletEffectLoss - rating.outletEffectLoss - rating.backdraftLossPressure,
    source: "amca-201 effects from memory",
  },
  {
    figure: "pressureToPeak",
    name: "static pressure over peak at this speed",
    quantity: "share",
    equation: "p / p_peak",
    terms: [
      staticPressure,
      term("p_peak", "peak of the curve at this speed and density", "pressureDifference", (r) => r.peakPressure),
    ],
    evaluate: (rating) => (rating.fanSpeed > 0 ? rating.staticPressure / rating.peakPressure : 0),
    source: lawsSource,
  },
  {
    figure: "flowToStable",
    name: "flow over smallest steady flow",
    quantity: "share",
    equation: "φ / φ_steady",
    terms: [
      term("φ", "flow coefficient", "factor", (rating) => rating.flowCoefficient),
      term("φ_steady", "smallest steady one, the record's", "factor", (_, design) => design.wheel.curve.stableFlow),
    ],
    evaluate: (rating, design) => (rating.fanSpeed > 0 ? rating.flowCoefficient / design.wheel.curve.stableFlow : 0),
    source: "common-practice smallest steady flow, or the peak of a test",
  },
  {
    figure: "shaftPower",
    name: "shaft power of each fan",
    quantity: "shaftPower",
    equation: "P = λ ρ π D² u³ / 8, λ read from the curve at φ",
    terms: [term("λ", "power coefficient", "factor", (rating) => rating.powerCoefficient), density, diameter, tip],
    evaluate: (rating, design) =>
      0.5 * rating.powerCoefficient * rating.density * 0.25 * Math.PI * design.diameter ** 2 * rating.tipSpeed ** 3,
    source: lawsSource,
  },
  {
    figure: "staticEfficiency",
    name: "static efficiency",
    quantity: "share",
    equation: "η = Q p / P",
    terms: [
      term("Q", "airflow of each fan", "actualAirflow", (rating) => rating.flowPerFan),
      staticPressure,
      term("P", "shaft power", "shaftPower", (rating) => rating.shaftPower),
    ],
    evaluate: (rating) => (rating.fanSpeed > 0 ? (rating.flowPerFan * rating.staticPressure) / rating.shaftPower : 0),
    source: "definition",
  },
];

/** The arithmetic behind the main figures. */
export const fanWorking: readonly FanWorkingLine[] = [...pressureWorking, ...powerWorking];
