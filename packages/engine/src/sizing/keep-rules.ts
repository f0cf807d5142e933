import { fieldName } from "#form/key";
import { type Bench, type Fix, type Proof, proveJob, smallestFix } from "#mending/smallest-fix";
import { type Finding, failsUnit, sortedFindings } from "#rule/finding";
import { findingWords, marginText } from "#rule/words";
import type { DraftValue, FixedUnit } from "./draft.ts";
import type { Choice } from "./workroom.ts";

/** Fixes that are made one after the other, and whole units that are tried for them. */
const mostFixes = 8;
const mostTrials = 40;

/** A sized unit mended until it keeps its owner's rules, and what it still does not keep. */
export interface Kept {
  readonly proof: Proof;
  readonly choices: readonly Choice[];
  readonly unkept: readonly string[];
}

/** Mends what the owner's rules find in a sized unit, the smallest fix at a time; what the user fixed is not turned. */
export function keepRules(text: string, bench: Bench, fixed: FixedUnit): Kept | undefined {
  let proof = proveJob(text, bench);
  if (proof === undefined) return undefined;
  const free = { ...bench, budget: { left: mostTrials }, mayTurn: (path: string) => !isFixed(fixed, path) };
  const choices: Choice[] = [];
  for (let count = 0; count < mostFixes; count++) {
    const fix = nextFix(proof, free);
    if (fix === undefined) break;
    const after = proveJob(fix.fix.text, bench);
    if (after === undefined) break;
    choices.push(choiceOf(fix.finding, fix.fix));
    proof = after;
  }
  const unkept = failing(proof).map((finding) => `${finding.entry.section}: ${findingWords(finding, "ip")}`);
  return { proof, choices, unkept };
}

function failing({ check }: Proof): readonly Finding[] {
  return sortedFindings(check.findings).filter(failsUnit);
}

function nextFix(proof: Proof, bench: Bench): { readonly finding: Finding; readonly fix: Fix } | undefined {
  for (const finding of failing(proof)) {
    const fix = smallestFix(proof, finding, bench);
    if (fix !== undefined) return { finding, fix };
  }
  return undefined;
}

function choiceOf(finding: Finding, { words, value, before }: Fix): Choice {
  const [of = "", field = ""] = words.split(": ");
  const was = before === "" ? "" : ` instead of ${before}`;
  return { of, chosen: `${field} ${value}${was}`, because: `${findingWords(finding, "ip")} (${marginText(finding)})` };
}

/** True where the duty file says the value at a path, or where the duty itself stands. */
function isFixed(fixed: FixedUnit, path: string): boolean {
  if (path.startsWith("duty.")) return true;
  const steps = path.split(".").slice(1);
  const section = /^sections\[(\d+)\]$/.exec(steps[0] ?? "");
  const known = section === null ? fixed.casing : fixed.sections?.[Number(section[1])]?.values;
  let at: DraftValue | undefined = known;
  for (const step of steps.slice(1)) {
    if (typeof at !== "object") return at !== undefined;
    const name: string | undefined = Object.keys(at).find((key) => fieldName(key) === step);
    at = name === undefined ? undefined : at[name];
  }
  return at !== undefined;
}
