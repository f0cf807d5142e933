import { condensedWaterEnthalpy, density, enthalpyFromHumidityRatio, specificVolume } from "#fluid/moist-air";
import { type Air, copyAir } from "./air.ts";
import type { SectionRating } from "./contract.ts";

/** Pa absolute at the station. */
export function absolutePressure(air: Air): number {
  return air.barometricPressure + air.staticPressure;
}

/** W of enthalpy that passes the station, free liquid included (datum: dry air and liquid water at 0 °C). */
export function enthalpyFlow(air: Air): number {
  return (
    air.dryAirFlow * enthalpyFromHumidityRatio(air.dryBulb, air.humidityRatio) +
    air.freeLiquid * condensedWaterEnthalpy(air.dryBulb)
  );
}

/** kg/s of water that passes the station, vapour and free liquid. */
export function waterFlow(air: Air): number {
  return air.dryAirFlow * air.humidityRatio + air.freeLiquid;
}

/** m³/s at the station's own density. */
export function actualAirflow(air: Air): number {
  return air.dryAirFlow * specificVolume(air.dryBulb, air.humidityRatio, absolutePressure(air));
}

/** kg of moist air per m³ at the station. */
export function airDensity(air: Air): number {
  return density(air.dryBulb, air.humidityRatio, absolutePressure(air));
}

/** Pa of velocity pressure where the flow fills `area` (m²). */
export function velocityPressure(air: Air, area: number): number {
  const velocity = actualAirflow(air) / area;
  return 0.5 * airDensity(air) * velocity * velocity;
}

/** Sets the static pressure from the total pressure and the `area` (m²) that the flow fills at the station. */
export function settleStaticPressure(air: Air, area: number): void {
  const { barometricPressure, totalPressure } = air;
  // Density goes with pressure, so velocity pressure with its inverse: their product is the same at any static pressure.
  air.staticPressure = totalPressure;
  const product = velocityPressure(air, area) * absolutePressure(air);
  // The velocity pressure hangs on the static pressure by parts in ten thousand: twice more is enough for 1e-9 of the
  // absolute pressure.
  air.staticPressure = totalPressure - product / (barometricPressure + totalPressure);
  air.staticPressure = totalPressure - product / absolutePressure(air);
  air.staticPressure = totalPressure - product / absolutePressure(air);
}

/**
 * Starts a rating: the entering air is copied into `out.entering` and `out.leaving`, the balances are zero.
 * A kind then changes what it changes.
 */
export function beginRating(air: Air, out: SectionRating): void {
  copyAir(air, out.entering);
  copyAir(air, out.leaving);
  out.totalPressureLoss = 0;
  out.heatToAir = 0;
  out.waterToAir = 0;
  out.waterEnthalpyToAir = 0;
  out.faceVelocity = 0;
}

/** Takes `out.totalPressureLoss` off the leaving air, whose flow fills `area` (m²). */
export function endRating(out: SectionRating, area: number): void {
  out.leaving.totalPressure = out.entering.totalPressure - out.totalPressureLoss;
  settleStaticPressure(out.leaving, area);
}
