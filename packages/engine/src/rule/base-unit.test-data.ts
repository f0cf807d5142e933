import { readdirSync, readFileSync } from "node:fs";
import { dutyFields } from "#duty/duty";
import type { Field, Fields } from "#form/field";
import { type Job, sectionKind } from "#job/job";
import { readJob } from "#job/read-job";
import { shippedCatalogue } from "#section/shipped.test-data";
import { casingFields } from "#unit/casing";
import { type Check, checkUnit } from "./check.ts";
import type { Mend, Rule } from "./contract.ts";
import type { Finding, Outcome } from "./finding.ts";
import { type Profile, readProfiles } from "./profile.ts";
import type { Patch } from "./rule-case.test-data.ts";
import { rules } from "./rules.ts";

/** One unit, invented, that meets the rules; a case patches it. All outside air, steam, chilled water, one housed fan. */
export const baseText = readFileSync(new URL("base-unit.test-data.yaml", import.meta.url), "utf8");

const folder = new URL("../../../../profiles/", import.meta.url);

/** The shipped owner profiles. */
export const shippedProfiles = readProfiles(
  readdirSync(folder).map((name) => ({ path: name, text: readFileSync(new URL(name, folder), "utf8") })),
  rules,
);

/** A shipped profile. */
export function shippedProfile(name: string): Profile {
  const profile = shippedProfiles.byName.get(name);
  if (profile === undefined) throw new Error(`no profile ${name}: ${JSON.stringify(shippedProfiles.problems)}`);
  return profile;
}

/** The base unit's job with pieces of its text replaced; throws where a piece is not there or the job does not read. */
export function patchedJob(patch: Patch): Job {
  let text = baseText;
  for (const [piece, by] of patch) {
    if (text.split(piece).length !== 2) throw new Error(`"${piece}" does not stand in the base unit just once`);
    text = text.replace(piece, () => by);
  }
  const { job, problems } = readJob(text, shippedCatalogue);
  if (job === undefined) throw new Error(problems.map(({ line, problem }) => `line ${line}: ${problem}`).join("\n"));
  return job;
}

/** The field that a mend names, in every kind of section where it may stand; undefined where there is none. */
export function fieldAt({ at, field }: Mend, rule: Rule): readonly (Field | undefined)[] {
  const kinds = typeof at !== "string" ? [at.kind] : at === "section" && typeof rule.of !== "string" ? rule.of : [];
  const tables: readonly Fields[] =
    at === "casing"
      ? [casingFields]
      : at === "duty"
        ? [dutyFields]
        : kinds.map((kind) => sectionKind(kind)?.fields ?? {});
  return tables.map((fields) => fieldIn(fields, field.split(".")));
}

function fieldIn(fields: Fields, [first = "", ...rest]: readonly string[]): Field | undefined {
  const found = fields[first];
  if (rest.length === 0 || found === undefined) return found;
  return found.type === "group" ? fieldIn(found.fields, rest) : undefined;
}

/** Conditions enough to show every rule something, for tests that judge many units. */
const few = ["dry-bulb-day-0", "wet-bulb-day-0.5", "wet-bulb-day-1", "winter-0", "minimum-flow-winter"];
const stopped = ["fan-stopped-dampers-closed", "fan-stopped-dampers-left-open"];

const checks = new Map<string, Check>();

/** The base unit with a patch, judged; every rule counts, those of some owners only too. */
export function checkOf(patch: Patch, profile: Profile = everyRule): Check {
  const key = JSON.stringify([profile.name, patch]);
  const known = checks.get(key);
  if (known !== undefined) return known;
  const job = patchedJob(patch);
  const conditions = job.conditions.filter((each) => [...few, ...stopped].includes(each.key));
  const check = checkUnit(job.unit, job.duty, conditions, rules, profile, job.waivers);
  checks.set(key, check);
  return check;
}

/** The limits of the sources, and every rule. */
export const everyRule: Profile = {
  name: "every rule",
  note: "",
  limits: new Map(),
  also: new Map(rules.filter(({ byDefault }) => byDefault === false).map(({ id }) => [id, "for the test"])),
  without: new Map(),
  waivers: [],
};

/** A rule's finding for the worst of its sections. */
export function findingFor(rule: string, patch: Patch, profile: Profile = everyRule): Finding | undefined {
  const found = checkOf(patch, profile).findings.filter(({ entry }) => entry.rule.id === rule);
  return [...found].sort((a, b) => rank(a) - rank(b))[0];
}

function rank({ outcome, margin }: Finding): number {
  const order: Readonly<Record<Outcome, number>> = { fail: -2e9, advice: -2e9, "cannot tell": -1e9, pass: 0 };
  return order[outcome] + (Number.isNaN(margin) ? 0 : margin);
}
