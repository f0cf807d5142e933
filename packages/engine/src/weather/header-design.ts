/**
 * Design conditions that a file's header quotes from climate tables for its station. They are not statistics of the
 * file's hours: a typical year hardly ever reaches them.
 */
export interface HeaderDesign {
  readonly source: string;
  /** °C, share of a year that is colder in brackets of the name. */
  readonly heatingDryBulb: number;
  /** °C: dew point of 99.6 % for humidification, with its dry bulb; undefined where the header has none. */
  readonly humidificationDewPoint: number | undefined;
  /** °C: 0.4 % dry bulb with the mean coincident wet bulb. */
  readonly dryBulbDay: { readonly dryBulb: number; readonly wetBulb: number };
  /** °C: 0.4 % wet bulb with the mean coincident dry bulb. */
  readonly wetBulbDay: { readonly dryBulb: number; readonly wetBulb: number };
  /** °C: 0.4 % dew point with the mean coincident dry bulb. */
  readonly dewPointDay: { readonly dryBulb: number; readonly dewPoint: number };
}

/**
 * Reads the fields of a `DESIGN CONDITIONS` record. The groups are found by their words, since their length differs by
 * edition of the tables; inside a group the positions hold for all of them.
 */
export function readHeaderDesign(fields: readonly string[]): HeaderDesign | undefined {
  const words = fields.map((field) => field.trim());
  const heating = words.indexOf("Heating");
  const cooling = words.indexOf("Cooling");
  if (heating < 0 || cooling < 0) return undefined;
  const heatingAt = (position: number) => numberOf(words[heating + position]);
  const coolingAt = (position: number) => numberOf(words[cooling + position]);
  const heatingDryBulb = heatingAt(2);
  const [dryBulb, dryBulbWet, wetBulb, wetBulbDry, dewPoint, dewPointDry] = [3, 4, 9, 10, 17, 19].map(coolingAt);
  const needed = [heatingDryBulb, dryBulb, dryBulbWet, wetBulb, wetBulbDry, dewPoint, dewPointDry];
  if (needed.some((value) => value === undefined || !Number.isFinite(value))) return undefined;
  return {
    source: words[2] ?? "",
    heatingDryBulb: heatingDryBulb!,
    humidificationDewPoint: heatingAt(4),
    dryBulbDay: { dryBulb: dryBulb!, wetBulb: dryBulbWet! },
    wetBulbDay: { dryBulb: wetBulbDry!, wetBulb: wetBulb! },
    dewPointDay: { dryBulb: dewPointDry!, dewPoint: dewPoint! },
  };
}

function numberOf(text: string | undefined): number | undefined {
  if (text === undefined || text === "") return undefined;
  const value = Number(text);
  return Number.isFinite(value) ? value : undefined;
}
