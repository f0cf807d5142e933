import type { QuantityKind } from "./kind.ts";
import type { Unit } from "./unit.ts";
import * as units from "./unit-table.ts";

/** How one system shows a kind: its unit, and either decimals or digits that count. */
export interface Display {
  readonly unit: Unit;
  readonly decimals: number | undefined;
  readonly significant: number;
}

/** What a kind is called, what it is typed in, and how each system shows it. */
export interface KindEntry {
  readonly words: string;
  readonly units: readonly Unit[];
  readonly ip: Display;
  readonly si: Display;
  readonly example: string;
  /** True where a bare number is complete. */
  readonly bare: boolean;
  /** What is said of values from a bound on, instead of a number. */
  readonly endless?: { readonly from: number; readonly words: string };
}

/** A unit's name with decimals, or, after a `~`, digits that count whatever the size. */
type Shown = readonly [name: string, decimals: number | "~3" | "~4"];

function display(accepted: readonly Unit[], [name, digits]: Shown): Display {
  const unit = accepted.find((each) => each.name === name);
  if (unit === undefined) throw new Error(`no unit ${name} among those accepted`);
  if (typeof digits === "number") return { unit, decimals: digits, significant: 0 };
  return { unit, decimals: undefined, significant: Number(digits.slice(1)) };
}

function row(words: string, accepted: readonly Unit[], ip: Shown, si: Shown, example: string): KindEntry {
  return { words, units: accepted, ip: display(accepted, ip), si: display(accepted, si), example, bare: false };
}

const airflows = units.airflowUnits;
const actualAirflows = units.actualAirflowUnits;
const standardAirflows = units.standardAirflowUnits;

/** Per kind: words, accepted units, how IP and SI show it, an example. The only place where shown digits are chosen. */
export const kindTable: Readonly<Record<QuantityKind, KindEntry>> = {
  airflow: row("airflow", [...airflows, ...actualAirflows, ...standardAirflows], ["cfm", 0], ["m³/s", 3], "18,400 cfm"),
  actualAirflow: row("actual airflow", [...airflows, ...actualAirflows], ["acfm", 0], ["m³/s", 3], "18,400 acfm"),
  standardAirflow: row(
    "standard airflow",
    [...standardAirflows, ...airflows],
    ["scfm", 0],
    ["standard m³/s", 3],
    "18,400 scfm",
  ),
  velocity: row("velocity", units.velocityUnits, ["fpm", 0], ["m/s", 2], "450 fpm"),
  liquidVelocity: row("velocity of liquid", units.velocityUnits, ["ft/s", 2], ["m/s", 2], "4.5 ft/s"),
  temperature: row("temperature", units.temperatureUnits, ["°F", 1], ["°C", 1], "98 °F"),
  temperatureDifference: row("temperature difference", units.temperatureDifferenceUnits, ["F°", 1], ["K", 1], "12 F°"),
  gaugePressure: row("gauge pressure", units.gaugePressureUnits, ["psig", 1], ["kPa(g)", 0], "15 psig"),
  absolutePressure: row("absolute pressure", units.absolutePressureUnits, ["psia", 3], ["kPa(a)", 2], "29.92 inHg"),
  pressureDifference: row("pressure difference", units.pressureDifferenceUnits, ["in.wg", 2], ["Pa", 0], "2.75 in.wg"),
  liquidPressureDrop: row(
    "pressure drop of liquid",
    units.pressureDifferenceUnits,
    ["ft of water", 1],
    ["kPa", 1],
    "12 ft of water",
  ),
  power: row("power", units.powerUnits, ["MBH", 1], ["kW", 1], "1,200 MBH"),
  shaftPower: row("shaft power", units.powerUnits, ["hp", 1], ["kW", 1], "25 hp"),
  electricPower: row("electric power", units.powerUnits, ["kW", 1], ["kW", 1], "18.5 kW"),
  energy: row("energy", units.energyUnits, ["kBtu", "~4"], ["kWh", "~4"], "3,400 kWh"),
  massFlow: row("mass flow", units.massFlowUnits, ["lb/h", 0], ["kg/s", "~4"], "1,150 lb/h"),
  liquidFlow: row("liquid flow", units.liquidFlowUnits, ["gpm", 1], ["L/s", 2], "120 gpm"),
  humidityRatio: row("humidity ratio", units.humidityRatioUnits, ["gr/lb", 1], ["g/kg", 2], "80 gr/lb"),
  share: row("share", units.shareUnits, ["%", 1], ["%", 1], "85 %"),
  enthalpy: row("enthalpy", units.enthalpyUnits, ["Btu/lb", 2], ["kJ/kg", 2], "41.3 Btu/lb"),
  enthalpyDifference: row(
    "enthalpy difference",
    units.enthalpyDifferenceUnits,
    ["Btu/lb", 2],
    ["kJ/kg", 2],
    "9 Btu/lb",
  ),
  specificHeat: row("specific heat", units.specificHeatUnits, ["Btu/lb·°F", 3], ["kJ/kgK", 3], "1 Btu/lb·°F"),
  specificVolume: row("specific volume", units.specificVolumeUnits, ["ft³/lb", 3], ["m³/kg", 4], "13.3 ft³/lb"),
  density: row("density", units.densityUnits, ["lb/ft³", 4], ["kg/m³", 3], "0.075 lb/ft³"),
  length: row("length", units.lengthUnits, ["in", 2], ["mm", 0], "3-1/2 in"),
  smallLength: row("length", units.lengthUnits, ["in", 4], ["mm", 3], "0.0065 in"),
  area: row("area", units.areaUnits, ["ft²", 2], ["m²", 3], "42 ft²"),
  volume: row("volume", units.volumeUnits, ["ft³", 2], ["m³", 3], "6 ft³"),
  mass: row("mass", units.massUnits, ["lb", "~4"], ["kg", "~4"], "350 lb"),
  force: row("force", units.forceUnits, ["lbf", "~4"], ["N", "~4"], "800 lbf"),
  massPerArea: row("mass per area", units.massPerAreaUnits, ["lb/ft²", 2], ["kg/m²", 2], "1.5 lb/ft²"),
  pitch: row("pitch", units.pitchUnits, ["per in", 1], ["per m", 0], "12 per in"),
  conductance: row("conductance", units.conductanceUnits, ["Btu/h·°F", "~4"], ["W/K", "~4"], "25,000 Btu/h·°F"),
  heatTransferCoefficient: row(
    "heat transfer coefficient",
    units.heatTransferCoefficientUnits,
    ["Btu/h·ft²·°F", 2],
    ["W/m²K", 1],
    "11 Btu/h·ft²·°F",
  ),
  thermalConductivity: row(
    "thermal conductivity",
    units.thermalConductivityUnits,
    ["Btu/h·ft·°F", "~4"],
    ["W/mK", "~4"],
    "118 Btu/h·ft·°F",
  ),
  foulingResistance: row(
    "fouling resistance",
    units.foulingResistanceUnits,
    ["h·ft²·°F/Btu", "~3"],
    ["m²K/W", "~3"],
    "0.00025 h·ft²·°F/Btu",
  ),
  leakageFlux: row("leakage per area", units.leakageFluxUnits, ["cfm/ft²", 2], ["L/s·m²", 2], "3 cfm/ft²"),
  soundLevel: row("sound level", units.soundLevelUnits, ["dB", 1], ["dB", 1], "85 dB"),
  weightedSoundLevel: row("A-weighted sound level", units.weightedSoundLevelUnits, ["dBA", 1], ["dBA", 1], "65 dBA"),
  rotationalSpeed: row("rotational speed", units.rotationalSpeedUnits, ["rpm", 0], ["rpm", 0], "1,180 rpm"),
  frequency: row("frequency", units.frequencyUnits, ["Hz", 1], ["Hz", 1], "60 Hz"),
  angle: row("angle", units.angleUnits, ["°", 1], ["°", 1], "45°"),
  time: row("time", units.timeUnits, ["s", 1], ["s", 1], "90 s"),
  minutes: {
    ...row("time", units.timeUnits, ["min", 1], ["min", 1], "12 min"),
    endless: { from: 86_400, words: "never within 24 h" },
  },
  voltage: row("voltage", units.voltageUnits, ["V", 0], ["V", 0], "460 V"),
  current: row("current", units.currentUnits, ["A", 1], ["A", 1], "34 A"),
  torque: row("torque", units.torqueUnits, ["lbf·in", 1], ["N·m", 2], "180 lbf·in"),
  stiffness: row("stiffness", units.stiffnessUnits, ["lbf/in", 1], ["kN/m", 2], "400 lbf/in"),
  concentration: row("concentration", units.concentrationUnits, ["µg/m³", 1], ["µg/m³", 1], "40 µg/m³"),
  energyPrice: row("price of energy", units.energyPriceUnits, ["$/kWh", "~3"], ["$/kWh", "~3"], "0.12 $/kWh"),
  massPrice: row("price by mass", units.massPriceUnits, ["$/klb", "~3"], ["$/t", "~3"], "14 $/klb"),
  volumePrice: row("price by volume", units.volumePriceUnits, ["$/kgal", "~3"], ["$/m³", "~3"], "9 $/kgal"),
  powerPrice: row("price of power", units.powerPriceUnits, ["$/kW", "~3"], ["$/kW", "~3"], "12 $/kW"),
  energyEmission: row(
    "emission by energy",
    units.energyEmissionUnits,
    ["lb/kWh", "~3"],
    ["kg/kWh", "~3"],
    "0.85 lb/kWh",
  ),
  money: { ...row("amount", units.moneyUnits, ["$", 2], ["$", 2], "$1,250.50"), bare: true },
};
