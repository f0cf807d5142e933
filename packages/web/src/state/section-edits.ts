import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Duty } from "@oncethrough/engine/duty/duty";
import { insertItem, moveItem, removeAt, type Splice, spliceEdit } from "@oncethrough/engine/form/splice";
import { crossProblems } from "@oncethrough/engine/job/cross-check";
import { sectionKind } from "@oncethrough/engine/job/job";
import { type OrderedSection, orderAdvice, orderProblems } from "@oncethrough/engine/unit/order";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import { type BenchState, isStale, sectionPath } from "./bench-state.ts";
import { freeName, newSectionText } from "./new-section.ts";
import { errorsOf, readText } from "./sound-job.ts";
import { edited, noticed } from "./transitions.ts";

/*
 * What a hand does to the row of sections in the drawing. Every act is one named step that splices the job text; one
 * that gives no sound job leaves everything as it was and says why.
 */

/** A section taken to another place of the airflow. */
export function sectionMoved(state: BenchState, from: number, to: number, catalogue: Catalogue): BenchState {
  const sections = sectionsOf(state);
  const section = sections[from];
  if (section === undefined || from === to || to < 0 || to >= sections.length) return state;
  const step = `${section.name} ${placeWords(sections.toSpliced(from, 1), to)}`;
  return acted(state, step, () => moveItem(state.text, list, from, to), to, catalogue);
}

/** A new section of a kind before the one that stands at a place; picked at once. */
export function sectionAdded(state: BenchState, at: number, kind: string, catalogue: Catalogue): BenchState {
  const unit = state.sound?.job.unit;
  if (unit === undefined || sectionKind(kind) === undefined) return state;
  const name = freeName(kind, unit);
  const text = newSectionText(kind, name, { unit, catalogue, system: state.system });
  const step = `${name} added ${placeWords(unit.sections, at)}`;
  return acted(state, step, () => insertItem(state.text, list, at, text), at, catalogue);
}

/** A section taken out. */
export function sectionRemoved(state: BenchState, index: number, catalogue: Catalogue): BenchState {
  const sections = sectionsOf(state);
  const section = sections[index];
  if (section === undefined) return state;
  const next = Math.min(index, sections.length - 2);
  return acted(state, `${section.name} removed`, () => removeAt(state.text, sectionPath(index)), next, catalogue);
}

/** A section's clear length, as a person would type it. */
export function sectionResized(state: BenchState, index: number, typed: string, catalogue: Catalogue): BenchState {
  const section = sectionsOf(state)[index];
  if (section === undefined) return state;
  const path = `${sectionPath(index)}.length`;
  return acted(state, `${section.name} ${typed} long`, () => spliceEdit(state.text, path, typed), index, catalogue);
}

/** The machine with a section's clear length as a hand tries it; undefined when the hand lets go. */
export function lengthTried(
  state: BenchState,
  index: number,
  typed: string | undefined,
  catalogue: Catalogue,
): BenchState {
  const spliced = typed === undefined ? undefined : spliceEdit(state.text, `${sectionPath(index)}.length`, typed);
  if (spliced?.ok !== true || isStale(state)) return { ...state, trial: undefined };
  const { reading, sound } = readText(spliced.text, catalogue, state.sound);
  return { ...state, trial: reading.job === undefined ? undefined : sound };
}

/** Why a section cannot stand where it is tried, or what it would cost there. */
export interface OrderWords {
  readonly words: string;
  readonly weight: "impossible" | "unwise";
}

/** What the order with a section moved would mean; undefined where there is nothing to say against it. */
export function moveWords(sections: readonly UnitSection[], from: number, to: number): OrderWords | undefined {
  const order = orderOf(sections);
  return newWords(order, order.toSpliced(from, 1).toSpliced(to, 0, ...order.slice(from, from + 1)));
}

/** What the order with a new section would mean. */
export function addWords(
  duty: Duty,
  sections: readonly UnitSection[],
  at: number,
  kind: string,
): OrderWords | undefined {
  const behaviour = sectionKind(kind);
  if (behaviour === undefined) return undefined;
  const added = { name: `a new ${kind}`, kind: behaviour, values: {} };
  const lack = crossProblems(duty, [added]).find(({ path }) => path === "unit.sections[0]");
  if (lack !== undefined) return { words: lack.problem, weight: "impossible" };
  const order = orderOf(sections);
  return newWords(order, order.toSpliced(at, 0, added));
}

/** `between filters and preheat coil`: where a place in the airflow is. */
export function placeWords(sections: readonly { readonly name: string }[], at: number): string {
  const [before, behind] = [sections[at - 1]?.name, sections[at]?.name];
  if (before === undefined) return `before ${behind ?? "everything"}`;
  return behind === undefined ? `behind ${before}` : `between ${before} and ${behind}`;
}

const list = "unit.sections";

function acted(state: BenchState, step: string, splice: () => Splice, pick: number, catalogue: Catalogue): BenchState {
  if (isStale(state)) {
    return noticed(state, {
      text: "the text has errors; the drawing takes no hand before they are mended",
      weight: "caution",
    });
  }
  const spliced = splice();
  if (!spliced.ok) return noticed(state, { text: `${step}: ${spliced.problem}`, weight: "caution" });
  const next = edited(state, step, spliced.text, catalogue);
  if (next === state) return state;
  if (isStale(next)) return noticed(state, { text: refusal(step, next), weight: "caution" });
  const picked = sectionPath(pick);
  const advice = newWords(orderOf(sectionsOf(state)), orderOf(sectionsOf(next)));
  const notice = advice === undefined ? undefined : ({ text: `${step}: ${advice.words}`, weight: "caution" } as const);
  return { ...next, picked, notice };
}

/** Why the text that the step would have given is no job. */
function refusal(step: string, { reading }: BenchState): string {
  const problem = errorsOf(reading)[0];
  if (problem === undefined) return `not ${step}`;
  return `not ${step}: ${problem.problem}${problem.allowed === "" ? "" : `; possible: ${problem.allowed}`}`;
}

function newWords(before: readonly OrderedSection[], after: readonly OrderedSection[]): OrderWords | undefined {
  const problem = orderProblems(after)[0];
  if (problem !== undefined) return { words: problem.problem, weight: "impossible" };
  const known = new Set(orderAdvice(before).map(({ advice }) => advice));
  const found = orderAdvice(after).flatMap(({ advice }) => (known.has(advice) ? [] : [advice]));
  return found.length === 0 ? undefined : { words: found.join("; "), weight: "unwise" };
}

function orderOf(sections: readonly UnitSection[]): readonly OrderedSection[] {
  return sections.map(({ name, behaviour }) => ({ name, kind: behaviour }));
}

function sectionsOf(state: BenchState): readonly UnitSection[] {
  return state.sound?.job.unit.sections ?? [];
}
