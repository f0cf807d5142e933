import { group, list, text, type ValuesOf } from "#form/field";
import { nearestName } from "#form/nearest-name";
import type { Problem } from "#form/problem";
import { readForm } from "#form/read";
import type { Place } from "#form/reading";
import { parseQuantity } from "#quantity/parse";
import type { Rule } from "./contract.ts";

/** First line of every profile: what the file is, and the version of its layout. */
export const profileFormat = "oncethrough profile 1";

const ruleName = text({ meaning: "The rule, by its name", longest: 80 });
const reason = text({ meaning: "Why", longest: 400 });

/** A rule that is let go: which, by whom, why. */
export const waiverFields = {
  rule: ruleName,
  section: text({
    meaning: "The one section for which it is let go; everywhere when left out",
    optional: true,
    longest: 40,
  }),
  by: text({ meaning: "Who answers for it", longest: 120 }),
  reason,
} as const;

/** Everything that an owner profile may say. */
export const profileFields = {
  format: text({ meaning: `Layout of this file: \`${profileFormat}\`` }),
  profile: text({ meaning: "The profile's name", longest: 60 }),
  note: text({ meaning: "Whom it is for, and what it rests on", default: "", longest: 2000 }),
  limits: list(
    group(
      {
        rule: ruleName,
        limit: text({ meaning: "The owner's limit with its unit, `400 fpm`", longest: 60 }),
        reason,
      },
      { meaning: "A limit of the owner's own; it decides, whatever the sources say" },
    ),
    { meaning: "Limits of the owner's own", optional: true, most: 300 },
  ),
  also: list(group({ rule: ruleName, reason }, { meaning: "A rule that does not count by default" }), {
    meaning: "Rules that count besides the usual ones",
    optional: true,
    most: 300,
  }),
  without: list(group({ rule: ruleName, reason }, { meaning: "A rule that does not count" }), {
    meaning: "Rules that this owner does not ask",
    optional: true,
    most: 300,
  }),
  waivers: list(group(waiverFields, { meaning: "A rule that is judged, but may stay unmet" }), {
    meaning: "Rules that are let go, by name and reason",
    optional: true,
    most: 300,
  }),
} as const;

/** A rule let go. */
export type Waiver = ValuesOf<typeof waiverFields>;

/** An owner's limit, in SI. */
export interface OwnLimit {
  readonly limit: number;
  readonly reason: string;
}

/** A named choice of rules and limits. */
export interface Profile {
  readonly name: string;
  readonly note: string;
  readonly limits: ReadonlyMap<string, OwnLimit>;
  readonly also: ReadonlyMap<string, string>;
  readonly without: ReadonlyMap<string, string>;
  readonly waivers: readonly Waiver[];
}

/** A text that holds a profile, and where it comes from. */
export interface ProfileFile {
  readonly path: string;
  readonly text: string;
}

/** What is wrong with a profile, and in which file. */
export interface ProfileProblem extends Problem {
  readonly file: string;
}

/** The profiles at hand, by name; a later file replaces an earlier one of the same name. */
export interface Profiles {
  readonly byName: ReadonlyMap<string, Profile>;
  readonly problems: readonly ProfileProblem[];
}

/** Reads profile texts against the rules that there are. It does not throw, whatever the texts are. */
export function readProfiles(files: readonly ProfileFile[], rules: readonly Rule[]): Profiles {
  const byName = new Map<string, Profile>();
  const problems: ProfileProblem[] = [];
  for (const file of files) {
    const read = readProfile(file.text, rules);
    problems.push(...read.problems.map((problem) => ({ ...problem, file: file.path })));
    if (read.profile !== undefined) byName.set(read.profile.name, read.profile);
  }
  return { byName, problems };
}

const nothing = { component: () => undefined, componentNames: () => [] };

/** Reads one profile: it when it is sound, else every problem with its place. */
export function readProfile(
  source: string,
  rules: readonly Rule[],
): { readonly profile: Profile | undefined; readonly problems: readonly Problem[] } {
  const reading = readForm(source, profileFields, nothing);
  if (!reading.ok) return { profile: undefined, problems: reading.problems };
  const { values, places } = reading;
  const problems: Problem[] = [...reading.problems];
  if (values.format !== profileFormat) {
    problems.push(
      problemAt(
        places,
        "format",
        values.format,
        "this is not a profile that this version reads",
        `\`${profileFormat}\``,
      ),
    );
  }
  const known = new Map(rules.map((rule) => [rule.id, rule]));
  const find = (path: string, id: string): Rule | undefined => {
    const rule = known.get(id);
    if (rule === undefined) problems.push(unknownRule(places, path, id, [...known.keys()]));
    return rule;
  };
  const limits = new Map<string, OwnLimit>();
  (values.limits ?? []).forEach(({ rule: id, limit, reason: why }, index) => {
    const path = `limits[${index}]`;
    const rule = find(`${path}.rule`, id);
    if (rule === undefined) return;
    const parsed = parseLimit(rule, limit);
    if (parsed.ok) limits.set(id, { limit: parsed.value, reason: why });
    else problems.push(problemAt(places, `${path}.limit`, limit, parsed.problem, parsed.allowed));
  });
  const named = (list: "also" | "without"): ReadonlyMap<string, string> => {
    const chosen = values[list] ?? [];
    return new Map(
      chosen.filter(({ rule }, index) => find(`${list}[${index}].rule`, rule)).map((each) => [each.rule, each.reason]),
    );
  };
  const waivers = (values.waivers ?? []).filter(({ rule }, index) => find(`waivers[${index}].rule`, rule));
  const profile = {
    name: values.profile,
    note: values.note,
    limits,
    also: named("also"),
    without: named("without"),
    waivers,
  };
  return { profile: problems.length === 0 ? profile : undefined, problems };
}

/** A rule's name that nobody knows, as a problem at its place. */
export function unknownRule(
  places: (path: string) => Place | undefined,
  path: string,
  id: string,
  ids: readonly string[],
): Problem {
  const nearest = nearestName(id, ids);
  const problem = problemAt(places, path, id, `"${id}" is no rule`, "a rule of docs/rules.md");
  return nearest === undefined ? problem : { ...problem, nearest };
}

function problemAt(
  places: (path: string) => Place | undefined,
  path: string,
  value: string,
  problem: string,
  allowed: string,
): Problem {
  const place = places(path);
  const field = path.slice(path.lastIndexOf(".") + 1);
  return {
    line: place?.line ?? 1,
    column: place?.column ?? 1,
    path,
    field,
    value,
    problem,
    allowed,
    severity: "error",
  };
}

function parseLimit(rule: Rule, typed: string): ReturnType<typeof parseQuantity> {
  if (rule.quantity === "flag") {
    return {
      ok: false,
      problem: "this rule asks for something to be there and has no limit",
      allowed: "`also`, `without` or `waivers`",
    };
  }
  if (rule.quantity !== "count" && rule.quantity !== "factor") return parseQuantity(typed, rule.quantity);
  const value = Number(typed);
  if (typed.trim() !== "" && Number.isFinite(value)) return { ok: true, value, unit: "" };
  return { ok: false, problem: `"${typed}" is not a number`, allowed: "a number" };
}
