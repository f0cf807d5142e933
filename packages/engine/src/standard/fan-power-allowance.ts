/** W per cfm by airflow: up to 5,000 cfm, up to 10,000 cfm, above; for multi-zone variable-volume systems and all others. */
export interface FanPowerAllowance {
  readonly name: string;
  readonly variable: readonly [number, number, number];
  readonly other: readonly [number, number, number];
}

/** A row that a table of allowances may have for supply fans. */
export type AllowanceRow =
  | "base"
  | "allOutdoor"
  | "filterLow"
  | "filterBefore"
  | "filterBehind"
  | "filterFinest"
  | "heating"
  | "cooling"
  | "runAround"
  | "attenuator"
  | "returnDamper";

/** One edition's table of allowances for supply fans, in place of the older limit by shaft or nameplate power. */
export interface FanPowerTable {
  readonly edition: string;
  readonly rows: Readonly<Partial<Record<AllowanceRow, FanPowerAllowance>>>;
  /** Rows that it has, or may have, and that could raise what is allowed; empty where none is missing. */
  readonly notRead: string;
  readonly source: string;
  readonly certainty: string;
}

/** cfm up to which the first and the second figure hold. */
export const allowanceSteps = [5000, 10_000] as const;

const filterThirteen = {
  name: "filter of MERV 13 to 16",
  variable: [0.21, 0.177, 0.165],
  other: [0.217, 0.185, 0.168],
} as const satisfies FanPowerAllowance;

/**
 * The energy standard's edition of 2025 as a national laboratory's open data set of building energy standards has it, and a
 * state energy code of 2021 that prints a table of the same form. That data set carries the older limit for the edition of
 * 2022. Rows for what such a unit does not hold (furnaces, desiccants, wheels, evaporative coolers) are left out.
 */
export const fanPowerTables: readonly FanPowerTable[] = [
  {
    edition: "energy standard, 2025",
    rows: {
      base: { name: "supply system", variable: [0.413, 0.472, 0.48], other: [0.243, 0.267, 0.248] },
      allOutdoor: { name: "system of outdoor air alone", variable: [0, 0, 0], other: [0.073, 0.104, 0.112] },
      filterLow: {
        name: "filter not above MERV 12",
        variable: [0.094, 0.079, 0.073],
        other: [0.097, 0.084, 0.075],
      },
      filterBefore: filterThirteen,
      filterBehind: filterThirteen,
      filterFinest: { name: "HEPA filter", variable: [0.347, 0.292, 0.277], other: [0.357, 0.304, 0.278] },
      heating: {
        name: "central hydronic heating coil",
        variable: [0.047, 0.05, 0.055],
        other: [0.049, 0.053, 0.057],
      },
      cooling: { name: "hydronic cooling coil, wet", variable: [0.141, 0.118, 0.11], other: [0.146, 0.125, 0.112] },
      runAround: { name: "run-around coils", variable: [0.141, 0.118, 0.11], other: [0.146, 0.125, 0.112] },
      attenuator: {
        name: "sound attenuation section",
        variable: [0.035, 0.03, 0.027],
        other: [0.036, 0.032, 0.029],
      },
      returnDamper: {
        name: "economizer return damper",
        variable: [0.049, 0.042, 0.038],
        other: [0.049, 0.043, 0.039],
      },
    },
    notRead: "",
    source: "pnnl-building-energy-standards-data tables 6.5.3.1-1 and -2",
    certainty: "read in an open data set, not in the standard; its corrections and exceptions were not read",
  },
  {
    edition: "state energy code, 2021",
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
    },
    notRead: "systems of outdoor air alone, energy recovery, sound attenuators, altitude",
    source: "wac-51-11c table C403.8.1.1(1)",
    certainty: "read in part, down to the row of reheat coils",
  },
];
