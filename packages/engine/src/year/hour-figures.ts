/** What is kept of every hour, in SI: one list for each, with one entry for each hour. */
export const hourFigures = [
  /** 1 while the fan runs. */
  "running",
  /** 1 where every balance was met. */
  "solved",
  /** 1 where the coils cool by the summer set points, 0 where they heat. */
  "cooling",
  /** kg/s of dry air that leaves the unit. */
  "dryAirFlow",
  "outsideAirShare",
  /** 0 clean … 1 at change-out. */
  "filterLoading",
  /** °C and kg/kg at the end of the unit. */
  "supplyDryBulb",
  "supplyHumidityRatio",
  /** W into the air from coils on steam; kg/s of steam for coils and humidifiers. */
  "steamHeat",
  "steamFlow",
  /** kg/s of steam that stays in the air, and of condensate that goes back to the boiler. */
  "humidifierWater",
  "steamCondensate",
  /** W from and to water. */
  "heatingWaterHeat",
  "chilledWaterHeat",
  /** W that a run-around loop gives the air in the cold, and that it takes off it in the heat. */
  "recoveredHeat",
  "recoveredCooling",
  /** W from the mains, and Pa that the fan adds. */
  "fanPower",
  "fanPressure",
  /** kg/s of water that drains from the cooling coil. */
  "coilCondensate",
  /** Smallest distance of a coil's coldest wall from freezing, K; not a number where there is no coil. */
  "freezeMargin",
  /** Flow of the fan over its smallest steady flow; speed over the natural frequency of the springs. */
  "fanSteadiness",
  "springRatio",
  /** Velocity over that at which water is thrown from the cooling coil, where it is wet; 0 where dry. */
  "carryOver",
  /** Relative humidity of the air that enters the filters. */
  "filterHumidity",
  /** How many things that the duty asks are not held, and how many rules that decide are missed. */
  "missed",
  "rulesMissed",
  /** W that the energy balance is off, and W of enthalpy that passes, to hold it against. */
  "imbalance",
  "throughput",
] as const;

/** Name of a figure that is kept of every hour. */
export type HourFigure = (typeof hourFigures)[number];

/** One hour's figures, to be filled again and again. */
export type HourRow = Record<HourFigure, number>;

/** A row of zeros. */
export function createHourRow(): HourRow {
  return Object.fromEntries(hourFigures.map((name) => [name, 0])) as HourRow;
}

/** Figures of a run of hours. */
export type HourLists = Readonly<Record<HourFigure, Float64Array>>;

/** Room for a number of hours. */
export function createHourLists(hours: number): HourLists {
  return Object.fromEntries(hourFigures.map((name) => [name, new Float64Array(hours)])) as unknown as HourLists;
}
