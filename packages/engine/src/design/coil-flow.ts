import type { CoilInlet } from "#component/coil/performance";
import { liquidSpecificHeat } from "#fluid/liquid";
import { enthalpyFromHumidityRatio, moistAirSpecificHeat } from "#fluid/moist-air";
import { saturationHumidityRatio } from "#fluid/saturation";
import type { CoilBlock } from "#section/coil/block";
import { type CoilRoom, solveAtFlow } from "#section/coil/valve";

/** Share of the change of temperature to which the flow is found. */
const changeTolerance = 2e-4;

/** Steps after which a flow is given up. */
const mostSteps = 25;

/** kg/s of liquid that the load of the leaving air wanted takes at a change of temperature: where the search begins. */
export function loadGuess(inlet: CoilInlet, wanted: number, change: number): number {
  const aimed = Number.isFinite(wanted) ? wanted : (inlet.dryBulb + inlet.liquidTemperature) / 2;
  const wettest = 0.97 * saturationHumidityRatio(Math.min(90, Math.max(-60, aimed)), inlet.pressure);
  const leaving = enthalpyFromHumidityRatio(aimed, Math.min(inlet.humidityRatio, wettest));
  const load = Math.abs(enthalpyFromHumidityRatio(inlet.dryBulb, inlet.humidityRatio) - leaving);
  const taken = change * liquidSpecificHeat(inlet.liquid, inlet.liquidTemperature);
  return Math.max(1e-4, (inlet.dryAirFlow * load) / taken);
}

/** kg/s that the dry-bulb change wanted takes by itself: no coil that reaches it gets by on less. */
export function sensibleFlow(inlet: CoilInlet, wanted: number, change: number): number {
  if (!Number.isFinite(wanted)) return 0;
  const load = inlet.dryAirFlow * moistAirSpecificHeat(0) * Math.abs(inlet.dryBulb - wanted);
  // Two hundredths off: the liquid's specific heat varies along the coil.
  return (0.98 * load) / (change * liquidSpecificHeat(inlet.liquid, inlet.liquidTemperature));
}

/**
 * kg/s through one coil at which its liquid changes by a temperature; the room's performance is that of the flow. A coil
 * that changes its liquid by less already and still misses the air would miss it the more at the smaller flow that is asked:
 * it is given up at once.
 */
export function flowForChange(
  block: CoilBlock,
  change: number,
  guess: number,
  room: CoilRoom,
  isMissed: () => boolean,
): number | "leaving air" | "water temperature change" {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  let at = Math.log(guess);
  let before = Number.NaN;
  let excessBefore = Number.NaN;
  for (let step = 0; step < mostSteps; step++) {
    const { leavingLiquid } = solveAtFlow(block, Math.exp(at), room);
    const changed = Math.abs(leavingLiquid - room.inlet.liquidTemperature);
    const excess = Math.log(Math.max(1e-9, changed) / change);
    if (Math.abs(excess) < changeTolerance) return Math.exp(at);
    if (excess < 0 && isMissed()) return "leaving air";
    if (excess > 0) low = at;
    else high = at;
    // Heat grows with about a third of the flow's power, so that the change falls with two thirds: the first step's slope.
    const slope = Number.isNaN(before) ? -0.65 : (excess - excessBefore) / (at - before);
    before = at;
    excessBefore = excess;
    at -= excess / Math.min(-0.1, slope);
    if (!(at > low && at < high)) at = within(low, high, before);
  }
  return "water temperature change";
}

/** The middle of the bracket, or a step beyond its one end. */
function within(low: number, high: number, at: number): number {
  if (low === Number.NEGATIVE_INFINITY) return at - 1.5;
  if (high === Number.POSITIVE_INFINITY) return at + 1.5;
  return (low + high) / 2;
}
