import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { insertItem, removeAt, type Splice, spliceEdit } from "@oncethrough/engine/form/splice";
import type { BenchState } from "./bench-state.ts";
import type { FindingLine } from "./finding-lines.ts";
import { edited, noticed } from "./transitions.ts";

/** A rule that is to be let go: for one section or everywhere, by whom, why. */
export interface NewWaiver {
  readonly rule: string;
  readonly section: string | undefined;
  readonly by: string;
  readonly reason: string;
}

/** Writes a waiver into the job, as one named step. */
export function ruleWaived(state: BenchState, waiver: NewWaiver, catalogue: Catalogue): BenchState {
  const place = state.sound?.job.waivers.length ?? 0;
  const { rule, section, by, reason } = waiver;
  const members = Object.entries({ section, by, reason }).flatMap(([name, value]) =>
    value === undefined ? [] : [[`waivers[${place}].${name}`, value] as const],
  );
  let splice: Splice = insertItem(state.text, "waivers", place, "rule: its name");
  for (const [path, value] of [[`waivers[${place}].rule`, rule] as const, ...members]) {
    if (splice.ok) splice = spliceEdit(splice.text, path, value);
  }
  if (!splice.ok) return noticed(state, { text: `not let go: ${splice.problem}`, weight: "caution" });
  return edited(state, `let go: ${rule}${section === undefined ? "" : `, ${section}`}`, splice.text, catalogue);
}

/** Place of the job's own waiver of a finding; undefined where there is none, or the owner's profile holds it. */
export function ownWaiver({ sound }: BenchState, { rule, section, waiver }: FindingLine): number | undefined {
  const found = sound?.job.waivers.findIndex(
    (each) =>
      each.rule === rule &&
      (each.section ?? section) === section &&
      each.by === waiver?.by &&
      each.reason === waiver.reason,
  );
  return found === undefined || found < 0 ? undefined : found;
}

/** Takes the job's waiver of a finding out again, as one named step. */
export function waiverTaken(state: BenchState, line: FindingLine, catalogue: Catalogue): BenchState {
  const place = ownWaiver(state, line);
  if (place === undefined) return state;
  const isLast = state.sound?.job.waivers.length === 1;
  const splice = removeAt(state.text, isLast ? "waivers" : `waivers[${place}]`);
  if (!splice.ok) return noticed(state, { text: splice.problem, weight: "caution" });
  return edited(state, `asked again: ${line.rule}`, splice.text, catalogue);
}
