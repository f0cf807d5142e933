import { dryAirPressureDrop } from "#component/coil/air-pressure";
import { liquidPressureDrop } from "#component/coil/liquid-pressure";
import { solveCoil } from "#component/coil/march";
import type { CoilInlet } from "#component/coil/performance";
import type { ExhaustAir } from "#duty/condition";
import { type Air, createAir } from "../air.ts";
import { createSectionRating, recordAtRest } from "../base-rating.ts";
import { setFreezeFigures, standingLiquid } from "../coil/freeze.ts";
import { type LiquidCoilFigures, noLiquidCoilFigures, setLiquidFigures } from "../coil/liquid.ts";
import { createCoilInlet, setCoilPressure, setInletAir, setLeavingAir } from "../coil/state.ts";
import type { SectionCondition } from "../contract.ts";
import { roomOf } from "../room.ts";
import { beginRating } from "../station.ts";
import type { RecoveryCoilDesign } from "./design.ts";
import { type BypassSearch, balanceLoop, createBypassSearch, createLoop, findBypass, type Loop } from "./loop.ts";

/** A recovery coil at a condition. Liquid figures are those of the supply coil. */
export interface RecoveryCoilRating extends LiquidCoilFigures {
  /** W with no liquid led round the supply coil. */
  fullCapacity: number;
  /** Share of the loop that is led round it. */
  bypassShare: number;
  /** Supply air's change over the difference between exhaust and supply air. */
  temperatureEffectiveness: number;
  /** Pa that the liquid loses in both coils, pipes between them not counted. */
  loopPressureDrop: number;
  /** °C of liquid into the exhaust coil, and the lowest let in. */
  intoExhaust: number;
  frostLimit: number;
  exhaustLeavingDryBulb: number;
  exhaustLeavingHumidityRatio: number;
  /** Pa of the exhaust air over dry fins. */
  exhaustDryLoss: number;
  /** kg/s of condensate in the exhaust, °C of its coldest surface. */
  exhaustCondensate: number;
  exhaustColdestSurface: number;
  /** K of that surface above 0 °C; W that the frost limit takes off what the set point would take; what the valve obeys. */
  frostMargin: number;
  frostGivenUp: number;
  bypassFor: "nothing" | "the set point" | "the frost limit";
  wantedLeaving: number;
}

const atRest = recordAtRest<RecoveryCoilRating>({
  ...createSectionRating(),
  ...noLiquidCoilFigures,
  fullCapacity: 0,
  bypassShare: 0,
  temperatureEffectiveness: 0,
  loopPressureDrop: 0,
  intoExhaust: 0,
  frostLimit: 0,
  exhaustLeavingDryBulb: 0,
  exhaustLeavingHumidityRatio: 0,
  exhaustDryLoss: 0,
  exhaustCondensate: 0,
  exhaustColdestSurface: 0,
  frostMargin: 0,
  frostGivenUp: 0,
  bypassFor: "nothing",
  wantedLeaving: 0,
});

/** A record to be filled. */
export function createRecoveryCoilRating(): RecoveryCoilRating {
  return { ...atRest, entering: createAir(), leaving: createAir() };
}

/** K between exhaust and entering air below which the pump rests. */
const leastDifference = 1;

/** The loop with all its liquid through the supply coil, and with what the valve leads round it. */
interface LoopRoom {
  readonly whole: Loop;
  readonly throttled: Loop;
  readonly search: BypassSearch;
  /** Of the two, how the loop runs. */
  run: Loop;
}

function createLoopRoom(): LoopRoom {
  const whole = createLoop();
  return { whole, throttled: createLoop(), search: createBypassSearch(), run: whole };
}

/** Rates the loop: heat flows from the warmer air to the colder; the valve keeps set point and frost limit. */
export function rateRecoveryCoil(
  design: RecoveryCoilDesign,
  air: Air,
  at: SectionCondition,
  out: RecoveryCoilRating,
): void {
  beginRating(air, out);
  const room = roomOf(out, createLoopRoom);
  const stream = at.condition.exhaust;
  out.frostLimit = design.frostLimit;
  out.frostGivenUp = 0;
  out.bypassFor = "nothing";
  const wanted = wantedOf(air, stream, at);
  out.wantedLeaving = wanted ?? air.dryBulb;
  const loop =
    stream === undefined || wanted === undefined
      ? rest(design, room, stream, air, out)
      : run(design, room, stream, air, out);
  room.run = loop;
  const { performance } = loop.supply;
  setLeavingAir(design.block, performance, out);
  setCoilPressure(design.block, performance.wetShare, out);
}

/** Adds the liquid's side, and how the coil stands to frost. */
export function completeRecoveryCoil(design: RecoveryCoilDesign, at: SectionCondition, out: RecoveryCoilRating): void {
  const loop = roomOf(out, createLoopRoom).run;
  const { performance, inlet } = loop.supply;
  const { dryBulb } = out.entering;
  const full = design.loopFlow / design.block.stacked;
  setLiquidFigures(
    design.block,
    design.liquid,
    loop.intoSupply,
    inlet.liquidFlow,
    full,
    design.connection,
    performance,
    out,
  );
  out.bypassShare = inlet.liquidFlow > 0 ? loop.bypassShare : 0;
  out.intoExhaust = loop.intoExhaust;
  const remoteFlow = inlet.liquidFlow > 0 ? design.loopFlow / design.exhaust.stacked : 0;
  out.loopPressureDrop =
    out.liquidPressureDrop +
    liquidPressureDrop(design.exhaust.coil, design.liquid, remoteFlow, loop.intoExhaust, design.exhaustConnection);
  out.leavingDryBulb = out.leaving.dryBulb;
  out.frostMargin = out.exhaustColdestSurface;
  const difference = (at.condition.exhaust?.dryBulb ?? dryBulb) - dryBulb;
  out.temperatureEffectiveness = inlet.liquidFlow > 0 ? (out.leavingDryBulb - dryBulb) / difference : 0;
  setFreezeFigures(design.block, standingLiquid(design.liquid, out, false), at, out);
}

/** °C that the loop works towards; undefined where it has nothing to give or nobody asks. */
function wantedOf(air: Air, stream: ExhaustAir | undefined, at: SectionCondition): number | undefined {
  const { fansRunning, heatingLeaving, coolingLeaving } = at.operation;
  if (stream === undefined || !fansRunning || !(stream.dryAirFlow > 0)) return undefined;
  const difference = stream.dryBulb - air.dryBulb;
  if (difference > leastDifference && heatingLeaving !== undefined && heatingLeaving > air.dryBulb)
    return heatingLeaving;
  if (difference < -leastDifference && coolingLeaving !== undefined && coolingLeaving < air.dryBulb)
    return coolingLeaving;
  return undefined;
}

/** The pump rests: liquid in the tubes takes the temperature of the air. */
function rest(
  design: RecoveryCoilDesign,
  { whole }: LoopRoom,
  stream: ExhaustAir | undefined,
  air: Air,
  out: RecoveryCoilRating,
): Loop {
  const { inlet, work, performance } = whole.supply;
  setInletAir(design.block, air, inlet);
  inlet.liquid = design.liquid;
  inlet.liquidTemperature = air.dryBulb;
  inlet.liquidFlow = 0;
  solveCoil(design.block.coil, inlet, work, performance);
  whole.intoSupply = air.dryBulb;
  whole.outOfSupply = air.dryBulb;
  whole.intoExhaust = air.dryBulb;
  whole.bypassShare = 1;
  out.fullCapacity = 0;
  out.exhaustLeavingDryBulb = stream?.dryBulb ?? air.dryBulb;
  out.exhaustLeavingHumidityRatio = stream?.humidityRatio ?? air.humidityRatio;
  out.exhaustDryLoss = 0;
  out.exhaustCondensate = 0;
  out.exhaustColdestSurface = out.exhaustLeavingDryBulb;
  return whole;
}

/** The exhaust air of one of the remote coils, before its liquid is known. */
export function exhaustInlet(design: RecoveryCoilDesign, stream: ExhaustAir, barometricPressure: number): CoilInlet {
  const inlet = createCoilInlet();
  setExhaustAir(design, stream, barometricPressure, inlet);
  return inlet;
}

function setExhaustAir(design: RecoveryCoilDesign, stream: ExhaustAir, pressure: number, inlet: CoilInlet): void {
  inlet.dryAirFlow = stream.dryAirFlow / design.exhaust.stacked;
  inlet.dryBulb = stream.dryBulb;
  inlet.coldestFilament = stream.dryBulb;
  inlet.humidityRatio = stream.humidityRatio;
  inlet.pressure = pressure;
  inlet.liquid = design.liquid;
}

function setLoopAir(design: RecoveryCoilDesign, loop: Loop, stream: ExhaustAir, air: Air): void {
  setExhaustAir(design, stream, air.barometricPressure, loop.exhaust.inlet);
  setInletAir(design.block, air, loop.supply.inlet);
  loop.supply.inlet.liquid = design.liquid;
}

/** Brings the loop into balance, with as much led round the supply coil as set point and frost limit ask. */
function run(
  design: RecoveryCoilDesign,
  { whole, throttled, search }: LoopRoom,
  stream: ExhaustAir,
  air: Air,
  out: RecoveryCoilRating,
): Loop {
  const heats = stream.dryBulb > air.dryBulb;
  setLoopAir(design, whole, stream, air);
  balanceLoop(design, whole, 0);
  out.fullCapacity = Math.abs(whole.supply.performance.heat) * design.block.stacked;
  // The set point first, then the frost limit: both ask for more bypass, and the surplus of each falls as more is led round.
  const over = ({ supply }: Loop): number => {
    const { leavingDryBulb } = supply.performance;
    return heats ? leavingDryBulb - out.wantedLeaving : out.wantedLeaving - leavingDryBulb;
  };
  const tooCold = ({ intoExhaust }: Loop): number => (heats ? design.frostLimit - intoExhaust : -1);
  let loop = whole;
  const leadRound = (surplus: (loop: Loop) => number): void => {
    setLoopAir(design, throttled, stream, air);
    findBypass(design, throttled, surplus, search);
    loop = throttled;
  };
  if (over(whole) > 0) {
    leadRound(over);
    out.bypassFor = "the set point";
  }
  if (tooCold(loop) > 0) {
    const before = Math.abs(loop.supply.performance.heat);
    leadRound(tooCold);
    out.bypassFor = "the frost limit";
    out.frostGivenUp = (before - Math.abs(loop.supply.performance.heat)) * design.block.stacked;
  }
  const { performance } = loop.exhaust;
  out.exhaustLeavingDryBulb = performance.leavingDryBulb;
  out.exhaustLeavingHumidityRatio = performance.leavingHumidityRatio;
  const { inlet } = loop.exhaust;
  out.exhaustDryLoss = dryAirPressureDrop(
    design.exhaust.coil,
    inlet.dryAirFlow,
    inlet.humidityRatio,
    inlet.dryBulb,
    performance.leavingDryBulb,
    inlet.pressure,
  );
  out.exhaustCondensate = performance.condensate * design.exhaust.stacked;
  out.exhaustColdestSurface = performance.coldestSurface;
  return loop;
}
