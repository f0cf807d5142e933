import type { Condition } from "#duty/condition";
import { humidityRatioFromWetBulb } from "#fluid/wet-bulb";
import { type Air, createAir } from "./air.ts";
import type { Frame, Operation, SectionCondition } from "./contract.ts";

/** A cabinet for tests: 2.4 m wide, 2.2 m high. */
export const sampleFrame: Frame = { width: 2.4, height: 2.2, hand: "right" };

/** A sea-level summer condition for tests, invented; give what differs. */
export function sampleCondition(changes: Partial<Condition> = {}): Condition {
  const barometricPressure = changes.barometricPressure ?? 101_325;
  return {
    name: "sample",
    key: "sample",
    season: "cooling",
    barometricPressure,
    outdoor: {
      dryBulb: 34,
      humidityRatio: humidityRatioFromWetBulb(34, 25.5, barometricPressure),
      windSpeed: 0,
      rain: 0,
    },
    returnAir: { dryBulb: 23, humidityRatio: 0.0088, staticPressure: -60, outsideAirShare: 0.85 },
    surroundings: { dryBulb: 34, humidityRatio: 0.0178 },
    flow: { mode: "flow held", dryAirFlow: 9.8 },
    filterLoading: 0.5,
    setPoints: {
      heatingCoilLeaving: 10,
      coolingCoilLeaving: 11.7,
      supply: undefined,
      supplyMaximumHumidityRatio: undefined,
      supplyMinimumHumidityRatio: undefined,
    },
    utilities: {
      steam: { pressure: 184_000, condensateReturnPressure: 101_325, valveFails: "open" },
      chilledWater: {
        liquid: { substance: "water", massFraction: 0 },
        supplyTemperature: 6.7,
        temperatureChange: 7,
        massFlow: undefined,
        valveFails: "closed",
        pumpRunsWhenStopped: false,
      },
      heatingWater: {
        liquid: { substance: "propylene glycol", massFraction: 0.4 },
        supplyTemperature: 60,
        temperatureChange: 15,
        massFlow: undefined,
        valveFails: "open",
        pumpRunsWhenStopped: true,
      },
    },
    externalStatic: { atDesign: 600, fixed: 0, designDryAirFlow: 9.8 },
    exhaust: undefined,
    ...changes,
  };
}

/** Operation for tests: fan at 18 rev/s, no return air, coils at their set points. */
export function sampleOperation(changes: Partial<Operation> = {}): Operation {
  return {
    fanSpeed: 18,
    fansRunning: true,
    returnDryAirFlow: 0,
    dampers: "as set",
    returnDamperStop: "none",
    coolingLeaving: 11.7,
    heatingLeaving: undefined,
    humidifierLeaving: undefined,
    ...changes,
  };
}

/** Condition and operation together. */
export function sampleSectionCondition(
  condition: Partial<Condition> = {},
  operation: Partial<Operation> = {},
): SectionCondition {
  return { condition: sampleCondition(condition), operation: sampleOperation(operation) };
}

/** Outdoor air of the condition on its way in, at `dryAirFlow` kg/s. */
export function sampleAir(condition: Condition, dryAirFlow: number, changes: Partial<Air> = {}): Air {
  const air = createAir();
  air.dryAirFlow = dryAirFlow;
  air.dryBulb = condition.outdoor.dryBulb;
  air.coldestFilament = condition.outdoor.dryBulb;
  air.humidityRatio = condition.outdoor.humidityRatio;
  air.barometricPressure = condition.barometricPressure;
  return Object.assign(air, changes);
}
