import type { Catalogue } from "#catalogue/read-catalogue";
import type { Duty } from "#duty/duty";
import { readForm } from "#form/read";
import { metresPerInch } from "#quantity/inch-pound";
import type { QuantityKind } from "#quantity/kind";
import { printQuantity } from "#quantity/print";
import type { Frame, SectionKind } from "#section/contract";
import { SectionProblem } from "#section/contract";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import type { Draft, DraftSection, DraftValue, FixedUnit } from "./draft.ts";
import type { Aims } from "./size-limits.ts";

/** One choice of the sizing, with its number and the limit that decided it. */
export interface Choice {
  /** What was chosen: `cabinet`, or the section's name. */
  readonly of: string;
  /** `width 120 in` */
  readonly chosen: string;
  /** `cooling face velocity 446 fpm against 450 fpm` */
  readonly because: string;
}

/** Where the sizing stands: what is wanted, what is chosen so far and why. */
export interface Workroom {
  readonly duty: Duty;
  readonly catalogue: Catalogue;
  /** Limits of the owner, tightened by what finished drafts have missed. */
  readonly limits: Aims;
  readonly fixed: FixedUnit;
  readonly draft: Draft;
  /** Whole units that may still be solved: what keeps a hopeless search short, the same on every machine. */
  readonly effort: { left: number };
  /** By the section's name, or `cabinet`: values that mend a rule and that no step turns back. */
  readonly pins: Map<string, Record<string, DraftValue>>;
  /** Pa that each fan had to add when it was chosen, by the section's name. */
  readonly fanRises: Map<string, number>;
  /** Sections that a step has chosen for the air of this cross-section, beyond what they began with. */
  readonly chosen: Set<string>;
  /** By the section's name: the heat, W, and the leaving air, °C, at which no coil was found. */
  readonly beyond: Map<string, { readonly heat: number; readonly wanted: number }>;
  /** Values of sections as they were read, by kind and text: the same are read again and again. */
  readonly readings: Map<string, Readonly<Record<string, unknown>>>;
  /** By what was chosen; a later choice takes the place of an earlier one. */
  readonly choices: Map<string, Choice>;
  /** What stands in the way, until something is changed about it. */
  readonly obstacles: Map<string, string>;
}

/** The draft made ready and solved. */
export interface Solved {
  readonly unit: Unit;
  readonly ratings: readonly UnitRating[];
  /** The values, as they were typed, of which each section was built. */
  readonly built: readonly string[];
}

/** Sections of a kind, in airflow order. */
export function sectionsOfKind(room: Workroom, ...kinds: readonly string[]): readonly DraftSection[] {
  return room.draft.sections.filter((section) => kinds.includes(section.kind));
}

/**
 * Chooses values of a section, unless the user has fixed them; gives whether anything changed. `because` is told with the
 * choice.
 */
export function choose(
  room: Workroom,
  section: DraftSection,
  values: Readonly<Record<string, DraftValue | undefined>>,
  because: string,
): boolean {
  const index = room.draft.sections.indexOf(section);
  const known = { ...room.fixed.sections?.[index]?.values, ...room.pins.get(section.name) };
  const free = Object.entries(values).flatMap(([name, value]) => freeOf(name, value, known[name]));
  const changed = setValues(section.values, free);
  if (free.length > 0) {
    const chosen = free
      .flatMap(([name, value]) => (value === undefined ? [] : [`${name} ${spoken(value)}`]))
      .join(", ");
    if (chosen !== "") room.choices.set(`${section.name}: ${free[0]![0]}`, { of: section.name, chosen, because });
  }
  return changed;
}

/** A value where nothing is fixed; of a group, with the members that are. */
function freeOf(
  name: string,
  value: DraftValue | undefined,
  known: DraftValue | undefined,
): readonly (readonly [string, DraftValue | undefined])[] {
  if (known === undefined) return [[name, value]];
  return typeof known === "object" && typeof value === "object" ? [[name, { ...value, ...known }]] : [];
}

/** Chooses values of the cabinet, unless the user has fixed them. */
export function chooseCasing(room: Workroom, values: Readonly<Record<string, DraftValue>>, because: string): boolean {
  const known = { ...room.fixed.casing, ...room.pins.get("cabinet") };
  const free = Object.entries(values).filter(([name]) => !(name in known));
  const changed = setValues(room.draft.casing, free);
  if (free.length > 0) {
    const chosen = free.map(([name, value]) => `${name} ${spoken(value)}`).join(", ");
    room.choices.set(`cabinet: ${free[0]![0]}`, { of: "cabinet", chosen, because });
  }
  return changed;
}

function setValues(
  into: Record<string, DraftValue>,
  values: readonly (readonly [string, DraftValue | undefined])[],
): boolean {
  let changed = false;
  for (const [name, value] of values) {
    if (JSON.stringify(into[name]) === JSON.stringify(value)) continue;
    if (value === undefined) delete into[name];
    else into[name] = value;
    changed = true;
  }
  return changed;
}

function spoken(value: DraftValue): string {
  if (typeof value !== "object") return value === true ? "yes" : value === false ? "no" : String(value);
  return Object.entries(value)
    .map(([name, each]) => `${name} ${spoken(each)}`)
    .join(", ");
}

/** Whole inches, rounded up to a step: what a shop cuts. */
export function inchesUp(metres: number, step = 1): string {
  return `${Math.ceil(metres / metresPerInch / step - 1e-6) * step} in`;
}

/** A figure against its limit, in words. */
export function against(what: string, value: number, limit: number, quantity: QuantityKind): string {
  return `${what} ${printQuantity(value, quantity, "ip")} against ${printQuantity(limit, quantity, "ip")}`;
}

/**
 * A section of a kind with these values as typed, built into a frame, as the job's reader would; undefined when the
 * values do not make one or the frame does not take it.
 */
export function builtSection<Design>(
  room: Workroom,
  kind: SectionKind,
  values: Readonly<Record<string, DraftValue>>,
  frame: Frame,
): Design | undefined {
  const read = readValues(room, kind, values);
  if (read === undefined) return undefined;
  return preparedSection<Design>(kind, read, frame);
}

/** The values of a kind as typed, read with every default; undefined when they are not sound. */
export function readValues(
  room: Workroom,
  kind: SectionKind,
  values: Readonly<Record<string, DraftValue>>,
): Readonly<Record<string, unknown>> | undefined {
  const { component, names: componentNames } = room.catalogue;
  const typed = JSON.stringify(values);
  const key = `${kind.name} ${typed}`;
  const known = room.readings.get(key);
  if (known !== undefined) return known;
  const reading = readForm(typed, kind.fields, { component, componentNames });
  if (!reading.ok) return undefined;
  const read = reading.values as Readonly<Record<string, unknown>>;
  room.readings.set(key, read);
  return read;
}

/** Values that were read, built into a frame; undefined when the frame does not take them. */
export function preparedSection<Design>(
  kind: SectionKind,
  values: Readonly<Record<string, unknown>>,
  frame: Frame,
): Design | undefined {
  try {
    return kind.prepare(values as never, frame) as Design;
  } catch (error) {
    if (error instanceof SectionProblem) return undefined;
    throw error;
  }
}
