import { applied, inverted, type TextChange } from "./text-change.ts";

/** A named step that can be undone: what was done in the words of the page, and the change of the job text. */
export interface Step {
  readonly name: string;
  readonly change: TextChange;
}

/** Steps done, latest last, and steps undone, latest undone last. */
export interface History {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** Nothing done yet. */
export const emptyHistory: History = { past: [], future: [] };

/** Steps that are kept; older ones can no longer be undone. */
const mostSteps = 1000;

/** The history with one more step; what was undone before is gone. Typing on at the same place makes one step. */
export function withStep(history: History, step: Step): History {
  const last = history.past.at(-1);
  const joined = last === undefined ? undefined : joinedTyping(last, step);
  if (joined !== undefined) return { past: [...history.past.slice(0, -1), joined], future: [] };
  return { past: [...history.past, step].slice(-mostSteps), future: [] };
}

/** A text and its history. */
export interface Undoable {
  readonly text: string;
  readonly history: History;
}

/** One step back; the same when there is none. */
export function undone({ text, history }: Undoable): Undoable {
  const step = history.past.at(-1);
  if (step === undefined) return { text, history };
  return {
    text: applied(text, inverted(step.change)),
    history: { past: history.past.slice(0, -1), future: [...history.future, step] },
  };
}

/** The latest undone step again; the same when there is none. */
export function redone({ text, history }: Undoable): Undoable {
  const step = history.future.at(-1);
  if (step === undefined) return { text, history };
  return {
    text: applied(text, step.change),
    history: { past: [...history.past, step], future: history.future.slice(0, -1) },
  };
}

/** The name of steps made by typing in the text. */
export const typing = "typing";

/** Two steps of typing as one, when the second goes on where the first ended and neither begins a new line. */
function joinedTyping(last: Step, next: Step): Step | undefined {
  if (last.name !== typing || next.name !== typing) return undefined;
  const [one, two] = [last.change, next.change];
  if (one.inserted.includes("\n") || two.inserted.includes("\n") || two.removed.includes("\n")) return undefined;
  if (two.removed === "" && two.from === one.from + one.inserted.length) {
    return { name: typing, change: { ...one, inserted: one.inserted + two.inserted } };
  }
  const isBackspace = two.inserted === "" && two.from + two.removed.length === one.from + one.inserted.length;
  if (isBackspace && two.removed.length <= one.inserted.length) {
    const inserted = one.inserted.slice(0, one.inserted.length - two.removed.length);
    return { name: typing, change: { ...one, inserted } };
  }
  return undefined;
}
