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

/** A unit without offset; its name is one of its spellings. */
export function unit(name: string, factor: number, ...spellings: string[]): Unit {
  return offsetUnit(name, factor, 0, ...spellings);
}

/** A unit whose zero is not the zero of SI: `zero` is its reading where the SI value is 0. */
export function offsetUnit(name: string, factor: number, zero: number, ...spellings: string[]): Unit {
  return { name, factor, zero, spellings: [...new Set([canonicalUnit(name), ...spellings])], mega: false };
}

/** A unit that begins with mega-. */
export function megaUnit(name: string, factor: number, ...spellings: string[]): Unit {
  return { ...unit(name, factor, ...spellings), mega: true };
}

/** The unit under a name that says more (`psig` for `psi`), spelled only with one of the endings or beginnings. */
export function qualifiedUnit(base: Unit, name: string, qualifiers: readonly string[], before: boolean): Unit {
  const spelled = base.spellings.flatMap((spelling) =>
    qualifiers.flatMap((word) => (before ? [word + spelling, spelling + word] : [spelling + word])),
  );
  return { ...base, name, spellings: [...new Set([canonicalUnit(name), ...spelled])] };
}

/** The SI value of a reading in a unit. */
export function siFromReading(reading: number, of: Unit): number {
  return (reading - of.zero) * of.factor;
}

/** The reading in a unit of an SI value. */
export function readingFromSi(value: number, of: Unit): number {
  return value / of.factor + of.zero;
}
