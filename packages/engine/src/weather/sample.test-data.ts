import { calendarHour, hoursOfYear } from "./calendar.ts";

/** What a test wants of a made-up EPW file; the rest is a mild place at 100 m. */
export interface SampleEpw {
  readonly hours?: number;
  readonly leap?: string;
  readonly periods?: string;
  readonly design?: string;
  readonly minute?: number;
  readonly lineEnd?: string;
  /** What differs in an hour's row, by column. */
  readonly row?: (
    fields: readonly string[],
    index: number,
  ) => Readonly<Record<number, string>> | { readonly length: number } | undefined;
}

/** °C and °C of the made-up place: plain waves, so that a test can count on them. */
export function sampleDryBulb(index: number): number {
  return (
    10 + 12 * Math.sin((2 * Math.PI * (index - 2600)) / 8760) + 5 * Math.sin((2 * Math.PI * ((index % 24) - 8)) / 24)
  );
}

/** An EPW text of an invented place. */
export function sampleEpw(options: SampleEpw = {}): string {
  const { hours = hoursOfYear, leap = "No", periods = "1,1", design = "0", minute = 0, lineEnd = "\n" } = options;
  const head = [
    "LOCATION,Harrow Point,-,Invented,made up,012345,40.00,-70.00,-5.0,100.0",
    `DESIGN CONDITIONS,${design}`,
    "TYPICAL/EXTREME PERIODS,0",
    "GROUND TEMPERATURES,0",
    `HOLIDAYS/DAYLIGHT SAVINGS,${leap},0,0,0`,
    'COMMENTS 1,"an open quote, that nobody closes',
    "COMMENTS 2,none",
    `DATA PERIODS,${periods},Data,Sunday, 1/ 1,12/31`,
  ];
  const rows = Array.from({ length: hours }, (_, index) => {
    const { month, day, hour } = calendarHour(index % hours, Math.max(hours, hoursOfYear));
    const air = sampleDryBulb(index);
    const fields = ["1999", month, day, hour, minute, "?9", air.toFixed(1), (air - 4).toFixed(1), "70", "100100"].map(
      String,
    );
    fields.push(..."0,0,0,0,0,0,0,0,0,0,180,3.5,5,5,20,7000,9,999999999,10,0.1,0,88,0.2,0,0".split(","));
    Object.assign(fields, options.row?.(fields, index));
    return fields.join(",");
  });
  return [...head, ...rows, ""].join(lineEnd);
}
