import { join } from "node:path";
import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Problem } from "@oncethrough/engine/form/problem";
import type { Job } from "@oncethrough/engine/job/job";
import { type JobReading, readJob } from "@oncethrough/engine/job/read-job";
import { readTextFile, readTextStream } from "#files/read-text";
import { type CatalogueText, readCatalogueFolder, shippedFolders } from "#files/shipped";
import { type TextInk, textInk } from "./ink.ts";
import { type Given, operand, optionText, type Streams } from "./session.ts";

/** A problem and the file in which it stands. */
export interface FileProblemLine extends Problem {
  readonly file: string;
}

/** The text that a command was given, and what messages call it. */
export async function readOperand(given: Given, streams: Streams): Promise<{ name: string; text: string }> {
  const name = operand(given, 0);
  if (name === "-") return { name: "standard input", text: await readTextStream(streams.input, "standard input") };
  return { name, text: await readTextFile(name) };
}

/** The files of the shipped catalogue, and behind them those of the shop's own where a folder is given. */
export async function readCatalogueTexts(given: Given): Promise<readonly CatalogueText[]> {
  const shopFolder = optionText(given, "catalogue");
  const folders = [shippedFolders.catalogue, ...(shopFolder === undefined ? [] : [shopFolder])];
  const texts = await Promise.all(
    folders.map(async (folder) =>
      (await readCatalogueFolder(folder)).map((file) => ({ path: join(folder, file.path), text: file.text })),
    ),
  );
  return texts.flat();
}

/** The shipped catalogue, with the shop's own records laid over it where a folder is given. */
export async function loadCatalogue(given: Given): Promise<{ catalogue: Catalogue; problems: FileProblemLine[] }> {
  const catalogue = readCatalogue(await readCatalogueTexts(given));
  return { catalogue, problems: [...catalogue.problems] };
}

/** A job text read against the catalogue; problems of the catalogue come first. */
export interface LoadedJob {
  readonly name: string;
  readonly text: string;
  readonly catalogue: Catalogue;
  readonly reading: JobReading;
  readonly problems: readonly FileProblemLine[];
}

/** Reads the job that a command was given. */
export async function loadJob(given: Given, streams: Streams): Promise<LoadedJob> {
  const { name, text } = await readOperand(given, streams);
  const { catalogue, problems } = await loadCatalogue(given);
  const reading = readJob(text, catalogue);
  return {
    name,
    text,
    catalogue,
    reading,
    problems: [...problems, ...reading.problems.map((each) => ({ ...each, file: name }))],
  };
}

/** A job in which nothing forbids going on. */
export interface ReadyJob extends LoadedJob {
  readonly job: Job;
  readonly ink: TextInk;
}

/**
 * Reads the job that a command was given and tells its problems, those of other files first. Undefined where one of them
 * forbids going on; `refusal` ("not solved") has then said so.
 */
export async function readyJob(
  given: Given,
  streams: Streams,
  refusal: string,
  others: readonly FileProblemLine[] = [],
): Promise<ReadyJob | undefined> {
  const loaded = await loadJob(given, streams);
  const ink = textInk(streams.colour);
  const all = [...others, ...loaded.problems];
  for (const problem of all) streams.errors(problemLine(problem, ink));
  const { job } = loaded.reading;
  if (job !== undefined && !hasErrors(all)) return { ...loaded, job, ink };
  streams.errors(`${loaded.name}: ${refusal}; mend the text first\n`);
  return undefined;
}

/** A problem for a person, in a line: file, line and column as editors take them, field, what is wrong, what is allowed. */
export function problemLine(problem: FileProblemLine, ink: TextInk): string {
  const { file, line, column, field, value, problem: words, allowed, nearest, severity } = problem;
  const kind = severity === "warning" ? "warning: " : "";
  // A whole group that stands there is better looked at in the file.
  const shown = value !== "" && !value.includes("\n") && !words.includes(value.slice(0, 20));
  const typed = shown ? ` (typed: ${value})` : "";
  const meant = nearest === undefined ? "" : `; did you mean "${nearest}"?`;
  const limits = allowed === "" ? "" : `; allowed: ${allowed}`;
  const where = ink.quiet(`${file}:${line}:${column}:`);
  return `${where} ${kind}${field === "" ? "" : `${ink.strong(field)}: `}${words}${typed}${limits}${meant}\n`;
}

/** True where a problem forbids going on. */
export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === "error");
}
