import type { Condition } from "#duty/condition";
import { enthalpyFromHumidityRatio, specificVolume } from "#fluid/moist-air";
import type { Air } from "#section/air";
import { settleState } from "#section/settle-state";
import { actualAirflow, airDensity, enthalpyFlow, settleStaticPressure } from "#section/station";

/** What a leak does to a stream: kg/s of dry air that joined (negative when lost), kg/s of meltwater that drained. */
export interface Leak {
  dryAir: number;
  drained: number;
}

/**
 * Lets the casing leak behind a section: under suction the surroundings' air joins the stream, under pressure the
 * stream loses air and the drops that it carries. `air` is changed in place; its total pressure stays, the static
 * pressure follows in the area that the stream fills: the one its velocity pressure tells (a fan's outlet stays a jet),
 * or `flowArea` (m²) when it has none.
 */
export function leakIntoStream(
  air: Air,
  condition: Condition,
  wallPressure: number,
  flow: number,
  flowArea: number,
  out: Leak,
): void {
  out.dryAir = 0;
  out.drained = 0;
  if (flow === 0) return;
  const filled = filledArea(air) ?? flowArea;
  if (wallPressure > 0) loseAir(air, flow, out);
  else gainAir(air, condition, flow, out);
  settleStaticPressure(air, filled);
}

/** m² in which the stream has the velocity that its velocity pressure tells; undefined at rest. */
function filledArea(air: Air): number | undefined {
  const dynamic = air.totalPressure - air.staticPressure;
  return dynamic > 0 ? actualAirflow(air) * Math.sqrt(airDensity(air) / (2 * dynamic)) : undefined;
}

function loseAir(air: Air, flow: number, out: Leak): void {
  const volume = specificVolume(air.dryBulb, air.humidityRatio, air.barometricPressure + air.staticPressure);
  const lost = Math.min(flow / volume, 0.5 * air.dryAirFlow);
  air.freeLiquid *= 1 - lost / air.dryAirFlow;
  air.dryAirFlow -= lost;
  out.dryAir = -lost;
}

function gainAir(air: Air, condition: Condition, flow: number, out: Leak): void {
  const { dryBulb, humidityRatio } = condition.surroundings;
  const joined = flow / specificVolume(dryBulb, humidityRatio, condition.barometricPressure);
  const enthalpy = enthalpyFlow(air) + joined * enthalpyFromHumidityRatio(dryBulb, humidityRatio);
  const vapour = air.dryAirFlow * air.humidityRatio + joined * humidityRatio;
  const before = air.dryBulb;
  air.dryAirFlow += joined;
  out.drained = settleState(air, enthalpy, vapour / air.dryAirFlow);
  // The leak comes in thin sheets along the walls: the coldest filament shifts with the mean.
  air.coldestFilament = Math.min(air.dryBulb, air.coldestFilament + (air.dryBulb - before));
  out.dryAir = joined;
}
