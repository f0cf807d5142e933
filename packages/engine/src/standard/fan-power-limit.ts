/** A device whose pressure drop adds to the fan power that an energy standard allows. */
export interface FanPowerCredit {
  readonly name: string;
  /** in.wg at the device's design airflow, less than none for a deduction; undefined where it follows from `rule`. */
  readonly inches: number | undefined;
  readonly rule?: string;
}

/**
 * Fan power limits of the energy standard before its allowances by component: shaft power of all fans of a system that run
 * at design together, in hp, at most `shaft` × cfm + the sum of credit × cfm / `divisor`; or nameplate power at most
 * `nameplate` × cfm without credits.
 */
export const fanPowerLimit = {
  constant: { nameplate: 0.0011, shaft: 0.00094 },
  variable: { nameplate: 0.0015, shaft: 0.0013 },
  divisor: 4131,
  credits: {
    laboratoryExhaust: { name: "ducted exhaust of a laboratory or vivarium", inches: 2.15 },
    ductedExhaust: { name: "ducted return or exhaust, other", inches: 0.5 },
    flowControl: { name: "devices that control return or exhaust airflow", inches: 0.5 },
    merv9: { name: "filters of MERV 9 to 12", inches: 0.5 },
    merv13: { name: "filters of MERV 13 to 15", inches: 0.9 },
    merv16: { name: "filters of MERV 16 and above", inches: undefined, rule: "twice the clean pressure drop" },
    recovery: { name: "energy recovery, each air stream", inches: undefined, rule: "2.2 × effectiveness − 0.5" },
    runAround: { name: "run-around loop, each air stream", inches: 0.6 },
    attenuator: { name: "sound attenuation section", inches: 0.15 },
    noCooling: { name: "no central cooling, deducted", inches: -0.6 },
    noHeating: { name: "no central heating, deducted", inches: -0.3 },
  } satisfies Readonly<Record<string, FanPowerCredit>>,
  source: "ashrae-90-1",
  certainty:
    "read in state energy codes that adopt it; an open data set has the same figures for the editions of 2010 to 2022, the deductions for 2019 and 2022",
} as const;
