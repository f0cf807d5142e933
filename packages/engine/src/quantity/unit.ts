import { canonicalUnit } from "./spelling.ts";

/** A unit of measure: how it is printed, how it is typed, and its exact way to SI. */
export interface Unit {
  /** As printed, `in.wg`. */
  readonly name: string;
  /** SI value = (reading − zero) × factor. */
  readonly factor: number;
  readonly zero: number;
  /** Every form that `canonicalUnit` gives for what people type. */
  readonly spellings: readonly string[];
  /** True where the first letter must be a capital M: a small m would be a thousandth. */
  readonly mega: boolean;
}

/**
 * A unit whose zero is the zero of SI; its name is one of its spellings.
 *
 * @param name text: as printed
 * @param factor SI, any: the SI value of one
 * @param spellings list: canonical spellings besides the name
 * @returns record: the unit
 * @example unit("in", 0.0254).factor // 0.0254
 * @source definition
 */
export function unit(name: string, factor: number, ...spellings: string[]): Unit {
  return offsetUnit(name, factor, 0, ...spellings);
}

/**
 * A unit whose zero is not the zero of SI.
 *
 * @param name text: as printed
 * @param factor SI, any: the SI value of a step of one
 * @param zero number, any: its reading where the SI value is 0
 * @param spellings list: canonical spellings besides the name
 * @returns record: the unit
 * @example siFromReading(212, offsetUnit("°F", 5 / 9, 32)) // 100 ± 1e-12
 * @source definition
 */
export function offsetUnit(name: string, factor: number, zero: number, ...spellings: string[]): Unit {
  return { name, factor, zero, spellings: [...new Set([canonicalUnit(name), ...spellings])], mega: false };
}

/**
 * A unit that begins with mega-, to be typed with a capital M.
 *
 * @param name text: as printed
 * @param factor SI, any: the SI value of one
 * @param spellings list: canonical spellings besides the name
 * @returns record: the unit
 * @example megaUnit("MPa", 1e6).mega // true
 * @source definition
 */
export function megaUnit(name: string, factor: number, ...spellings: string[]): Unit {
  return { ...unit(name, factor, ...spellings), mega: true };
}

/**
 * The same unit under a name that says more, `psig` for `psi`; it is spelled with one of the qualifying words only.
 *
 * @param base record: the unit without the qualification
 * @param name text: as printed
 * @param before list: canonical words that may stand before the spellings of the base
 * @param behind list: canonical words that may stand behind them
 * @returns record: the unit
 * @example qualifiedUnit(unit("psi", 6894.76), "psig", [], ["g", "gauge"]).spellings[1] // "psigauge"
 * @source definition
 */
export function qualifiedUnit(base: Unit, name: string, before: readonly string[], behind: readonly string[]): Unit {
  const spelled = base.spellings.flatMap((spelling) => [
    ...before.map((word) => word + spelling),
    ...behind.map((word) => spelling + word),
  ]);
  return { ...base, name, spellings: [...new Set([canonicalUnit(name), ...spelled])] };
}

/**
 * The SI value of a reading in a unit.
 *
 * @param reading number, any: the number before the unit
 * @param of record: the unit
 * @returns SI: the quantity
 * @example siFromReading(12, unit("in", 0.0254)) // 0.3048 ± 1e-15
 * @source nist-sp-811 appendix B
 */
export function siFromReading(reading: number, of: Unit): number {
  return (reading - of.zero) * of.factor;
}

/**
 * The reading in a unit of an SI value.
 *
 * @param value SI, any: the quantity
 * @param of record: the unit
 * @returns number: the number before the unit
 * @example readingFromSi(0.3048, unit("in", 0.0254)) // 12 ± 1e-12
 * @source nist-sp-811 appendix B
 */
export function readingFromSi(value: number, of: Unit): number {
  return value / of.factor + of.zero;
}
