import type { Catalogue } from "#catalogue/read-catalogue";
import { type Duty, dutyFields } from "#duty/duty";
import { type Field, type Fields, group, list, text, variant } from "#form/field";
import type { Problem } from "#form/problem";
import { readForm } from "#form/read";
import type { DefaultApplied, Place } from "#form/reading";
import { jobFormat } from "#job/job";
import { sectionKinds } from "#section/kinds";
import { casingFields } from "#unit/casing";
import { type FixedUnit, fixedUnit, noUnitFixed } from "./draft.ts";

/** A duty file read: a job file in which the unit, or any part of it, is still to be found. */
export interface DutyReading {
  readonly duty: Duty | undefined;
  readonly fixed: FixedUnit;
  readonly problems: readonly Problem[];
  readonly defaults: readonly DefaultApplied[];
  readonly places: (path: string) => Place | undefined;
}

/** The same fields with nothing that must be given: what the user leaves open is chosen. */
function loosened(fields: Fields): Fields {
  return Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, loose(field)]));
}

function loose(field: Field): Field {
  if (field.type !== "group") return { ...field, optional: true };
  // What members must fulfil together is asked of the finished job.
  const { check: _, ...rest } = field;
  return { ...rest, optional: true, fields: loosened(field.fields) };
}

const name = text({ meaning: "Name of the section in the unit; the kind's name when left out", optional: true });

const variants = Object.fromEntries(
  sectionKinds.map((kind) => [kind.name, { name, ...loosened(kind.fields as Fields) }]),
);

const dutyFileFields: Fields = {
  format: text({ meaning: `Layout of this file: \`${jobFormat}\`` }),
  note: text({ meaning: "Anything worth saying about the job", default: "", longest: 4000 }),
  revision: text({ meaning: "Revision letter or number", default: "", longest: 20 }),
  duty: group(dutyFields, { meaning: "What the customer needs" }),
  unit: group(
    {
      casing: group(loosened(casingFields), { meaning: "What is fixed of the cabinet", optional: true }),
      sections: list(variant(variants, { meaning: "A section that is wanted" }), {
        meaning: "The sections wanted, in airflow order, with what is fixed of each; left out, they are chosen",
        optional: true,
        most: 60,
      }),
    },
    { meaning: "What is fixed of the machine", optional: true },
  ),
};

/** Reads a duty file. Never throws for anything that a text may hold. */
export function readDutyFile(text: string, catalogue: Catalogue): DutyReading {
  const reading = readForm(text, dutyFileFields, {
    component: catalogue.component,
    componentNames: catalogue.names,
  });
  const { problems, defaults, places } = reading;
  if (!reading.ok) return { duty: undefined, fixed: noUnitFixed, problems, defaults, places };
  return { duty: reading.values.duty as Duty, fixed: fixedUnit(text), problems, defaults, places };
}
