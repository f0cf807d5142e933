/** The part of the psychrolib package that tests and benchmarks compare with; it brings no types of its own. */
declare module "psychrolib" {
  interface Psychrolib {
    readonly SI: number;
    readonly IP: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulb: number): number;
    GetSatHumRatio(dryBulb: number, pressure: number): number;
    GetHumRatioFromRelHum(dryBulb: number, relativeHumidity: number, pressure: number): number;
    GetHumRatioFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
    GetTWetBulbFromHumRatio(dryBulb: number, humidityRatio: number, pressure: number): number;
    GetTDewPointFromHumRatio(dryBulb: number, humidityRatio: number, pressure: number): number;
    GetTDryBulbFromEnthalpyAndHumRatio(enthalpy: number, humidityRatio: number): number;
    GetMoistAirVolume(dryBulb: number, humidityRatio: number, pressure: number): number;
    GetMoistAirEnthalpy(dryBulb: number, humidityRatio: number): number;
    CalcPsychrometricsFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number[];
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
