import type { History, Step } from "./history.ts";
import { applied, inverted } from "./text-change.ts";

/** A step as the list of steps shows it. */
export interface StepWords {
  /** How many steps are done when this one is the last: where a click leads. */
  readonly count: number;
  readonly name: string;
  readonly isDone: boolean;
  /** Lines of the job text before and after, as far as they differ. */
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** Lines shown of each side of a step; more are told by their number. */
const mostLines = 4;
/** Steps whose lines are worked out: nobody reads further back. */
const mostSteps = 60;

/** The steps of a history, undone ones first (the one furthest ahead on top), then those done, latest first. */
export function stepsInWords(text: string, { past, future }: History): readonly StepWords[] {
  const done = past.slice(-mostSteps);
  const shown: StepWords[] = [];
  let now = text;
  for (let place = done.length - 1; place >= 0; place -= 1) {
    const step = done[place]!;
    const before = applied(now, inverted(step.change));
    shown.push({ ...linesOf(step, before, now), count: past.length - (done.length - 1 - place), isDone: true });
    now = before;
  }
  let ahead = text;
  const undone: StepWords[] = [];
  for (const [place, step] of future.toReversed().slice(0, mostSteps).entries()) {
    const after = applied(ahead, step.change);
    undone.unshift({ ...linesOf(step, ahead, after), count: past.length + place + 1, isDone: false });
    ahead = after;
  }
  return [...undone, ...shown];
}

function linesOf({ name, change }: Step, before: string, after: string) {
  const { from, removed, inserted } = change;
  return { name, before: linesAt(before, from, removed), after: linesAt(after, from, inserted) };
}

/** The whole lines that a piece of a text touches, without their indent. */
function linesAt(text: string, from: number, piece: string): readonly string[] {
  const start = text.lastIndexOf("\n", from - 1) + 1;
  const foot = text.indexOf("\n", from + piece.replace(/\n$/, "").length);
  const isWholeLines = piece === "" && (text[from - 1] === "\n" || from === 0);
  if (isWholeLines) return [];
  const lines = text
    .slice(start, foot < 0 ? text.length : foot)
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
  if (lines.length <= mostLines) return lines;
  return [...lines.slice(0, mostLines - 1), `… ${lines.length - mostLines + 1} more lines`];
}
