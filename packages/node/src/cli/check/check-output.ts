import type { Job } from "@oncethrough/engine/job/job";
import { type Check, checkUnit } from "@oncethrough/engine/rule/check";
import { type Finding, failsUnit, type Outcome, sortedFindings } from "@oncethrough/engine/rule/finding";
import type { Profile } from "@oncethrough/engine/rule/profile";
import { requirements } from "@oncethrough/engine/rule/requirements";
import { rules } from "@oncethrough/engine/rule/rules";
import { conditionOf, detailOf, limitBasis } from "@oncethrough/engine/rule/words";
import { type FigureQuantity, siUnit } from "../figure-text.ts";

/** What `oncethrough check --json` prints; the tables for people are printed from the same findings. Figures in SI. */
export interface CheckOutput {
  readonly format: "oncethrough check 1";
  readonly tag: string;
  readonly profile: string;
  readonly passes: boolean;
  readonly counts: Readonly<Record<Outcome | "waived" | "thin", number>>;
  /** By section in airflow order, the unit as a whole last; the smallest margin first in each. */
  readonly findings: readonly FindingOutput[];
  readonly unsolved: readonly { readonly condition: string; readonly reason: string }[];
}

/** A finding, all of it said. */
export interface FindingOutput {
  readonly section: string;
  readonly rule: string;
  readonly outcome: Outcome;
  readonly thin: boolean;
  readonly measures: string;
  readonly quantity: string;
  /** SI unit of value and limit; `1` for bare numbers. */
  readonly unit: string;
  readonly value?: number;
  readonly sense: "at most" | "at least";
  readonly limit?: number;
  readonly margin?: number;
  readonly condition?: string;
  readonly detail?: string;
  readonly missing?: string;
  readonly protects: string;
  readonly severity: string;
  readonly remedy: string;
  readonly basis: string;
  readonly contested?: string;
  readonly waived?: { readonly by: string; readonly reason: string };
  readonly requirements: readonly { readonly row: string; readonly what: string }[];
  readonly mends: readonly { readonly at: string; readonly field: string; readonly way: string }[];
}

/** A job judged: the findings as the engine gives them, and as they are printed. */
export interface Judged {
  readonly check: Check;
  readonly sections: readonly { readonly name: string; readonly findings: readonly Finding[] }[];
  readonly output: CheckOutput;
}

/** Judges the unit of a job by a profile. */
export function judgeJob(job: Job, profile: Profile): Judged {
  const check = checkUnit(job.unit, job.duty, job.conditions, rules, profile, job.waivers);
  const names = [...job.unit.sections.map(({ name }) => name), "unit"];
  const sections = names
    .map((name) => ({ name, findings: sortedFindings(check.findings.filter(({ entry }) => entry.section === name)) }))
    .filter(({ findings }) => findings.length > 0);
  const count = (is: (finding: Finding) => boolean) => check.findings.filter(is).length;
  const waived = (finding: Finding) => finding.outcome === "fail" && !failsUnit(finding);
  const output: CheckOutput = {
    format: "oncethrough check 1",
    tag: job.tag,
    profile: profile.name,
    passes: !check.findings.some(failsUnit) && check.unsolved.length === 0,
    counts: {
      fail: count(failsUnit),
      waived: count(waived),
      advice: count(({ outcome }) => outcome === "advice"),
      "cannot tell": count(({ outcome }) => outcome === "cannot tell"),
      pass: count(({ outcome }) => outcome === "pass"),
      thin: count(({ thin }) => thin),
    },
    findings: sections.flatMap(({ findings }) => findings.map((finding) => findingOutput(check, finding))),
    unsolved: check.unsolved.map(({ condition, reason }) => ({ condition: condition.name, reason })),
  };
  return { check, sections, output };
}

function findingOutput(check: Check, finding: Finding): FindingOutput {
  const { entry, outcome, thin, value, limit, margin } = finding;
  const { rule, section, waiver } = entry;
  const condition = conditionOf(check, finding);
  const detail = detailOf(check, finding);
  return {
    section,
    rule: rule.id,
    outcome,
    thin,
    measures: rule.measures,
    quantity: rule.quantity,
    unit: rule.quantity === "flag" ? "1" : siUnit(rule.quantity as FigureQuantity),
    ...(Number.isFinite(value) ? { value, limit, margin } : {}),
    sense: rule.sense,
    ...(condition === undefined ? {} : { condition }),
    ...(detail === undefined ? {} : { detail }),
    ...(outcome === "cannot tell" && rule.missing !== undefined ? { missing: rule.missing } : {}),
    protects: rule.protects,
    severity: rule.severity,
    remedy: rule.remedy,
    basis: limitBasis(finding),
    ...(rule.contested === undefined ? {} : { contested: rule.contested }),
    ...(waiver === undefined ? {} : { waived: { by: waiver.by, reason: waiver.reason } }),
    requirements: requirements.filter(({ id }) => rule.covers.includes(id)).map(({ id, what }) => ({ row: id, what })),
    mends: rule.mends.map(({ at, field, way }) => ({ at: typeof at === "string" ? at : at.kind, field, way })),
  };
}
