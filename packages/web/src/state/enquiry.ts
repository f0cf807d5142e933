import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { dutyFields } from "@oncethrough/engine/duty/duty";
import type { Fields } from "@oncethrough/engine/form/field";
import type { Problem } from "@oncethrough/engine/form/problem";
import { removeAt, spliceEdit } from "@oncethrough/engine/form/splice";
import { type Contradiction, contradictionsOf } from "@oncethrough/engine/sizing/contradiction";
import { type DutyReading, readDutyFile } from "@oncethrough/engine/sizing/duty-file";
import { openQuestions, type Question } from "@oncethrough/engine/sizing/question";

/** An enquiry on its way to a unit: the text of a duty file while it is being answered. */
export interface Enquiry {
  readonly text: string;
  readonly reading: DutyReading;
  /** The last answer could not be written: why. */
  readonly refused: string | undefined;
}

/** One answer: `undefined` takes it out again. */
export interface Answer {
  readonly path: string;
  readonly typed: string | undefined;
}

/** A duty of which nothing is known but the name that it goes by until it gets its own. */
export const blankText = "format: oncethrough job 1\n\nduty:\n  tag: AHU-1\n";

/** An enquiry of a text. */
export function enquiryOf(text: string, catalogue: Catalogue): Enquiry {
  return { text, reading: readDutyFile(text, catalogue), refused: undefined };
}

/** Answers spliced into the text; where one cannot be written, none is, and the enquiry says why. */
export function answered(enquiry: Enquiry, answers: readonly Answer[], catalogue: Catalogue): Enquiry {
  let { text } = enquiry;
  for (const { path, typed } of answers) {
    if (typed === undefined && enquiry.reading.places(path) === undefined) continue;
    const splice = typed === undefined ? removeAt(text, path) : spliceEdit(text, path, typed);
    if (!splice.ok) return { ...enquiry, refused: splice.problem };
    text = splice.text;
  }
  return enquiryOf(text, catalogue);
}

/** A leaf of the guided duty: what belongs together, in the order in which a customer tells it. */
export interface Leaf {
  readonly title: string;
  readonly asks: string;
  /** Names of the duty's fields on it. */
  readonly names: readonly (keyof typeof dutyFields)[];
}

/** The leaves. The design days are a table of their own on the second. */
export const leaves: readonly Leaf[] = [
  {
    title: "The air",
    asks: "how much, from where, and for what",
    names: ["tag", "customer", "service", "supplyAirflow", "outsideAirShare", "returnAir"],
  },
  {
    title: "The worst days",
    asks: "where it stands, and what weather it must stand",
    names: ["site", "summer", "winter"],
  },
  {
    title: "What the laboratories need",
    asks: "leaving air, duct pressure, sound",
    names: ["setPoints", "externalStatic", "soundLimits", "redundancy"],
  },
  { title: "What is at hand", asks: "steam, water, electricity", names: ["utilities"] },
  { title: "What it must fit", asks: "the place, the road, the lift", names: ["limits", "stackHeight"] },
];

/** The leaf's fields, apart from the design days, which stand in a table. */
export function leafFields({ names }: Leaf): Fields {
  const plain = names.filter((name) => name !== "summer" && name !== "winter");
  return Object.fromEntries(plain.map((name) => [name, dutyFields[name]]));
}

/** What still keeps the duty from being one, leaf by leaf. */
export function neededOn({ names }: Leaf, { reading }: Enquiry): readonly Problem[] {
  return reading.problems.filter(
    ({ path, severity }) => severity === "error" && names.some((name) => isWithin(path, `duty.${name}`)),
  );
}

const essentials: Readonly<Record<string, string>> = {
  "duty.supplyAirflow": "the design airflow",
  "duty.site": "the altitude of the site",
  "duty.summer": "the three summer days",
  "duty.winter": "the winter day",
  "duty.setPoints": "the air that must leave, in summer and in winter",
  "duty.externalStatic": "the pressure of the duct system",
};

/** An answer that is needed, in a few words. */
export function neededWords({ path, field, problem }: Problem): string {
  return essentials[path] ?? `${field === "" ? path : field}: ${problem}`;
}

/** What is hardly ever known at the first call: asked for only by those who look for it. */
const laterPaths = ["duty.site.barometricPressure", "duty.site.intakeDistances", "duty.externalStatic.includes"];

/** True for fields that wait in the fold until somebody wants them. */
export function comesLater(path: string): boolean {
  return laterPaths.some((each) => isWithin(path, each)) || /^duty\.utilities\.\w+\.(flow|concentration)$/.test(path);
}

/** How many of the leaf's values nobody has said. */
export function assumedOn({ names }: Leaf, { reading }: Enquiry): number {
  return reading.defaults.filter(({ path }) => names.some((name) => isWithin(path, `duty.${name}`))).length;
}

/** What nobody has said, what moves price or risk most first; none before the duty is whole. */
export function questionsOf({ reading }: Enquiry): readonly Question[] {
  return reading.duty === undefined ? [] : openQuestions(reading.duty, reading.defaults);
}

/** What the duty asks that contradicts itself. */
export function contradictionsIn({ reading }: Enquiry): readonly Contradiction[] {
  return reading.duty === undefined ? [] : contradictionsOf(reading.duty);
}

/** Something that a building has or has not; what is put down when it has, typical values to be corrected. */
export interface Offer {
  readonly path: string;
  readonly name: string;
  readonly answers: readonly Answer[];
}

const offerOf = (path: string, name: string, members: Readonly<Record<string, string>>): Offer => ({
  path,
  name,
  answers: Object.entries(members).map(([member, typed]) => ({ path: `${path}.${member}`, typed })),
});

/** What can be said to be there by one hand. */
export const offers: readonly Offer[] = [
  offerOf("duty.returnAir", "return air", {
    ...{ "summer.dryBulb": "75 °F", "summer.relativeHumidity": "50 %" },
    ...{ "winter.dryBulb": "70 °F", "winter.relativeHumidity": "30 %" },
  }),
  offerOf("duty.utilities.steam", "steam", { pressureAtCoil: "10 psig" }),
  offerOf("duty.utilities.chilledWater", "chilled water", { supply: "44 °F", rise: "12 F°" }),
  offerOf("duty.utilities.heatingWater", "hot water", {
    ...{ supply: "160 °F", drop: "30 F°", glycol: "propylene glycol", concentration: "35 %" },
  }),
];

/** The rows of the table of design days: which measure of moisture each is usually known by. */
export const designDayRows = [
  { path: "duty.summer.dryBulbDay", name: "hottest", usual: "wetBulb" },
  { path: "duty.summer.wetBulbDay", name: "highest wet bulb", usual: "wetBulb" },
  { path: "duty.summer.dewPointDay", name: "highest dew point", usual: "dewPoint" },
  { path: "duty.winter", name: "winter", usual: "relativeHumidity" },
] as const;

/** A file name for the job, from its tag. */
export function jobFileName(tag: string): string {
  const words = tag
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  return `${words === "" ? "job" : words}.yaml`;
}

function isWithin(path: string, group: string): boolean {
  return path === group || path.startsWith(`${group}.`) || path.startsWith(`${group}[`);
}
