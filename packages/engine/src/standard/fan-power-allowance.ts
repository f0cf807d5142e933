/** W per cfm by airflow: up to 5,000 cfm, up to 10,000 cfm, above; for multi-zone variable-volume systems and all others. */
export interface FanPowerAllowance {
  readonly name: string;
  readonly variable: readonly [number, number, number];
  readonly other: readonly [number, number, number];
}

/**
 * Allowances of electric fan power by component, supply fans, as a state energy code of 2021 prints them. They replace
 * the older limit by shaft or nameplate power; the 2022 edition of the energy standard has the same form, and whether all
 * of its figures are these was not checked. Rows further down the table were not read: `notRead`.
 */
export const fanPowerAllowances = {
  rows: {
    base: {
      name: "supply system, air handler up to six floors away",
      variable: [0.395, 0.453, 0.413],
      other: [0.232, 0.256, 0.236],
    },
    filterBefore: {
      name: "filter of MERV 13 to 16 before the coils",
      variable: [0.136, 0.114, 0.105],
      other: [0.139, 0.12, 0.107],
    },
    filterBehind: {
      name: "final filter of MERV 13 to 16 behind the coils",
      variable: [0.225, 0.188, 0.176],
      other: [0.231, 0.197, 0.177],
    },
    filterFinest: {
      name: "filter above MERV 16",
      variable: [0.335, 0.28, 0.265],
      other: [0.342, 0.292, 0.264],
    },
    heating: {
      name: "central hydronic heating coil",
      variable: [0.046, 0.048, 0.052],
      other: [0.046, 0.05, 0.054],
    },
    cooling: {
      name: "hydronic cooling coil, wet",
      variable: [0.135, 0.114, 0.105],
      other: [0.139, 0.12, 0.107],
    },
  } satisfies Readonly<Record<string, FanPowerAllowance>>,
  /** cfm up to which the first and the second figure hold. */
  steps: [5000, 10_000],
  notRead:
    "systems of outdoor air alone, energy recovery, steam coils, humidifiers, sound attenuators, altitude, and all of exhaust fans",
  source: "wac-51-11c",
  certainty: "read in part in a state energy code of 2021",
} as const;
