import { massOf } from "#arrangement/mass";
import type { Catalogue } from "#catalogue/read-catalogue";
import { dutyFields } from "#duty/duty";
import type { Field, Fields } from "#form/field";
import { textKey } from "#form/key";
import { spliceEdit } from "#form/splice";
import { type Job, sectionKind } from "#job/job";
import { type JobReading, readJob } from "#job/read-job";
import { type Check, checkUnit } from "#rule/check";
import { type Mend, thinMargin } from "#rule/contract";
import { type Finding, failsUnit } from "#rule/finding";
import type { Profile } from "#rule/profile";
import { rules } from "#rule/rules";
import { pricedUnit } from "#takeoff/offer";
import type { ShopBooks } from "#takeoff/shop-book";
import { casingFields } from "#unit/casing";
import { shortfallsOf } from "#unit/report";
import { valueBetween, valuesToTry } from "./value-to-try.ts";

/** By what a job is judged and priced. */
export interface Bench {
  readonly catalogue: Catalogue;
  readonly profile: Profile;
  readonly books: ShopBooks | undefined;
  /** Paths of the job that may be turned; every one that a rule names when left out. */
  readonly mayTurn?: (path: string) => boolean;
  /** Trials that are left; without end when left out. */
  readonly budget?: { left: number };
}

/** A job solved, judged, weighed and priced, as far as fixes are compared. */
export interface Proof {
  readonly text: string;
  readonly reading: JobReading;
  readonly job: Job;
  readonly check: Check;
  /** m; kg dry; Pa that the fan adds at most; cents, undefined without books. */
  readonly length: number;
  readonly mass: number;
  readonly fanPressure: number;
  readonly price: number | undefined;
  /** Records of a component's family. */
  readonly names: (family: string) => readonly string[];
  /** Everything that stands against the unit, by name: failing rules, unsolved conditions, what is missed while it runs. */
  readonly against: ReadonlySet<string>;
  /** Advice that is not followed, by name. */
  readonly advised: ReadonlySet<string>;
}

/** One change of the job that mends a finding, and what it costs. */
export interface Fix {
  /** `unit.sections[3].length` */
  readonly path: string;
  /** The field's words and those of what it belongs to: `cooling coil: rows`. */
  readonly words: string;
  readonly before: string;
  readonly value: string;
  /** Margin that it leaves. */
  readonly margin: number;
  readonly lengthChange: number;
  readonly massChange: number;
  readonly fanPressureChange: number;
  /** Cents; undefined without books. */
  readonly priceChange: number | undefined;
  /** The whole job text with the change. */
  readonly text: string;
}

/** Solves, judges, weighs and prices a job text; undefined when it does not read. */
export function proveJob(text: string, bench: Bench): Proof | undefined {
  const reading = readJob(text, bench.catalogue);
  const { job } = reading;
  if (job === undefined) return undefined;
  const check = checkUnit(job.unit, job.duty, job.conditions, rules, bench.profile, job.waivers);
  const { arrangement } = check.weighing;
  const outside = Math.max(0, ...job.unit.sections.map(({ layout }) => layout.outside));
  return {
    text,
    reading,
    job,
    check,
    length: job.unit.length + outside,
    mass: massOf(arrangement.whole, "dry").mass,
    fanPressure: fanPressureOf(check),
    price: bench.books && pricedUnit(job.unit, arrangement, bench.books).price.price,
    names: bench.catalogue.names,
    against: againstUnit(job, check),
    advised: new Set(check.findings.filter(({ outcome }) => outcome === "advice").map(nameOf)),
  };
}

function fanPressureOf({ ratings, judge }: Check): number {
  const fan = judge.unit.sections.findIndex((section) => section.behaviour.role === "fan");
  return Math.max(
    0,
    ...ratings.filter(({ solved }) => solved).map(({ sections }) => -sections[fan]!.totalPressureLoss),
  );
}

function nameOf({ entry }: Finding): string {
  return `${entry.section}: ${entry.rule.id}`;
}

function againstUnit(job: Job, check: Check): ReadonlySet<string> {
  const failing = check.findings.filter(failsUnit).map(nameOf);
  const unsolved = check.unsolved.map(({ condition }) => `not solved: ${condition.key}`);
  const missed = check.ratings
    .filter((rating) => rating.solved && rating.operation.fansRunning)
    .flatMap((rating) =>
      shortfallsOf(job.unit, rating).map(({ section, what }) => `${rating.condition.key}, ${section}: ${what}`),
    );
  return new Set([...failing, ...unsolved, ...missed]);
}

/**
 * The cheapest single change of the job that mends a finding and breaks nothing that held: every field that the rule
 * names is turned step by step, the unit solved and judged anew each time. Undefined when no single change does. Fixes
 * that leave more than a thin margin are taken before those that do not. Where only advice is to be followed, no other
 * advice that was followed is left for it.
 */
export function smallestFix(proof: Proof, finding: Finding, bench: Bench): Fix | undefined {
  const steps = smallestFixSteps(proof, finding, bench);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/** The smallest fix trial by trial: yields how far the search is, 0…1, wherever it may be stopped. */
export function* smallestFixSteps(proof: Proof, finding: Finding, bench: Bench): Generator<number, Fix | undefined> {
  const targets = targetsOf(proof, finding).filter(({ path }) => bench.mayTurn?.(path) ?? true);
  const fixes: Fix[] = [];
  for (const [place, target] of targets.entries()) {
    const trials = firstFix(proof, finding, target, bench);
    let trial = trials.next();
    for (; trial.done !== true; trial = trials.next()) yield (place + trial.value) / targets.length;
    if (trial.value !== undefined) fixes.push(trial.value);
  }
  const cost = (fix: Fix) => fix.priceChange ?? 1000 * fix.massChange;
  return fixes.sort((a, b) => cost(a) - cost(b) || Math.abs(a.lengthChange) - Math.abs(b.lengthChange))[0];
}

/** A field of the job that may be turned, and what may be written there. */
interface Target {
  readonly path: string;
  readonly words: string;
  readonly field: Field;
  readonly before: string;
  readonly values: readonly string[];
}

function targetsOf(proof: Proof, { entry }: Finding): readonly Target[] {
  return entry.rule.mends
    .flatMap((mend) =>
      placesOf(proof.job, mend, entry.index).flatMap(({ root, owner, fields }) => {
        const field = fieldAt(fields, mend.field);
        if (field === undefined) return [];
        const path = `${root}.${mend.field}`;
        const text = standingText(proof.reading, path);
        return [{ path, owner, mend, field, text }];
      }),
    )
    .map(({ path, owner, mend, field, text }) => ({
      path,
      field,
      words: `${owner}: ${mend.field.split(".").map(textKey).join(", ")}`,
      before: text ?? "",
      values: valuesToTry({ field, text }, mend.way, proof.names),
    }));
}

/** Where a mend may be made: path, name of what it belongs to, its fields. */
function placesOf(
  job: Job,
  { at }: Mend,
  index: number,
): readonly { readonly root: string; readonly owner: string; readonly fields: Fields }[] {
  if (at === "casing") return [{ root: "unit.casing", owner: "cabinet", fields: casingFields }];
  if (at === "duty") return [{ root: "duty", owner: "duty", fields: dutyFields }];
  return job.unit.sections.flatMap((section, place) => {
    const isMeant = at === "section" ? place === index : section.kind === at.kind;
    const fields = sectionKind(section.kind)?.fields;
    return isMeant && fields !== undefined ? [{ root: `unit.sections[${place}]`, owner: section.name, fields }] : [];
  });
}

function fieldAt(fields: Fields, path: string): Field | undefined {
  const [name, ...rest] = path.split(".");
  const field = fields[name!];
  if (rest.length === 0 || field === undefined) return field;
  return field.type === "group" ? fieldAt(field.fields, rest.join(".")) : undefined;
}

function standingText({ places, defaults }: JobReading, path: string): string | undefined {
  return places(path)?.text ?? defaults.find((each) => each.path === path)?.value;
}

/** Halvings between a step that does not do and the next that does. */
const halvings = 3;

/** The nearest value that mends with more than a thin margin, or else with one. */
function* firstFix(proof: Proof, finding: Finding, target: Target, bench: Bench): Generator<number, Fix | undefined> {
  const all = target.values.length + halvings;
  let thin: Fix | undefined;
  let tooLittle = target.before;
  for (const [place, value] of target.values.entries()) {
    const fix = tryValue(proof, finding, target, value, bench);
    yield (place + 1) / all;
    if (fix !== undefined && fix.margin >= thinMargin) {
      return yield* closer(proof, finding, target, bench, tooLittle, fix);
    }
    if (fix === undefined && thin !== undefined) return thin;
    thin ??= fix;
    tooLittle = value;
  }
  return thin;
}

/** A value nearer to what stood there that does as well. */
function* closer(
  proof: Proof,
  finding: Finding,
  target: Target,
  bench: Bench,
  tooLittle: string,
  found: Fix,
): Generator<number, Fix> {
  const all = target.values.length + halvings;
  let best = found;
  let least = tooLittle;
  for (let count = 0; count < halvings; count++) {
    const value = valueBetween(target.field, least, best.value);
    if (value === undefined) return best;
    const fix = tryValue(proof, finding, target, value, bench);
    yield (target.values.length + count + 1) / all;
    if (fix !== undefined && fix.margin >= thinMargin) best = fix;
    else least = value;
  }
  return best;
}

function tryValue(proof: Proof, finding: Finding, target: Target, value: string, bench: Bench): Fix | undefined {
  if (bench.budget !== undefined && bench.budget.left-- <= 0) return undefined;
  const splice = spliceEdit(proof.text, target.path, value);
  const after = splice.ok ? proveJob(splice.text, bench) : undefined;
  if (after === undefined) return undefined;
  const { rule, index } = finding.entry;
  const found = after.check.findings.find(({ entry }) => entry.rule.id === rule.id && entry.index === index);
  const isMended = found === undefined || (found.outcome === "pass" && found.margin > Math.max(finding.margin, 0));
  const isNew = (before: ReadonlySet<string>) => (name: string) => !before.has(name);
  const breaks = [...after.against].some(isNew(proof.against));
  // To follow one advice by leaving another mends nothing; a rule that decides goes before advice.
  const leaves = !failsUnit(finding) && [...after.advised].some(isNew(proof.advised));
  if (!isMended || breaks || leaves) return undefined;
  const { path, words, before } = target;
  return {
    path,
    words,
    before,
    value,
    margin: found?.margin ?? 1,
    lengthChange: after.length - proof.length,
    massChange: after.mass - proof.mass,
    fanPressureChange: after.fanPressure - proof.fanPressure,
    priceChange: after.price === undefined || proof.price === undefined ? undefined : after.price - proof.price,
    text: after.text,
  };
}
