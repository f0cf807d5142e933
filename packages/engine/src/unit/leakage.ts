import type { Condition } from "#duty/condition";
import { enthalpyFromHumidityRatio, specificVolume } from "#fluid/moist-air";
import type { Air } from "#section/air";
import { settleState } from "#section/settle-state";
import { actualAirflow, airDensity, enthalpyFlow, settleStaticPressure } from "#section/station";

/** m² of casing behind a leakage class figure: 100 ft². */
const classArea = 9.290304;
/** m³/s in one cfm. */
const cubicFootPerMinute = 0.00047194745;
/** Pa in one inch of water, 4 °C conventional. */
const inchOfWater = 249.08891;
/** Flow through cracks follows this power of pressure. */
const crackExponent = 0.65;

/**
 * m³/s that leaks through `area` (m²) of casing of leakage class `leakageClass` at `pressure` (Pa, either sign):
 * class × 0.65 power of the pressure, the form in which the sheet-metal trade's duct leakage standard states it.
 */
export function leakageFlow(leakageClass: number, area: number, pressure: number): number {
  const head = Math.abs(pressure) / inchOfWater;
  return leakageClass * cubicFootPerMinute * (area / classArea) * head ** crackExponent;
}

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
