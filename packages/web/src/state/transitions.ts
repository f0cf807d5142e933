import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Condition } from "@oncethrough/engine/duty/condition";
import { textKey } from "@oncethrough/engine/form/key";
import { removeAt, spliceEdit } from "@oncethrough/engine/form/splice";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import {
  type BeforeAct,
  type BenchState,
  type JobFile,
  type Notice,
  openedBench,
  sectionIndex,
  sectionPath,
  type UnitView,
} from "./bench-state.ts";
import { redone, type Undoable, undone, withStep } from "./history.ts";
import { readText, type SoundJob } from "./sound-job.ts";
import { changeBetween } from "./text-change.ts";
import type { ToldConditions } from "./told-conditions.ts";

/*
 * Pure transitions: a state in, the next state out. What they need besides comes as an argument.
 */

/** Another text by a named step; the same state when the text is the same. */
export function edited(state: BenchState, step: string, text: string, catalogue: Catalogue): BenchState {
  const change = changeBetween(state.text, text);
  if (change === undefined) return state;
  const history = withStep(state.history, { name: step, change });
  // Typing that goes on is one act, set against what stood when it began.
  const isJoined = history.past.length === state.history.past.length && state.before !== undefined;
  return withText({ ...state, history }, text, catalogue, isJoined ? state.before : actFrom(state, step));
}

/** A field as a person typed it into its row: spliced into the text; an empty one gives way to its default. */
export function fieldEdited(state: BenchState, path: string, typed: string, catalogue: Catalogue): BenchState {
  const value = typed.trim();
  if (value === "" && state.reading.places(path) === undefined) return state;
  const splice = value === "" ? removeAt(state.text, path) : spliceEdit(state.text, path, value);
  if (!splice.ok) return noticed(state, { text: splice.problem, weight: "caution" });
  const name = textKey(path.slice(path.lastIndexOf(".") + 1));
  return edited(state, value === "" ? `${name} as by default` : `${name} ${value}`, splice.text, catalogue);
}

/** Several fields of one part at once, as one named step; `undefined` takes a field out where it is written. */
export function fieldsEdited(
  state: BenchState,
  step: string,
  changes: readonly { readonly path: string; readonly typed: string | undefined }[],
  catalogue: Catalogue,
): BenchState {
  let text = state.text;
  for (const { path, typed } of changes) {
    if (typed === undefined && state.reading.places(path) === undefined) continue;
    const splice = typed === undefined ? removeAt(text, path) : spliceEdit(text, path, typed);
    if (!splice.ok) return noticed(state, { text: splice.problem, weight: "caution" });
    text = splice.text;
  }
  return edited(state, step, text, catalogue);
}

/** One step back. */
export function stepBack(state: BenchState, catalogue: Catalogue): BenchState {
  const { text, history } = undone(state);
  if (history === state.history) return state;
  return withText({ ...state, history }, text, catalogue, actFrom(state, `undone: ${state.history.past.at(-1)?.name}`));
}

/** One step forward again. */
export function stepForward(state: BenchState, catalogue: Catalogue): BenchState {
  const { text, history } = redone(state);
  if (history === state.history) return state;
  return withText({ ...state, history }, text, catalogue, actFrom(state, state.history.future.at(-1)?.name ?? ""));
}

/** Back or forward to where so many steps are done. */
export function steppedTo(state: BenchState, count: number, catalogue: Catalogue): BenchState {
  let now: Undoable = state;
  while (now.history.past.length > count && now.history.past.length > 0) now = undone(now);
  while (now.history.past.length < count && now.history.future.length > 0) now = redone(now);
  if (now.history === state.history) return state;
  const last = now.history.past.at(-1)?.name;
  const act = last === undefined ? "back to the text as opened" : `gone to: ${last}`;
  return withText({ ...state, history: now.history }, now.text, catalogue, actFrom(state, act));
}

/** Another file in place of this one; units of measure and the way of seeing stay as they are. */
export function opened(state: BenchState, file: JobFile, catalogue: Catalogue, text = file.storedText): BenchState {
  const { view, airMoves } = state;
  return { ...openedBench(file, catalogue, state.system, text), view, airMoves };
}

/** The text as it was when saving began is now what is stored. */
export function saved(state: BenchState, file: JobFile): BenchState {
  return { ...state, file, notice: { text: `saved ${file.name}`, weight: "information" } };
}

/** The text that another hand has stored in place of the one that stands here, as a step that can be undone. */
export function takenFromDisk(state: BenchState, file: JobFile, catalogue: Catalogue): BenchState {
  const taken = edited(state, `${file.name} as changed on the disk`, file.storedText, catalogue);
  const text = `${file.name} was changed on the disk and is taken as it stands there; undo shows it as it was`;
  return { ...taken, file, notice: { text, weight: "information" } };
}

/** Something to tell the person, or nothing any more. */
export function noticed(state: BenchState, notice: Notice | undefined): BenchState {
  return { ...state, notice };
}

/** The part in hand; one that the job does not have changes nothing. */
export function pickedPart(state: BenchState, path: string): BenchState {
  if (state.picked === path || !hasPart(state.sound, path)) return state;
  return { ...state, picked: path, openWorking: undefined };
}

/** The next section in airflow (or, with −1, the one before); from duty or cabinet the first. */
export function pickedBeside(state: BenchState, by: 1 | -1): BenchState {
  const index = sectionIndex(state.picked);
  return pickedPart(state, sectionPath(index === undefined ? 0 : index + by));
}

/** The finding in hand, and with it its section; the rule for the unit as a whole leaves the part in hand as it is. */
export function pickedFinding(state: BenchState, finding: string | undefined, index: number): BenchState {
  const picked = index < 0 || finding === undefined ? state : pickedPart(state, sectionPath(index));
  return { ...picked, finding };
}

/** The condition in hand. */
export function pickedCondition(state: BenchState, condition: string): BenchState {
  return { ...state, condition };
}

/** An hour of a year is in hand, as a condition besides those of the job. */
export function pickedHour(state: BenchState, hour: Condition): BenchState {
  state.sound?.book.takeHour(hour);
  return { ...state, condition: hour.key };
}

/** Inch-pound or international units for what is read. */
export function withSystem(state: BenchState, system: UnitSystem): BenchState {
  return { ...state, system };
}

/** Another way of seeing the machine. */
export function withView(state: BenchState, view: UnitView): BenchState {
  return { ...state, view };
}

/** A new section is about to be put at a place of the airway, or no longer. */
export function addingSection(state: BenchState, at: number | undefined): BenchState {
  return at === undefined ? { ...state, addingAt: undefined } : { ...state, addingAt: at, view: "side" };
}

/** Air that moves in the drawing, or stands. */
export function withAir(state: BenchState, airMoves: boolean): BenchState {
  return { ...state, airMoves };
}

/** Opens the working of a figure, or closes it when it is open. */
export function workingToggled(state: BenchState, figure: string): BenchState {
  return { ...state, openWorking: state.openWorking === figure ? undefined : figure };
}

/** All conditions of the job in hand are told of; of another job it says nothing. */
export function conditionsTold(state: BenchState, text: string, told: ToldConditions): BenchState {
  if (state.sound?.text !== text) return state;
  state.sound.book.take(told);
  return { ...state, solved: state.sound.book.tried };
}

function actFrom({ sound }: BenchState, act: string): BeforeAct | undefined {
  return sound === undefined ? undefined : { sound, act };
}

function withText(state: BenchState, text: string, catalogue: Catalogue, before: BeforeAct | undefined): BenchState {
  const { reading, sound } = readText(text, catalogue, state.sound);
  const isNew = sound !== state.sound;
  return {
    ...state,
    text,
    reading,
    sound,
    trial: undefined,
    // An act that leaves no sound job changes nothing that is seen.
    before: isNew ? before : state.before,
    picked: isNew ? followed(state.picked, state.sound, sound) : state.picked,
    condition: heldCondition(state.condition, sound),
    solved: isNew ? 0 : state.solved,
    notice: undefined,
  };
}

function hasPart(sound: SoundJob | undefined, path: string): boolean {
  const index = sectionIndex(path);
  if (index === undefined) return path === "duty" || path === "unit.casing";
  return sound?.job.unit.sections[index] !== undefined;
}

/** Where the picked section stands now that sections may have moved. */
function followed(path: string, before: SoundJob | undefined, now: SoundJob | undefined): string {
  const index = sectionIndex(path);
  if (index === undefined || now === undefined) return path;
  const name = before?.job.unit.sections[index]?.name;
  const sections = now.job.unit.sections;
  if (sections[index]?.name === name) return path;
  const moved = sections.findIndex((section) => section.name === name);
  if (moved >= 0) return sectionPath(moved);
  return sectionPath(Math.min(index, sections.length - 1));
}

/** The condition in hand, or the first of the job when it is there no longer. */
function heldCondition(key: string, sound: SoundJob | undefined): string {
  const conditions = sound?.job.conditions ?? [];
  if (sound?.book.hour?.key === key) return key;
  if (conditions.length === 0 || conditions.some((condition) => condition.key === key)) return key;
  return conditions[0]?.key ?? key;
}
