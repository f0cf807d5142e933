import type { Catalogue } from "#catalogue/read-catalogue";
import type { Condition } from "#duty/condition";
import type { Duty } from "#duty/duty";
import { conditionOfUser, type OwnCondition } from "#duty/own-condition";
import { standardConditions } from "#duty/standard-conditions";
import type { Problem } from "#form/problem";
import { readForm } from "#form/read";
import type { DefaultApplied, Place } from "#form/reading";
import { unknownRule, type Waiver } from "#rule/profile";
import { ruleNames } from "#rule/rule-names";
import { assembleUnit, type WrittenSection } from "#unit/assemble";
import { driveSpeed, fansOf } from "#unit/drive-speed";
import type { AssemblyProblem } from "#unit/order";
import type { Unit } from "#unit/unit";
import { crossProblems, type PlacedProblem } from "./cross-check.ts";
import { type Job, jobFields, jobFormat, sectionKind } from "./job.ts";
import { takeOptions } from "./take-options.ts";

/** What reading a job text gives: the job when it is sound, else every problem; the defaults in either case. */
export interface JobReading {
  readonly job: Job | undefined;
  readonly problems: readonly Problem[];
  readonly defaults: readonly DefaultApplied[];
  /** Where the value of a path stands in the text, `unit.sections[3].rows`. */
  readonly places: (path: string) => Place | undefined;
}

/** A section's values as read; `kind` and `name` stand beside the fields of the kind. */
type SectionValues = Readonly<Record<string, unknown>> & { readonly kind: string; readonly name?: string | undefined };

/**
 * Reads a job text against a catalogue. Never throws for anything that a text may hold. Of the job `before`, an earlier
 * state of the text, the sections that are still the same are taken over.
 */
export function readJob(text: string, catalogue: Catalogue, before?: Job): JobReading {
  const context = { component: catalogue.component, componentNames: catalogue.names };
  const reading = readForm(text, jobFields, context);
  const { defaults, places, values } = reading;
  const toProblem = (placed: PlacedProblem): Problem => problemAt(places, placed);
  if (!reading.ok || values === undefined) return { job: undefined, problems: reading.problems, defaults, places };
  const duty = values.duty as Duty;
  const written = writtenSections(values.unit.sections as unknown as readonly SectionValues[]);
  const assembly = assembleUnit(values.unit.casing, written, before?.base);
  const found = [
    ...formatProblems(values.format),
    ...assembly.problems.map(assemblyProblem),
    ...crossProblems(duty, written),
  ].map(toProblem);
  const waivers = (values.waivers ?? []) as readonly Waiver[];
  found.push(...waiverProblems(waivers, assembly.unit, places));
  const problems = [...reading.problems, ...found];
  if (assembly.unit === undefined || found.length > 0) return { job: undefined, problems, defaults, places };
  const base = assembly.unit;
  const machine = { casing: values.unit.casing, sections: written };
  const { options, unit, problems: inOptions } = takeOptions(values.options ?? [], base, machine, duty, context);
  problems.push(...inOptions.map(toProblem));
  if (inOptions.length > 0) return { job: undefined, problems, defaults, places };
  const own = (values.conditions ?? []) as readonly OwnCondition[];
  const job: Job = {
    tag: duty.tag,
    duty,
    unit,
    base,
    options,
    conditions: conditionsOf(duty, unit, own),
    waivers,
  };
  return { job, problems, defaults, places };
}

function conditionsOf(duty: Duty, unit: Unit, own: readonly OwnCondition[]): readonly Condition[] {
  const fixedSpeed = driveSpeed(unit, standardConditions(duty, undefined, 1));
  return [
    ...standardConditions(duty, fixedSpeed, fansOf(unit)),
    ...own.map((each) => conditionOfUser(duty, each, fixedSpeed)),
  ];
}

function writtenSections(sections: readonly SectionValues[]): readonly WrittenSection[] {
  return sections.map((values) => {
    const kind = sectionKind(values.kind);
    if (kind === undefined) throw new Error(`section kind ${values.kind} passed the reader but is not known`);
    return { name: values.name ?? kind.name, kind, values };
  });
}

/** A waiver names a rule that there is, and a section of the unit. */
function waiverProblems(
  waivers: readonly Waiver[],
  unit: Unit | undefined,
  places: (path: string) => Place | undefined,
): readonly Problem[] {
  const names = [...(unit?.sections.map(({ name }) => name) ?? []), "unit"];
  return waivers.flatMap(({ rule, section }, index) => {
    const path = `waivers[${index}]`;
    if (!ruleNames.includes(rule)) return [unknownRule(places, `${path}.rule`, rule, ruleNames)];
    if (section === undefined || names.includes(section)) return [];
    const problem = `"${section}" is no section of this unit`;
    return [problemAt(places, { path: `${path}.section`, problem, allowed: names.join(", ") })];
  });
}

function formatProblems(format: string): readonly PlacedProblem[] {
  if (format === jobFormat) return [];
  return [
    { path: "format", problem: `"${format}" is not a layout that this version reads`, allowed: `\`${jobFormat}\`` },
  ];
}

function assemblyProblem({ index, field, problem, allowed }: AssemblyProblem): PlacedProblem {
  const section = `unit.sections[${Math.max(index, 0)}]`;
  return { path: field === undefined ? section : `${section}.${field}`, problem, allowed };
}

/** A problem at its place; a value that is not written is shown at the nearest thing around it that is. */
function problemAt(places: (path: string) => Place | undefined, { path, problem, allowed }: PlacedProblem): Problem {
  let around = path;
  let place = places(around);
  while (place === undefined && around !== "") {
    around = around.replace(/(^|\.)[^.[\]]*$|\[\d+\]$/, "");
    place = places(around);
  }
  const isOwn = around === path;
  return {
    line: place?.line ?? 1,
    column: place?.column ?? 1,
    path,
    field: spaced(path),
    value: isOwn ? firstLine(place?.text ?? "") : "",
    problem,
    allowed,
    severity: "error",
  };
}

function spaced(path: string): string {
  const last = path.slice(path.lastIndexOf(".") + 1).replace(/\[\d+\]/g, "");
  return last.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function firstLine(text: string): string {
  return text.split("\n", 1)[0]!.slice(0, 80);
}
