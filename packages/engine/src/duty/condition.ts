import type { Liquid } from "#fluid/liquid";

/** One operating point at which a unit is solved. Numbers in SI; built from the duty, or written by the user. */
export interface Condition {
  /** As shown: `wet-bulb day, filters half loaded`. */
  readonly name: string;
  /** Stable, for options and links: `wet-bulb-day-0.5`. */
  readonly key: string;
  readonly season: "cooling" | "heating";
  /** Pa absolute at the site. */
  readonly barometricPressure: number;
  readonly outdoor: OutdoorAir;
  readonly returnAir: ReturnAir;
  readonly surroundings: { readonly dryBulb: number; readonly humidityRatio: number };
  readonly flow: FlowHeld | SpeedHeld | FanStopped;
  /** 0 clean … 1 change-out. */
  readonly filterLoading: number;
  /** Fans of an array that stand while the others run; none when left out. */
  readonly fansOut?: FansOut;
  readonly setPoints: SetPoints;
  readonly utilities: Utilities;
  readonly externalStatic: ExternalStatic;
  /** The exhaust stream of a run-around loop, when there is one. */
  readonly exhaust: ExhaustAir | undefined;
}

/** What the duct system needs: Pa at `designDryAirFlow`, following the square of flow, its fixed part excepted. */
export interface ExternalStatic {
  readonly atDesign: number;
  readonly fixed: number;
  readonly designDryAirFlow: number;
  /** Pa at that flow which the fan has to be able to give beyond; none when left out. */
  readonly reserve?: number;
}

/** What stands before the intake. */
export interface OutdoorAir {
  readonly dryBulb: number;
  readonly humidityRatio: number;
  /** m/s, of wind onto the intake; pressure follows from it. */
  readonly windSpeed: number;
  /**
   * Pressure of the wind at the intake over its velocity pressure, negative in the lee. Left out: 0 with the fan running,
   * which is not to count on wind, and that of an intake that faces the wind when the fan is stopped.
   */
  readonly windPressureCoefficient?: number;
  /** kg/s m² of rain or snow through the intake opening that the intake has to keep out; 0 in dry weather. */
  readonly rain: number;
  /** Snow that the intake is to keep out on such a day; none when left out. */
  readonly snow?: "light" | "heavy" | "drifting";
}

/** What the building sends back. */
export interface ReturnAir {
  readonly dryBulb: number;
  readonly humidityRatio: number;
  /** Pa against the surroundings at the return opening. */
  readonly staticPressure: number;
  /** Share of outside air wanted, 0…1, by dry-air flow. */
  readonly outsideAirShare: number;
}

/** The stream that passes the remote coil of a run-around loop. */
export interface ExhaustAir {
  readonly dryAirFlow: number;
  readonly dryBulb: number;
  readonly humidityRatio: number;
}

/** The fan's speed follows so that this flow of dry air leaves the unit. */
export interface FlowHeld {
  readonly mode: "flow held";
  readonly dryAirFlow: number;
}

/** The fan turns at this speed; flow follows. */
export interface SpeedHeld {
  readonly mode: "speed held";
  /** rev/s. */
  readonly fanSpeed: number;
}

/**
 * Some fans have failed: the others turn as fast as their class, speed control and motors let them, for no more than the
 * flow of the condition; a drive without speed control turns as before.
 */
export interface FansOut {
  readonly count: number;
  /** kg/s of dry air that the duty asks then; 0 where it asks nothing. */
  readonly leastDryAirFlow: number;
}

/** Wind and stack effect move what air still moves. */
export interface FanStopped {
  readonly mode: "fan stopped";
  readonly dampers: "closed" | "as set";
  /** m, of the warm column in duct and building that draws air through the unit. */
  readonly stackHeight: number;
}

/** °C and kg/kg; undefined where nothing is wanted. */
export interface SetPoints {
  readonly heatingCoilLeaving: number | undefined;
  readonly coolingCoilLeaving: number | undefined;
  /** °C after the fan. */
  readonly supply: number | undefined;
  /** kg/kg that the supply may not exceed. */
  readonly supplyMaximumHumidityRatio: number | undefined;
  /** kg/kg that the humidifier has to reach. */
  readonly supplyMinimumHumidityRatio: number | undefined;
}

/** What the building gives the coils; undefined where it gives nothing. */
export interface Utilities {
  readonly steam: SteamSupply | undefined;
  readonly chilledWater: LiquidSupply | undefined;
  readonly heatingWater: LiquidSupply | undefined;
}

/** Steam as it arrives at the coil. */
export interface SteamSupply {
  /** Pa absolute at the coil with the valve open. */
  readonly pressure: number;
  /** Pa absolute that the condensate return holds against the trap. */
  readonly condensateReturnPressure: number;
  /** Where the heating valve stands when control fails or the fan stops. */
  readonly valveFails: "open" | "closed";
}

/** Water or glycol at the coil: either the flow or the change of temperature at full load is given. */
export interface LiquidSupply {
  readonly liquid: Liquid;
  /** °C entering the coil. */
  readonly supplyTemperature: number;
  /** K of rise (cooling) or drop (heating) at full load; undefined when the flow is given. */
  readonly temperatureChange: number | undefined;
  /** kg/s at full load; undefined when the temperature change is given. */
  readonly massFlow: number | undefined;
  readonly valveFails: "open" | "closed";
  /** The circulating pump runs on when the fan stops. */
  readonly pumpRunsWhenStopped: boolean;
}
