import { metresPerInch } from "./inch-pound.ts";
import { megaUnit, offsetUnit, qualifiedUnit, type Unit, unit } from "./unit.ts";

/*
 * Every unit that people of the trade type, with its exact way to SI. Factors are built from the definitions
 * that NIST Special Publication 811 (2008), appendix B, gives as exact: the inch, the pound, the US gallon, standard
 * gravity, the Btu of the International Table, and the conventional (4 °C, standard gravity) columns of water and
 * mercury. A column "at 60 °F" is another unit, half a part in a thousand less, and is not used.
 */
const inch = metresPerInch;
const foot = 0.3048;
const pound = 0.453_592_37;
const ounce = pound / 16;
const grain = pound / 7000;
const gallon = 3.785_411_784e-3;
const gravity = 9.806_65;
const poundForce = pound * gravity;
const britishThermalUnit = 1055.055_852_62;
const minute = 60;
const hour = 3600;
const fahrenheitDegree = 5 / 9;
const waterDensity = 1000;
const mercuryDensity = 13_595.1;
const horsepower = 550 * foot * poundForce;
const squareFoot = foot * foot;
const squareInch = inch * inch;
const cubicFoot = foot ** 3;

/** Enthalpy of dry air at 32 °F in tables that count from 0 °F, Btu/lb (ASHRAE Handbook: Fundamentals, chapter 1). */
const dryAirEnthalpyAtFreezing = 7.687;

export const airflowUnits = [
  unit("cfm", cubicFoot / minute, "ft3/min"),
  unit("m³/s", 1, "m3/s", "cms"),
  unit("m³/h", 1 / hour, "m3/h", "cmh", "m3h"),
  unit("m³/min", 1 / minute, "m3/min", "cmm"),
  unit("L/s", 1e-3, "l/s", "lps"),
];
const qualifiedAirflow = (letter: string, word: string, short: string): Unit[] =>
  airflowUnits.map((base) => {
    const name = base.name === "cfm" ? `${letter}cfm` : `${word} ${base.name}`;
    return qualifiedUnit(base, name, [letter, short], [short]);
  });
export const actualAirflowUnits = qualifiedAirflow("a", "actual", "act");
export const standardAirflowUnits = qualifiedAirflow("s", "standard", "std");

export const velocityUnits = [
  unit("fpm", foot / minute, "ft/min", "fpm"),
  unit("ft/s", foot, "fps"),
  unit("m/s", 1, "mps"),
  unit("mph", 1609.344 / hour, "mile/h", "miles/h", "mi/h"),
  unit("km/h", 1000 / hour, "kph", "kmh"),
  unit("knots", 1852 / hour, "knot", "kn", "kt", "kts"),
  unit("in/h", inch / hour, "iph"),
  unit("mm/h", 1e-3 / hour),
];

export const temperatureUnits = [
  offsetUnit("°F", fahrenheitDegree, 32),
  offsetUnit("°C", 1, 0),
  offsetUnit("K", 1, 273.15),
  offsetUnit("°R", fahrenheitDegree, 491.67),
];

export const temperatureDifferenceUnits = [
  unit("F°", fahrenheitDegree, "f"),
  unit("K", 1),
  unit("C°", 1, "c"),
  unit("R°", fahrenheitDegree, "r"),
];

const psi = unit("psi", poundForce / squareInch, "lb/in2", "lbf/in2");
const siPressures = [
  unit("kPa", 1000, "kn/m2"),
  unit("bar", 1e5, "bars"),
  unit("Pa", 1, "n/m2"),
  megaUnit("MPa", 1e6),
  unit("hPa", 100),
  unit("mbar", 100, "millibar", "millibars"),
];
const water = ["wg", "wc", "h2o", "water", "watergauge", "watercolumn"];
const column = (symbols: string[]): string[] => symbols.flatMap((symbol) => water.map((word) => symbol + word));
const inchOfWater = unit("in.wg", waterDensity * gravity * inch, ...column(["in", '"', "''"]), "iwg", "iwc");
const waterColumns = [
  unit("ft of water", waterDensity * gravity * foot, ...column(["ft", "'"]), "fthead", "fthd"),
  unit("mm of water", waterDensity * gravity * 1e-3, ...column(["mm"])),
];
const mercuryColumns = [
  unit("inHg", mercuryDensity * gravity * inch, "inmercury", '"hg', "''hg"),
  unit("mmHg", mercuryDensity * gravity * 1e-3, "mmmercury"),
];
const atmosphere = unit("atm", 101_325);
const poundPerSquareFoot = unit("psf", poundForce / squareFoot, "lbf/ft2", "lb/ft2");
const marked = (bases: Unit[], letter: string, words: string[]): Unit[] =>
  bases.map((base) => qualifiedUnit(base, base === psi ? `psi${letter}` : `${base.name}(${letter})`, [], words));

export const pressureDifferenceUnits = [
  inchOfWater,
  { ...psi, spellings: [...psi.spellings, "psid"] },
  ...siPressures,
  ...waterColumns,
  ...mercuryColumns,
  atmosphere,
  poundPerSquareFoot,
];
/** Plain psi is read as psig: on a steam main nobody writes anything else. */
export const gaugePressureUnits = [
  ...marked([psi, ...siPressures], "g", ["g", "gauge"]),
  psi,
  ...siPressures,
  inchOfWater,
  ...waterColumns,
  ...mercuryColumns,
];
/** Plain psi is left out: most who write it mean gauge. */
export const absolutePressureUnits = [
  ...marked([psi, ...siPressures, ...mercuryColumns], "a", ["a", "abs"]),
  ...siPressures,
  ...mercuryColumns,
  atmosphere,
];

export const powerUnits = [
  unit("W", 1),
  unit("kW", 1000),
  megaUnit("MW", 1e6),
  unit("Btu/h", britishThermalUnit / hour, "btuh"),
  unit("MBH", (1000 * britishThermalUnit) / hour, "kbtu/h", "kbtuh"),
  unit("MMBtu/h", (1e6 * britishThermalUnit) / hour, "mmbtuh", "mmbh"),
  unit("tons", (12_000 * britishThermalUnit) / hour, "tr", "rt", "tonref", "tonrefrigeration", "tonr", "toncooling"),
  unit("hp", horsepower, "bhp", "horsepower"),
];

export const energyUnits = [
  unit("J", 1),
  unit("kJ", 1000),
  megaUnit("MJ", 1e6),
  unit("GJ", 1e9),
  unit("Wh", hour),
  unit("kWh", 1000 * hour),
  megaUnit("MWh", 1e6 * hour),
  unit("Btu", britishThermalUnit),
  unit("kBtu", 1000 * britishThermalUnit),
  unit("MMBtu", 1e6 * britishThermalUnit),
  unit("therms", 1e5 * britishThermalUnit, "therm"),
  unit("ton·h", 12_000 * britishThermalUnit),
];

export const massFlowUnits = [
  unit("lb/h", pound / hour, "pph"),
  unit("lb/min", pound / minute),
  unit("lb/s", pound),
  unit("klb/h", (1000 * pound) / hour, "kpph"),
  unit("kg/s", 1),
  unit("kg/h", 1 / hour),
  unit("kg/min", 1 / minute),
  unit("g/s", 1e-3),
];

export const liquidFlowUnits = [
  unit("gpm", gallon / minute, "gal/min", "usgpm"),
  unit("gph", gallon / hour, "gal/h"),
  unit("L/s", 1e-3, "lps"),
  unit("L/min", 1e-3 / minute, "lpm"),
  unit("L/h", 1e-3 / hour),
  unit("m³/h", 1 / hour, "cmh"),
  unit("m³/s", 1),
];

const perDryAir = (spelling: string): string[] => [spelling, `${spelling}da`, `${spelling}dryair`];
export const humidityRatioUnits = [
  unit("gr/lb", grain / pound, ...perDryAir("gr/lb"), "gpp"),
  unit("lb/lb", 1, ...perDryAir("lb/lb")),
  unit("g/kg", 1e-3, ...perDryAir("g/kg")),
  unit("kg/kg", 1, ...perDryAir("kg/kg")),
];

export const shareUnits = [unit("%", 0.01, "pct")];

const btuPerPound = britishThermalUnit / pound;
export const enthalpyUnits = [
  offsetUnit("Btu/lb", btuPerPound, dryAirEnthalpyAtFreezing, ...perDryAir("btu/lb")),
  unit("kJ/kg", 1000, ...perDryAir("kj/kg")),
  unit("J/kg", 1, ...perDryAir("j/kg")),
];
export const enthalpyDifferenceUnits = [unit("Btu/lb", btuPerPound), unit("kJ/kg", 1000), unit("J/kg", 1)];
export const specificHeatUnits = [
  unit("Btu/lb·°F", btuPerPound / fahrenheitDegree, "btu/lb/f"),
  unit("kJ/kgK", 1000, "kj/kgc"),
  unit("J/kgK", 1, "j/kgc"),
];

export const specificVolumeUnits = [unit("ft³/lb", cubicFoot / pound, ...perDryAir("ft3/lb")), unit("m³/kg", 1)];
export const densityUnits = [unit("lb/ft³", pound / cubicFoot, "pcf"), unit("kg/m³", 1)];

export const lengthUnits = [
  unit("in", inch, '"', "''"),
  unit("ft", foot, "'"),
  unit("mm", 1e-3),
  unit("cm", 1e-2),
  unit("m", 1),
  unit("mil", inch / 1000, "mils", "thou"),
  unit("µm", 1e-6),
];
export const areaUnits = [
  unit("ft²", squareFoot, "sf"),
  unit("in²", squareInch),
  unit("m²", 1),
  unit("cm²", 1e-4),
  unit("mm²", 1e-6),
];
export const volumeUnits = [
  unit("ft³", cubicFoot, "cf"),
  unit("in³", inch ** 3),
  unit("gal", gallon),
  unit("m³", 1),
  unit("L", 1e-3),
];
export const massUnits = [
  unit("lb", pound),
  unit("oz", ounce),
  unit("kg", 1),
  unit("g", 1e-3),
  unit("short tons", 2000 * pound, "ton", "shortton"),
  unit("t", 1000, "tonne", "metricton"),
];
export const forceUnits = [
  unit("lbf", poundForce, "lb"),
  unit("kip", 1000 * poundForce, "kips"),
  unit("N", 1),
  unit("kN", 1000),
];
export const massPerAreaUnits = [
  unit("lb/ft²", pound / squareFoot, "psf"),
  unit("oz/ft²", ounce / squareFoot),
  unit("kg/m²", 1),
  unit("g/m²", 1e-3),
];
export const pitchUnits = [
  unit("per in", 1 / inch, "/in", "fpi", "fin/in", "tpi"),
  unit("per ft", 1 / foot, "/ft"),
  unit("per cm", 100, "/cm", "fin/cm"),
  unit("per m", 1, "/m", "fin/m"),
];

const perFahrenheit = britishThermalUnit / hour / fahrenheitDegree;
export const conductanceUnits = [
  unit("Btu/h·°F", perFahrenheit, "btu/h/f", "btuh/f"),
  unit("W/K", 1, "w/c"),
  unit("kW/K", 1000, "kw/c"),
];
export const heatTransferCoefficientUnits = [
  unit("Btu/h·ft²·°F", perFahrenheit / squareFoot, "btu/h/ft2/f", "btu/ft2hf", "btuh/ft2f"),
  unit("W/m²K", 1, "w/m2/k", "w/m2c"),
];
export const thermalConductivityUnits = [
  unit("Btu/h·ft·°F", perFahrenheit / foot, "btu/h/ft/f", "btu/fthf"),
  unit("Btu·in/h·ft²·°F", (perFahrenheit * inch) / squareFoot, "btuin/ft2hf"),
  unit("W/mK", 1, "w/m/k", "w/mc"),
];
export const foulingResistanceUnits = [
  unit("h·ft²·°F/Btu", squareFoot / perFahrenheit, "ft2hf/btu", "ft2fh/btu", "hft2f/btu"),
  unit("m²K/W", 1, "m2c/w", "km2/w"),
  unit("m²K/kW", 1e-3, "m2c/kw"),
];
export const leakageFluxUnits = [
  unit("cfm/ft²", cubicFoot / minute / squareFoot, "cfm/sf"),
  unit("L/s·m²", 1e-3, "l/s/m2"),
  unit("m³/s·m²", 1, "m3/s/m2"),
];

export const soundLevelUnits = [unit("dB", 1)];
export const weightedSoundLevelUnits = [unit("dBA", 1)];
export const rotationalSpeedUnits = [unit("rpm", 1 / minute, "rev/min", "r/min"), unit("rev/s", 1, "rps", "r/s")];
export const frequencyUnits = [unit("Hz", 1), unit("kHz", 1000), unit("cpm", 1 / minute)];
export const angleUnits = [unit("°", 1), unit("rad", 180 / Math.PI, "radian")];
export const timeUnits = [unit("s", 1), unit("min", minute), unit("h", hour), unit("d", 24 * hour)];
export const voltageUnits = [unit("V", 1, "vac"), unit("kV", 1000)];
export const currentUnits = [unit("A", 1)];
export const torqueUnits = [
  unit("lbf·in", poundForce * inch, "lbin", "inlb", "inlbf"),
  unit("lbf·ft", poundForce * foot, "lbft", "ftlb", "ftlbf"),
  unit("N·m", 1),
];
export const stiffnessUnits = [
  unit("lbf/in", poundForce / inch, "lb/in"),
  unit("N/mm", 1000),
  unit("kN/m", 1000),
  unit("N/m", 1),
];
export const concentrationUnits = [
  unit("µg/m³", 1e-9),
  unit("mg/m³", 1e-6),
  unit("g/m³", 1e-3),
  unit("gr/1000 ft³", grain / (1000 * cubicFoot)),
];
/** A unit of money is a hundred cents of the job's currency, whichever that is. */
export const moneyUnits = [unit("$", 100, "usd", "dollar", "dollars"), unit("€", 100, "eur"), unit("£", 100, "gbp")];
const cents = 100;
export const energyPriceUnits = [
  unit("$/kWh", cents / (1000 * hour)),
  unit("$/MWh", cents / (1e6 * hour)),
  unit("$/MMBtu", cents / (1e6 * britishThermalUnit)),
  unit("$/therm", cents / (1e5 * britishThermalUnit)),
  unit("$/GJ", cents / 1e9),
  unit("$/ton·h", cents / (12_000 * britishThermalUnit)),
];
export const massPriceUnits = [
  unit("$/klb", cents / (1000 * pound), "$/1000lb", "$/mlb"),
  unit("$/lb", cents / pound),
  unit("$/kg", cents),
  unit("$/t", cents / 1000, "$/tonne"),
];
export const volumePriceUnits = [
  unit("$/kgal", cents / (1000 * gallon), "$/1000gal"),
  unit("$/gal", cents / gallon),
  unit("$/m³", cents),
];
export const powerPriceUnits = [unit("$/kW", cents / 1000), unit("$/W", cents)];
export const energyEmissionUnits = [
  unit("lb/kWh", pound / (1000 * hour)),
  unit("lb/MWh", pound / (1e6 * hour)),
  unit("lb/MMBtu", pound / (1e6 * britishThermalUnit)),
  unit("kg/kWh", 1 / (1000 * hour)),
  unit("kg/MMBtu", 1 / (1e6 * britishThermalUnit)),
  unit("kg/GJ", 1e-9),
];
