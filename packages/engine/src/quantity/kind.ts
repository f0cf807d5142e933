/**
 * What a number can measure. Quantities whose numbers must not be mixed are kinds of their own:
 * actual and standard airflow, gauge and absolute pressure, temperature and temperature difference.
 */
export type QuantityKind =
  | "actualAirflow" // m³/s
  | "standardAirflow" // m³/s of standard air, 1.2014 kg/m³ (0.075 lb/ft³)
  | "airflow" // m³/s; whether actual or standard is said by a neighbouring field, or by acfm / scfm
  | "velocity" // m/s
  | "liquidVelocity" // m/s, in tubes and pipes
  | "temperature" // °C
  | "temperatureDifference" // K
  | "gaugePressure" // Pa against the surroundings
  | "absolutePressure" // Pa
  | "pressureDifference" // Pa
  | "liquidPressureDrop" // Pa, of water and glycol
  | "power" // W, of heat; also where heat, shafts and electricity are added up
  | "shaftPower" // W, of fans and motors; shown in hp
  | "electricPower" // W, drawn from the supply; shown in kW
  | "massFlow" // kg/s
  | "liquidFlow" // m³/s
  | "humidityRatio" // kg/kg dry air
  | "share" // 0…1, typed in %
  | "enthalpy" // J/kg dry air above dry air and liquid water at 0 °C; Btu/lb count dry air from 0 °F
  | "enthalpyDifference" // J/kg
  | "specificHeat" // J/kgK
  | "specificVolume" // m³/kg dry air
  | "density" // kg/m³
  | "length" // m
  | "smallLength" // m; thicknesses and gaps, printed finer
  | "area" // m²
  | "volume" // m³
  | "mass" // kg
  | "force" // N
  | "pitch" // 1/m; fins per inch
  | "conductance" // W/K
  | "heatTransferCoefficient" // W/m²K
  | "thermalConductivity" // W/mK
  | "foulingResistance" // m²K/W
  | "leakageFlux" // m³/s of air per m² of damper or casing
  | "soundLevel" // dB
  | "weightedSoundLevel" // dB, A-weighted
  | "rotationalSpeed" // rev/s
  | "frequency" // Hz
  | "angle" // degrees
  | "time" // s
  | "minutes" // s, shown in minutes; a day and more as never within 24 h
  | "voltage" // V
  | "current" // A
  | "torque" // N·m
  | "stiffness" // N/m
  | "concentration" // kg/m³; dust
  | "energy" // J
  | "money" // integer cents of the job's currency
  | "energyPrice" // cents/J
  | "massPrice" // cents/kg
  | "volumePrice" // cents/m³
  | "powerPrice" // cents/W
  | "energyEmission" // kg/J; carbon dioxide and what warms like it
  | "massPerArea"; // kg/m²

/** Inch-pound or international units: which of them a person reads. */
export type UnitSystem = "ip" | "si";
