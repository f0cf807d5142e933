import { listOf, number, published, record, text } from "../schema/describe.ts";

const outcomes = ["fail", "advice", "cannot tell", "pass"];

const finding = record(
  {
    section: text("name of the section, or `unit`"),
    rule: text("name of the rule, as docs/rules.md has it"),
    outcome: { enum: outcomes },
    thin: { type: "boolean", description: "met, with less than 5 % of the limit left" },
    measures: text("what the value is"),
    quantity: text(),
    unit: text("SI unit of value and limit; `1` for bare numbers, and for 1 there and 0 not"),
    value: number("at the condition where the margin is smallest"),
    sense: { enum: ["at most", "at least"] },
    limit: number("that counts there"),
    margin: number("signed share of the limit that is left"),
    condition: text("where the margin is smallest; left out for what follows from the machine alone"),
    detail: text("what the value is of"),
    missing: text("what has to be known before it can be told"),
    protects: text(),
    severity: { enum: ["hazard", "damage", "shortfall", "nuisance"] },
    remedy: text(),
    basis: text("source of the limit and how sure it is, or the owner's reason"),
    contested: text("positions of sources that contradict one another"),
    waived: record({ by: text(), reason: text() }),
    requirements: listOf(record({ row: text(), what: text() }), "rows of the list of requirements, docs/rules.md"),
    mends: listOf(
      record({
        at: text("`section`, `casing`, `duty`, or a kind of section"),
        field: text(),
        way: { enum: ["more", "less", "other"] },
      }),
      "fields of the job that can mend it",
    ),
  },
  "value",
  "limit",
  "margin",
  "condition",
  "detail",
  "missing",
  "contested",
  "waived",
);

const count = { type: "integer", minimum: 0 };

/** The published schema of `oncethrough check --json`. */
export function checkSchema(): object {
  return published("check", "A unit judged by an owner's rules, as printed by `oncethrough check --json`; SI units", {
    ...record({
      format: { const: "oncethrough check 1" },
      tag: text("of the unit"),
      profile: text("name of the owner profile"),
      passes: { type: "boolean", description: "nothing that decides is missed, and every condition was solved" },
      counts: record({ fail: count, waived: count, advice: count, "cannot tell": count, pass: count, thin: count }),
      findings: listOf(finding, "by section in airflow order, the unit as a whole last; the smallest margin first"),
      unsolved: listOf(record({ condition: text(), reason: text() })),
    }),
  });
}
