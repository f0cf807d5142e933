import type { Duty } from "#duty/duty";
import { nearestName } from "#form/nearest-name";
import type { ReadContext } from "#form/reading";
import { assembleUnit, type WrittenSection } from "#unit/assemble";
import { type Casing, casingFields } from "#unit/casing";
import type { Unit } from "#unit/unit";
import { type Changed, changedField, checked } from "./changed-field.ts";
import { crossProblems, type PlacedProblem } from "./cross-check.ts";
import type { JobOption, WrittenOption } from "./option.ts";

/** A machine as written: what options change. */
export interface WrittenUnit {
  readonly casing: Casing;
  readonly sections: readonly WrittenSection[];
}

/** The options made ready, and the unit with those that are taken. */
export interface OptionReading {
  readonly options: readonly JobOption[];
  /** The base unit itself where none is taken. */
  readonly unit: Unit;
  readonly problems: readonly PlacedProblem[];
}

type Change = NonNullable<WrittenOption["changes"]>[number];

/** Reads the options of a job whose base unit is sound. A problem stands at the option that brings it. */
export function takeOptions(
  written: readonly WrittenOption[],
  base: Unit,
  machine: WrittenUnit,
  duty: Duty,
  context: ReadContext,
): OptionReading {
  const problems: PlacedProblem[] = [...sameNames(written)];
  const builder = { base, duty, context, problems };
  const options = written.map((option, index): JobOption => {
    const changed = withOptions(machine, [[option, index]], builder);
    return {
      name: option.name,
      note: option.note,
      taken: option.taken,
      changes: option.changes ?? [],
      unit: changed ?? base,
      price: option.price,
      mass: option.mass ?? 0,
    };
  });
  const taken = written.flatMap((option, index): [WrittenOption, number][] => (option.taken ? [[option, index]] : []));
  const only = taken.length === 1 ? options[taken[0]![1]]!.unit : undefined;
  if (problems.length > 0 || only !== undefined) return { options, unit: only ?? base, problems };
  problems.push(...sameFields(taken));
  return { options, unit: withOptions(machine, taken, builder) ?? base, problems };
}

interface Builder {
  readonly base: Unit;
  readonly duty: Duty;
  readonly context: ReadContext;
  readonly problems: PlacedProblem[];
}

/** The machine with options, put together; undefined with a problem said. */
function withOptions(
  machine: WrittenUnit,
  options: readonly (readonly [WrittenOption, number])[],
  { base, duty, context, problems }: Builder,
): Unit | undefined {
  let changed = machine;
  let isChanged = false;
  for (const [option, index] of options) {
    for (const [at, change] of (option.changes ?? []).entries()) {
      const next = changedUnit(changed, change, context);
      if (!next.ok) {
        const { problem, allowed } = next.problem;
        problems.push({ path: `options[${index}].changes[${at}].${next.problem.at}`, problem, allowed });
        return undefined;
      }
      changed = next.unit;
      isChanged = true;
    }
  }
  if (!isChanged) return base;
  const path = `options[${options[0]![1]}]`;
  const names = options.map(([{ name }]) => `"${name}"`).join(" and ");
  const { unit, problems: found } = assembleUnit(changed.casing, changed.sections, base);
  const ofSection = (index: number) => changed.sections[index]?.name ?? "the unit";
  const said = [
    ...found.map(({ index, problem, allowed }) => ({ problem: `${ofSection(index)}: ${problem}`, allowed })),
    ...(unit === undefined ? [] : crossProblems(duty, changed.sections)),
  ];
  problems.push(...said.map(({ problem, allowed }) => ({ path, problem: `with ${names}: ${problem}`, allowed })));
  return said.length > 0 ? undefined : unit;
}

type ChangedUnit = { readonly ok: true; readonly unit: WrittenUnit } | Extract<Changed, { readonly ok: false }>;

function changedUnit(machine: WrittenUnit, { part, field, value }: Change, context: ReadContext): ChangedUnit {
  if (part === "cabinet") {
    const changed = changedField(casingFields, machine.casing, field, value, context);
    return changed.ok ? { ok: true, unit: { ...machine, casing: changed.values as Casing } } : changed;
  }
  const index = machine.sections.findIndex(({ name }) => name === part);
  const section = machine.sections[index];
  if (section === undefined) return noPart(machine, part);
  const changed = changedField(section.kind.fields, section.values, field, value, context);
  if (!changed.ok) return changed;
  const sound = checked(section.kind.check, changed.values);
  if (!sound.ok) return sound;
  const sections = machine.sections.with(index, { ...section, values: sound.values });
  return { ok: true, unit: { ...machine, sections } };
}

function noPart(machine: WrittenUnit, part: string): ChangedUnit {
  const known = ["cabinet", ...machine.sections.map(({ name }) => name)];
  const nearest = nearestName(part, known);
  const allowed = nearest === undefined ? known.join(", ") : `did you mean \`${nearest}\`? ${known.join(", ")}`;
  return { ok: false, problem: { at: "part", problem: `the unit has no part "${part}"`, allowed } };
}

function sameNames(written: readonly WrittenOption[]): readonly PlacedProblem[] {
  return written.flatMap(({ name }, index) => {
    if (written.findIndex((each) => each.name === name) === index) return [];
    const problem = `two options are called "${name}"`;
    return [{ path: `options[${index}].name`, problem, allowed: "names that tell them apart" }];
  });
}

/** Two options that are taken must not set the same field. */
function sameFields(taken: readonly (readonly [WrittenOption, number])[]): readonly PlacedProblem[] {
  const setBy = new Map<string, string>();
  return taken.flatMap(([{ name, changes }, index]) =>
    (changes ?? []).flatMap(({ part, field }, at) => {
      const key = `${part}\n${field}`;
      const other = setBy.get(key);
      setBy.set(key, name);
      if (other === undefined || other === name) return [];
      const problem = `"${other}" and "${name}" are both taken, and both set ${field} of ${part}`;
      return [{ path: `options[${index}].changes[${at}].field`, problem, allowed: "one of them taken" }];
    }),
  );
}
