import { fieldName, textKey } from "#form/key";
import { type Bench, type Fix, type Proof, proveJob, smallestFix } from "#mending/smallest-fix";
import { type Finding, failsUnit, sortedFindings } from "#rule/finding";
import { findingWords, marginText } from "#rule/words";
import type { DraftValue, FixedUnit } from "./draft.ts";
import type { Workroom } from "./workroom.ts";

/** Whole units that are tried for one change. */
const mostTrials = 24;

/**
 * Where no step of sizing knows what to do: the smallest single change that mends a missed rule and breaks nothing, found by
 * solving the unit anew. It stays from then on. What the user fixed, and the duty, are not turned.
 */
export function smallestChange(room: Workroom, text: string, bench: Bench): boolean {
  const proof = proveJob(text, bench);
  if (proof === undefined) return false;
  const mayTurn = (path: string) => !isFixed(room.fixed, path) && !isProportioned(path);
  const budget = { left: Math.min(mostTrials, room.effort.left) };
  const before = budget.left;
  const found = nextFix(proof, { ...bench, budget, mayTurn });
  room.effort.left -= before - Math.max(0, budget.left);
  if (found === undefined) return false;
  pin(room, found.finding, found.fix);
  return true;
}

function nextFix(proof: Proof, bench: Bench): { readonly finding: Finding; readonly fix: Fix } | undefined {
  for (const finding of sortedFindings(proof.check.findings).filter(failsUnit)) {
    const fix = smallestFix(proof, finding, bench);
    if (fix !== undefined) return { finding, fix };
  }
  return undefined;
}

/** The cross-section is chosen for everything at once, and not by one rule. */
function isProportioned(path: string): boolean {
  return path === "unit.casing.width" || path === "unit.casing.height";
}

function pin(room: Workroom, finding: Finding, { path, value, before, words }: Fix): void {
  const [, owner = "", ...steps] = path.split(".");
  const index = /^sections\[(\d+)\]$/.exec(owner)?.[1];
  const section = index === undefined ? undefined : room.draft.sections[Number(index)];
  const name = section?.name ?? "cabinet";
  const values = section?.values ?? room.draft.casing;
  const [key = "", member] = steps.map(textKey);
  const group = values[key];
  const set: DraftValue =
    member === undefined ? value : { ...(typeof group === "object" ? group : undefined), [member]: value };
  values[key] = set;
  room.pins.set(name, { ...room.pins.get(name), [key]: set });
  const field = words.slice(words.indexOf(": ") + 2);
  room.choices.set(`${name}: ${key}`, {
    of: name,
    chosen: `${field} ${value}${before === "" ? "" : ` instead of ${before}`}`,
    because: `${findingWords(finding, "ip")} (${marginText(finding)})`,
  });
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
