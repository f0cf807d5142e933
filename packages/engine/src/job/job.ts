import type { Condition } from "#duty/condition";
import { type Duty, dutyFields } from "#duty/duty";
import { ownConditionField } from "#duty/own-condition";
import { type Fields, group, list, text, variant } from "#form/field";
import { type Waiver, waiverFields } from "#rule/profile";
import type { SectionKind } from "#section/contract";
import { sectionKinds } from "#section/kinds";
import { casingFields } from "#unit/casing";
import type { Unit } from "#unit/unit";
import { type JobOption, optionField } from "./option.ts";

/** First line of every job file: what the file is, and the version of its layout. */
export const jobFormat = "oncethrough job 1";

/** A job read and made ready: the duty, the machine, the conditions at which it is solved. */
export interface Job {
  readonly tag: string;
  readonly duty: Duty;
  /** The machine with the options that are taken: what is drawn, rated, weighed. */
  readonly unit: Unit;
  /** The machine without any option; `unit` itself where none is taken. */
  readonly base: Unit;
  readonly options: readonly JobOption[];
  /** The standard conditions, one fan out among them for an array, then the user's own. */
  readonly conditions: readonly Condition[];
  /** Rules that are let go for this job, by name and reason. */
  readonly waivers: readonly Waiver[];
}

/** Every section has a name of its own besides the fields of its kind. */
const nameField = text({
  meaning: "Name of the section in the unit; the kind's name when left out",
  optional: true,
  longest: 40,
});

const kinds: readonly SectionKind[] = sectionKinds as unknown as readonly SectionKind[];

/** The kind of that name. */
export function sectionKind(name: string): SectionKind | undefined {
  return kinds.find((kind) => kind.name === name);
}

const variants: Record<string, Fields> = Object.fromEntries(
  kinds.map((kind) => [kind.name, { name: nameField, ...kind.fields }]),
);

const checks = Object.fromEntries(kinds.flatMap((kind) => (kind.check ? [[kind.name, kind.check]] : [])));

/** Everything that a job file may say. */
export const jobFields = {
  format: text({ meaning: `Layout of this file: \`${jobFormat}\`` }),
  note: text({ meaning: "Anything worth saying about the job", default: "", longest: 4000 }),
  revision: text({ meaning: "Revision letter or number", default: "", longest: 20 }),
  duty: group(dutyFields, { meaning: "What the customer needs" }),
  unit: group(
    {
      casing: group(casingFields, { meaning: "The cabinet" }),
      sections: list(variant(variants, { meaning: "A section of the machine", checks }), {
        meaning: "Sections in airflow order, from intake to duct",
        fewest: 1,
        most: 60,
      }),
    },
    { meaning: "The machine" },
  ),
  options: list(optionField, {
    meaning: "Options of the offer, each priced beside the base price",
    optional: true,
    most: 60,
  }),
  conditions: list(ownConditionField, { meaning: "Conditions of the user's own", optional: true, most: 100 }),
  waivers: list(group(waiverFields, { meaning: "A rule that is judged, but may stay unmet in this job" }), {
    meaning: "Rules that are let go, by name and reason; docs/rules.md names them",
    optional: true,
    most: 300,
  }),
} as const;
