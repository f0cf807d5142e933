/** The duty of a job alone: its unit and conditions cut away. */
export function dutyAlone(jobText: string): string {
  return jobText.slice(0, jobText.search(/^unit:/m));
}

/** What a test changes of the duty below. */
export interface DutyChanges {
  readonly airflow?: string;
  readonly share?: string;
  readonly winter?: string;
  readonly wetBulb?: number;
  readonly dryBulb?: number;
  readonly setPoints?: Readonly<Record<string, string>>;
  readonly staticPressure?: string;
  readonly water?: string;
  readonly altitude?: string;
  /** Lines more. */
  readonly rest?: string;
}

/** A plain duty; place and numbers are invented. */
export function dutyText(changes: DutyChanges = {}): string {
  const wetBulb = changes.wetBulb ?? 77;
  const dryBulb = changes.dryBulb ?? 92;
  const setPoints = { "coil leaving": "53 °F", "winter supply": "60 °F", ...changes.setPoints };
  // Wet-bulb and dew-point days: the same heat, or the same water, in cooler air.
  return `format: oncethrough job 1

duty:
  tag: T-1
  site: { altitude: ${changes.altitude ?? "500 ft"} }
  supply airflow: { design: ${changes.airflow ?? "12000 cfm"} }
  outside air share: ${changes.share ?? "100 %"}
  summer:
    dry bulb day: { dry bulb: ${dryBulb} °F, wet bulb: ${wetBulb - 2} °F }
    wet bulb day: { dry bulb: ${wetBulb + 6} °F, wet bulb: ${wetBulb} °F }
    dew point day: { dry bulb: ${wetBulb + 3} °F, wet bulb: ${wetBulb - 0.5} °F }
  winter: { dry bulb: ${changes.winter ?? "5 °F"}, relative humidity: 70 % }
  return air:
    summer: { dry bulb: 75 °F, relative humidity: 50 % }
    winter: { dry bulb: 71 °F, relative humidity: 30 % }
  set points:
${Object.entries(setPoints)
  .map(([name, value]) => `    ${name}: ${value}`)
  .join("\n")}
  external static: { pressure: ${changes.staticPressure ?? "2.5 in.wg"} }
  utilities:
    steam: { pressure at coil: 12 psig }
    chilled water: { supply: ${changes.water ?? "44 °F"}, rise: 12 F° }
${changes.rest ?? ""}`;
}
