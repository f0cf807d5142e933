/** Writes docs/rules.md from the rules and the list of requirements. */

/**
 * @typedef {import("../packages/engine/src/rule/rules.ts")} Rules
 * @typedef {import("../packages/engine/src/rule/contract.ts").Rule} Rule
 * @typedef {import("../packages/engine/src/rule/requirements.ts")} Requirements
 * @typedef {import("../packages/engine/src/rule/words.ts")} Words
 */

/**
 * @param {Rules} rules
 * @param {Requirements} requirements
 * @param {Words} words
 * @returns {string}
 */
export function rulesPage({ families, rules }, { requirements }, { ruleFigure }) {
  const contested = rules.filter((rule) => rule.contested !== undefined);
  return [
    "# Rules",
    "",
    "Made from `packages/engine/src/rule/` by `npm run generate`. `oncethrough check JOB` judges a unit by them.",
    "",
    "A rule is data and one small function: it gives a value, and margin is the signed share of the limit that is left (of a",
    "span where a limit's zero means nothing, as of a temperature). A finding is told at the condition where its margin is",
    "smallest; *thin* means met with less than 5 % left. What is only remembered (`from memory`), what sources contradict",
    "one another about, and what a source merely recommends gives *advice* and never decides an exit code, unless an owner",
    "profile sets the limit. Profiles lie in `profiles/`; a job names its own under `owner profile` and lets rules go by name",
    "and reason under `waivers`.",
    "",
    `${rules.length} rules in ${families.length} families.`,
    "",
    ...families.flatMap((family) => familyPart(family, ruleFigure)),
    "## Where sources contradict one another",
    "",
    "| rule | positions |",
    "|---|---|",
    ...contested.map((rule) => `| ${rule.id} | ${cell(rule.contested ?? "")} |`),
    "",
    "## Requirements, row by row",
    "",
    "Every row is a rule, a required input, something that is calculated, a line of a document, or not taken, with the reason.",
    "",
    "| row | what | answered by |",
    "|---|---|---|",
    ...requirements.map((row) => `| ${row.id} | ${cell(row.what)} | ${cell(answer(row, rules))} |`),
    "",
  ].join("\n");
}

/**
 * @param {{ name: string, rules: readonly Rule[] }} family
 * @param {Words["ruleFigure"]} ruleFigure
 */
function familyPart({ name, rules }, ruleFigure) {
  return [
    `## ${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    "",
    "| rule | measures | limit | protects | source | certainty | decides |",
    "|---|---|---|---|---|---|---|",
    ...rules.map((rule) => {
      const cells = [
        `**${rule.id}**`,
        rule.measures,
        limitText(rule, ruleFigure),
        rule.protects,
        rule.source,
        rule.certainty,
        decides(rule),
      ];
      return `| ${cells.map(cell).join(" | ")} |`;
    }),
    "",
  ];
}

/**
 * @param {Rule} rule
 * @param {Words["ruleFigure"]} ruleFigure
 */
function limitText(rule, ruleFigure) {
  if (rule.quantity === "flag") return "yes";
  const { limit } = rule;
  if (typeof limit !== "number") return `${rule.sense}: ${rule.limitWords ?? "worked out"}`;
  const both = [ruleFigure(limit, rule.quantity, "ip"), ruleFigure(limit, rule.quantity, "si")];
  return `${rule.sense} ${both[0] === both[1] ? both[0] : `${both[0]} (${both[1]})`}`;
}

/** @param {Rule} rule */
function decides(rule) {
  if (rule.byDefault === false) return "in profiles that ask";
  if (rule.contested !== undefined) return "advice: contested";
  if (rule.certainty === "from memory") return "advice: remembered";
  return rule.isGuide === true ? "advice: recommended" : "yes";
}

/**
 * @param {import("../packages/engine/src/rule/requirements.ts").Requirement} row
 * @param {readonly Rule[]} rules
 */
function answer({ id, other, why }, rules) {
  const by = rules.filter((rule) => rule.covers.includes(id)).map((rule) => rule.id);
  const parts = by.length === 0 ? [] : [`${by.length === 1 ? "rule" : "rules"}: ${by.join(", ")}`];
  if (other !== undefined) parts.push(`${other === "not" ? "not taken" : other}: ${why}`);
  return parts.join("; ");
}

/** @param {string} text */
function cell(text) {
  return text.replaceAll("|", "\\|");
}

/**
 * The rules' names as a list of their own, for whoever has to know them without the rules.
 *
 * @param {Rules} rules
 * @returns {string}
 */
export function ruleNames({ rules }) {
  return [
    "/** Every rule by its name, for reading waivers without the rules themselves. Made by `npm run generate`. */",
    "export const ruleNames: readonly string[] = [",
    ...rules.map(({ id }) => `  ${JSON.stringify(id)},`),
    "];",
    "",
  ].join("\n");
}
