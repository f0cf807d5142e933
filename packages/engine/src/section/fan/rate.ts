import { beltEfficiencyFromPower } from "#component/belt-drive";
import { fanEnergyIndex } from "#component/fan-energy-index";
import {
  fanPeakPower,
  fanPeakPressure,
  fanPressureFromFlow,
  fanShaftPowerFromFlow,
  flowCoefficientFromFlow,
  tipSpeedFromSpeed,
} from "#component/fan-performance";
import { motorAllowedPower, motorInputPower } from "#component/motor";
import { speedControlInputPower } from "#component/speed-control";
import { springTransmissibility } from "#component/spring";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import type { FanRating, SectionCondition } from "../contract.ts";
import { settleDryBulb } from "../settle-state.ts";
import { actualAirflow, airDensity, beginRating, endRating, enthalpyFlow } from "../station.ts";
import type { FanDesign } from "./design.ts";
import { backdraftLossFromFlow, backflowAt, outletLossOf } from "./rise.ts";
import { highestSpeed } from "./speed-range.ts";

/** What a fan section reports; figures of one fan where not said otherwise. */
export interface FanSectionRating extends FanRating {
  /** Fans that turn. */
  fansRunning: number;
  /** m³/s that the running fans press back through those that have failed, all together. */
  backflow: number;
  /** rev/s of the wheel. */
  fanSpeed: number;
  /** m³/s of one fan at the density before it. */
  flowPerFan: number;
  density: number;
  tipSpeed: number;
  tipSpeedShare: number;
  inletVelocity: number;
  outletVelocity: number;
  flowCoefficient: number;
  pressureCoefficient: number;
  powerCoefficient: number;
  inletEffectLoss: number;
  outletEffectLoss: number;
  backdraftLossPressure: number;
  /** Pa that the whole section adds: fan total pressure less its losses. */
  totalPressureRise: number;
  staticEfficiency: number;
  totalEfficiency: number;
  shaftPower: number;
  peakShaftPower: number;
  driveEfficiency: number;
  motorOutput: number;
  motorInput: number;
  /** Output over input of the motor at its load, and input of motor over that of its speed control; 1 without one. */
  motorLoadEfficiency: number;
  speedControlEfficiency: number;
  motorAllowed: number;
  motorLoad: number;
  /** The same at the highest shaft power anywhere on the curve at this speed. */
  peakMotorLoad: number;
  peakPressure: number;
  /** Static pressure over the peak at this speed. */
  pressureToPeak: number;
  /** Flow over the smallest steady flow at this speed. */
  flowToStable: number;
  /** 1 when the fan runs steadily, 0 left of that; 1 also when it stands. */
  stable: number;
  temperatureRise: number;
  /** Fan energy index of one fan: on total pressure where it blows into a duct, on static otherwise; 0 when it stands. */
  energyIndex: number;
  /** Disturbing over natural frequency, and the force passed on; 0 and 1 on a rigid base. */
  frequencyRatio: number;
  transmissibility: number;
}

const atRest = recordAtRest<FanSectionRating>({
  ...createSectionRating(),
  electricPower: 0,
  fansRunning: 0,
  backflow: 0,
  fanSpeed: 0,
  speedAllowed: 0,
  flowPerFan: 0,
  density: 0,
  tipSpeed: 0,
  tipSpeedShare: 0,
  inletVelocity: 0,
  outletVelocity: 0,
  flowCoefficient: 0,
  pressureCoefficient: 0,
  powerCoefficient: 0,
  staticPressure: 0,
  outletVelocityPressure: 0,
  fanTotalPressure: 0,
  inletEffectLoss: 0,
  outletEffectLoss: 0,
  backdraftLossPressure: 0,
  totalPressureRise: 0,
  staticEfficiency: 0,
  totalEfficiency: 0,
  shaftPower: 0,
  peakShaftPower: 0,
  driveEfficiency: 1,
  motorOutput: 0,
  motorInput: 0,
  motorLoadEfficiency: 0,
  speedControlEfficiency: 1,
  motorAllowed: 0,
  motorLoad: 0,
  peakMotorLoad: 0,
  peakPressure: 0,
  pressureToPeak: 0,
  flowToStable: 0,
  stable: 1,
  temperatureRise: 0,
  energyIndex: 0,
  frequencyRatio: 0,
  transmissibility: 1,
});

/** A record for a fan section. */
export function createFanRating(): FanSectionRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** rev/s: a wheel slower than this stands; its pressure would be a millionth of a Pascal. */
const standing = 1e-3;

/** Rates the fans at the flow that enters and the speed that the unit has set. */
export function rateFan(design: FanDesign, air: Air, at: SectionCondition, out: FanSectionRating): void {
  beginRating(air, out);
  const { operation } = at;
  out.fanSpeed = operation.fansRunning && operation.fanSpeed > standing ? operation.fanSpeed : 0;
  out.density = airDensity(out.entering);
  const flow = actualAirflow(out.entering);
  out.faceVelocity = flow / design.cabinetArea;
  const failed = out.fanSpeed > 0 ? Math.min(operation.fansFailed ?? 0, design.count - 1) : 0;
  out.fansRunning = out.fanSpeed > 0 ? design.count - failed : 0;
  out.backflow = failed > 0 ? failed * backflowAt(design, flow, failed, out.fanSpeed, out.density) : 0;
  // Fans that all stand let the flow through together.
  out.flowPerFan = (flow + out.backflow) / (out.fansRunning === 0 ? design.count : out.fansRunning);
  ratePressure(design, out);
  ratePower(design, out);
  rateAir(design, out);
}

function ratePressure(design: FanDesign, out: FanSectionRating): void {
  const { wheel, diameter } = design;
  const { density, flowPerFan, fanSpeed } = out;
  out.tipSpeed = tipSpeedFromSpeed(diameter, fanSpeed);
  out.inletVelocity = flowPerFan / design.inletArea;
  out.outletVelocity = design.housed ? flowPerFan / design.outletArea : 0;
  const inletVelocityPressure = 0.5 * density * out.inletVelocity ** 2;
  out.outletVelocityPressure = 0.5 * density * out.outletVelocity ** 2;
  out.staticPressure = fanPressureFromFlow(wheel.curve, diameter, fanSpeed, density, flowPerFan);
  out.fanTotalPressure = out.staticPressure + out.outletVelocityPressure;
  out.inletEffectLoss = design.inletLoss * inletVelocityPressure;
  out.outletEffectLoss = outletLossOf(design, out.outletVelocity) * out.outletVelocityPressure;
  out.backdraftLossPressure = backdraftLossFromFlow(design, density, flowPerFan);
  out.totalPressureRise = out.fanTotalPressure - out.inletEffectLoss - out.outletEffectLoss - out.backdraftLossPressure;
  out.totalPressureLoss = -out.totalPressureRise;
  const scale = 0.5 * density * out.tipSpeed ** 2;
  out.flowCoefficient = fanSpeed > 0 ? flowCoefficientFromFlow(flowPerFan, diameter, fanSpeed) : 0;
  out.pressureCoefficient = fanSpeed > 0 ? out.staticPressure / scale : 0;
}

function ratePower(design: FanDesign, out: FanSectionRating): void {
  const { wheel, diameter, motorPower } = design;
  const { density, flowPerFan, fanSpeed } = out;
  out.shaftPower = fanShaftPowerFromFlow(wheel.curve, diameter, fanSpeed, density, flowPerFan);
  out.driveEfficiency = driveEfficiencyOf(design, out.shaftPower);
  out.motorOutput = out.shaftPower / out.driveEfficiency;
  out.motorInput = fanSpeed > 0 ? motorInputPower(motorPower, design.motorEfficiency, out.motorOutput) : 0;
}

/** Adds what the fans draw from the mains, what is left to their limits, and how good they are. */
export function completeFan(design: FanDesign, at: SectionCondition, out: FanSectionRating): void {
  completePower(design, at, out);
  rateMargins(design, out);
}

function completePower(design: FanDesign, at: SectionCondition, out: FanSectionRating): void {
  const { wheel, diameter, motorPower, motor } = design;
  const { density, flowPerFan, fanSpeed } = out;
  const running = fanSpeed > 0;
  out.peakShaftPower = running ? fanPeakPower(wheel.curve, diameter, fanSpeed, density) : 0;
  const disc = 0.25 * Math.PI * diameter ** 2;
  out.powerCoefficient = running ? out.shaftPower / (0.5 * density * disc * out.tipSpeed ** 3) : 0;
  out.staticEfficiency = running ? (flowPerFan * out.staticPressure) / out.shaftPower : 0;
  out.totalEfficiency = running ? (flowPerFan * out.fanTotalPressure) / out.shaftPower : 0;
  const altitude = altitudeFromPressure(at.condition.barometricPressure);
  out.motorAllowed = motorAllowedPower(motorPower, motor.serviceFactor, design.speedControlled, altitude);
  out.motorLoad = out.motorOutput / motorPower;
  out.peakMotorLoad = out.peakShaftPower / driveEfficiencyOf(design, out.peakShaftPower) / motorPower;
  const fed =
    design.speedControlled && running ? speedControlInputPower(controlSize(design), out.motorInput) : out.motorInput;
  out.motorLoadEfficiency = running ? out.motorOutput / out.motorInput : 0;
  out.speedControlEfficiency = running ? out.motorInput / fed : 1;
  out.electricPower = out.fansRunning * fed;
  const pressure = design.housed ? out.fanTotalPressure : out.staticPressure;
  const rated = running && pressure > 0;
  out.energyIndex = rated ? fanEnergyIndex(flowPerFan, pressure, density, !design.housed, fed) : 0;
}

/** W of output that a speed control of the motor's size is rated for. */
export function controlSize(design: FanDesign): number {
  return design.motorPower / design.motorEfficiency;
}

/** Share of the shaft power that belts pass on; 1 for a direct drive. */
export function driveEfficiencyOf(design: FanDesign, power: number): number {
  return design.drive === "belt" && power > 0 ? beltEfficiencyFromPower(design.belts.band, power) : 1;
}

function rateMargins(design: FanDesign, out: FanSectionRating): void {
  const { curve } = design.wheel;
  const running = out.fanSpeed > 0;
  out.tipSpeedShare = out.tipSpeed / design.tipSpeedLimit;
  // Power goes nearly with the cube of speed along a system's curve.
  const byMotor = running ? out.fanSpeed * Math.cbrt(out.motorAllowed / out.motorOutput) : design.maximumSpeed;
  out.speedAllowed = Math.min(highestSpeed(design), byMotor);
  out.peakPressure = fanPeakPressure(curve, design.diameter, out.fanSpeed, out.density);
  out.pressureToPeak = running ? out.staticPressure / out.peakPressure : 0;
  out.flowToStable = running ? out.flowCoefficient / curve.stableFlow : 0;
  out.stable = !running || out.flowToStable >= 1 ? 1 : 0;
  const onSprings = design.naturalFrequency > 0 && running;
  out.frequencyRatio = onSprings ? out.fanSpeed / design.naturalFrequency : 0;
  out.transmissibility = onSprings ? springTransmissibility(out.frequencyRatio, design.springs.damping) : 1;
}

/** All power that stays in the stream warms it; pressure and state of the leaving air. */
function rateAir(design: FanDesign, out: FanSectionRating): void {
  const { entering, leaving } = out;
  const each = design.motorsInAirstream ? out.motorInput : out.shaftPower;
  out.heatToAir = out.fansRunning * each;
  if (out.heatToAir > 0) {
    out.waterToAir = -settleDryBulb(leaving, enthalpyFlow(entering) + out.heatToAir);
  }
  out.temperatureRise = leaving.dryBulb - entering.dryBulb;
  leaving.coldestFilament = Math.min(entering.coldestFilament + out.temperatureRise, leaving.dryBulb);
  // A housed fan blows through its blast area; behind plenum wheels the profile is uneven by common experience.
  leaving.peakToMeanVelocity = design.housed ? 1 / design.wheel.blastArea : 1.5;
  endRating(out, design.leavingArea);
}

/** m: altitude at which the standard atmosphere has this pressure (Pa). */
function altitudeFromPressure(pressure: number): number {
  return (1 - (pressure / 101_325) ** (1 / 5.2559)) / 2.25577e-5;
}
