/** The air at one station: what passes from section to section. Owned by the caller, filled in place. */
export interface Air {
  /** kg/s of dry air. */
  dryAirFlow: number;
  /** °C, flow-weighted mean. */
  dryBulb: number;
  /** kg of vapour per kg of dry air. */
  humidityRatio: number;
  /** kg/s of liquid (or ice) carried along: rain, snow, fog, carry-over. At the dry-bulb temperature. */
  freeLiquid: number;
  /** Pa absolute, of the surroundings. */
  barometricPressure: number;
  /** Pa against the surroundings. */
  staticPressure: number;
  /** Pa against the surroundings; static plus velocity pressure. */
  totalPressure: number;
  /** °C of the coldest filament; never above the mean dry bulb. */
  coldestFilament: number;
  /** Highest local velocity over the mean, ≥ 1. */
  peakToMeanVelocity: number;
}

/** A record to be filled. */
export function createAir(): Air {
  return {
    dryAirFlow: 0,
    dryBulb: 20,
    humidityRatio: 0,
    freeLiquid: 0,
    barometricPressure: 101_325,
    staticPressure: 0,
    totalPressure: 0,
    coldestFilament: 20,
    peakToMeanVelocity: 1,
  };
}

/** Copies every figure of `from` into `to` and returns `to`. */
export function copyAir(from: Air, to: Air): Air {
  to.dryAirFlow = from.dryAirFlow;
  to.dryBulb = from.dryBulb;
  to.humidityRatio = from.humidityRatio;
  to.freeLiquid = from.freeLiquid;
  to.barometricPressure = from.barometricPressure;
  to.staticPressure = from.staticPressure;
  to.totalPressure = from.totalPressure;
  to.coldestFilament = from.coldestFilament;
  to.peakToMeanVelocity = from.peakToMeanVelocity;
  return to;
}

/** Whether two records agree to the last bit. */
export function isSameAir(a: Air, b: Air): boolean {
  return (
    a.dryAirFlow === b.dryAirFlow &&
    a.dryBulb === b.dryBulb &&
    a.humidityRatio === b.humidityRatio &&
    a.freeLiquid === b.freeLiquid &&
    a.barometricPressure === b.barometricPressure &&
    a.staticPressure === b.staticPressure &&
    a.totalPressure === b.totalPressure &&
    a.coldestFilament === b.coldestFilament &&
    a.peakToMeanVelocity === b.peakToMeanVelocity
  );
}
