import { weighArranged } from "@oncethrough/engine/arrangement/weigh";
import { smallestFixSteps } from "@oncethrough/engine/mending/smallest-fix";
import { type Check, judgeUnit } from "@oncethrough/engine/rule/check";
import { type Finding, sortedFindings } from "@oncethrough/engine/rule/finding";
import { requirements } from "@oncethrough/engine/rule/requirements";
import { rules } from "@oncethrough/engine/rule/rules";
import { conditionOf, detailOf } from "@oncethrough/engine/rule/words";
import { largestFlowConditions } from "@oncethrough/engine/unit/largest-flow";
import { ratingsOf } from "@oncethrough/engine/unit/rate-unit";
import { arrangementOf } from "#state/arranged";
import type { FindingLine, Judgement } from "#state/finding-lines";
import type { ToldConditions } from "#state/told-conditions";
import type { BookShelf } from "./book-shelf.ts";
import type { ConditionsTask, FindingsTask, FixTask, FoundFix } from "./task.ts";

/** Solves a job at all its conditions; one step. */
export function* solveConditions({ text }: ConditionsTask, shelf: BookShelf): Generator<number, ToldConditions> {
  yield 0;
  return shelf.told(text);
}

/** Judges the unit of a job by the profile that it names, on what is solved of it already; one step. */
export function* judgeJob({ text }: FindingsTask, shelf: BookShelf): Generator<number, Judgement> {
  yield 0;
  const sound = shelf.sound(text);
  const { job, book } = sound;
  const { unit, duty, waivers } = job;
  const profile = shelf.profile(duty.ownerProfile);
  shelf.told(text);
  const wanted = book.all();
  const excess = ratingsOf(unit, largestFlowConditions(wanted), wanted[0]);
  const weighing = weighArranged(unit, arrangementOf(sound));
  const check = judgeUnit({ unit, duty, wanted, excess, weighing }, rules, profile, waivers);
  const own = new Set(job.conditions.map(({ key }) => key));
  return {
    profile: profile.name,
    profiles: shelf.profileNames,
    lines: sortedFindings(check.findings).map((finding) => lineOf(check, finding, own)),
  };
}

function lineOf(check: Check, finding: Finding, own: ReadonlySet<string>): FindingLine {
  const { entry, outcome, thin, value, limit, margin, missed, told } = finding;
  const { rule, section, index, waiver, decides } = entry;
  const { id, quantity, sense, measures, protects, remedy, severity, source, certainty, covers } = rule;
  const name = conditionOf(check, finding);
  const key = check.conditions[finding.at]?.key;
  return {
    key: `${section}: ${id}`,
    rule: id,
    ...{ section, index, outcome, thin, quantity, sense, value, limit, margin, missed, told },
    ...{ measures, protects, remedy, severity, source, certainty, decides },
    condition: name === undefined ? undefined : { name, key: key !== undefined && own.has(key) ? key : undefined },
    detail: detailOf(check, finding),
    missing: outcome === "cannot tell" ? rule.missing : undefined,
    limitWords: rule.limitWords,
    isGuide: rule.isGuide === true,
    contested: rule.contested,
    own: entry.own && { profile: entry.own.profile, reason: entry.own.reason },
    waiver: waiver && { by: waiver.by, reason: waiver.reason },
    requirements: requirements.filter((each) => covers.includes(each.id)).map(({ what }) => what),
    canMend: rule.mends.length > 0,
  };
}

/** Looks for the smallest fix of one finding: every step is a whole unit solved, judged, weighed and priced. */
export function* mendFinding({ text, section, rule }: FixTask, shelf: BookShelf): Generator<number, FoundFix> {
  yield 0;
  const { proof, bench } = shelf.proof(text);
  const finding = proof.check.findings.find(({ entry }) => entry.section === section && entry.rule.id === rule);
  if (finding === undefined) throw new Error(`"${rule}" does not apply to ${section}`);
  yield 0;
  const fix = yield* smallestFixSteps(proof, finding, bench);
  if (fix === undefined) return { fix: undefined };
  const { path, words, before, value, margin, lengthChange, massChange, fanPressureChange, priceChange } = fix;
  return { fix: { path, words, before, value, margin, lengthChange, massChange, fanPressureChange, priceChange } };
}
