import { type CoilSorting, coilSortings } from "@oncethrough/engine/design/coil-alternative";
import type { Problem } from "@oncethrough/engine/form/problem";
import { readForm } from "@oncethrough/engine/form/read";
import { SectionProblem } from "@oncethrough/engine/section/contract";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { type FileProblemLine, hasErrors, loadCatalogue, problemLine, readOperand } from "../job-source.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { alternativesOf } from "./alternatives-output.ts";
import { alternativesCsv, printAlternatives } from "./alternatives-print.ts";
import { checkCoilFile, coilFields, coilKinds } from "./coil-file.ts";
import { rateCoil } from "./coil-output.ts";
import { printCoil } from "./coil-print.ts";

/** `oncethrough coil`: rates one coil by itself. */
export async function coilCommand(given: Given, streams: Streams): Promise<number> {
  const { name, text } = await readOperand(given, streams);
  const { catalogue, problems: catalogueProblems } = await loadCatalogue(given);
  const context = { component: catalogue.component, componentNames: catalogue.names };
  const reading = readForm(text, coilFields, context, checkCoilFile);
  const ink = textInk(streams.colour);
  const problems: FileProblemLine[] = [
    ...catalogueProblems,
    ...reading.problems.map((each) => ({ ...each, file: name })),
  ];
  const kind = coilKinds.find((each) => each.name === reading.values?.coil.kind);
  const wantsAlternatives = optionFlag(given, "alternatives");
  if (optionFlag(given, "csv") && !wantsAlternatives) throw new UsageProblem("--csv goes with --alternatives");
  if (!hasErrors(problems) && reading.ok && kind !== undefined) {
    const output = rated(() =>
      wantsAlternatives
        ? alternativesOf(reading.values, catalogue, alternativesWish(given))
        : rateCoil(kind, reading.values, optionFlag(given, "working")),
    );
    if (!(output instanceof SectionProblem)) {
      const style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
      if (optionFlag(given, "json")) printJson(streams, output);
      else if ("looked" in output) {
        if (optionFlag(given, "csv")) streams.output(alternativesCsv(output));
        else streams.output(`${printAlternatives(output, style)}\n`);
      } else streams.output(`${printCoil(output, kind, style)}\n`);
      return exitCode.fine;
    }
    const place = reading.places(`coil.${output.field}`) ?? reading.places("coil");
    problems.push({ ...sectionProblem(output), line: place?.line ?? 1, column: place?.column ?? 1, file: name });
  }
  for (const problem of problems) streams.errors(problemLine(problem, ink));
  return exitCode.found;
}

function alternativesWish(given: Given): { sort: CoilSorting; most: number } {
  const typed = optionText(given, "most") ?? "";
  const most = Number(typed);
  if (!(Number.isInteger(most) && most >= 1)) {
    throw new UsageProblem(`--most "${typed}" is no number of alternatives; allowed: a whole number from 1`);
  }
  return { sort: coilSortings.find((each) => each === optionText(given, "sort")) ?? "price", most };
}

function rated<Output>(rate: () => Output): Output | SectionProblem {
  try {
    return rate();
  } catch (error) {
    if (error instanceof SectionProblem) return error;
    throw error;
  }
}

function sectionProblem({ field, message, allowed }: SectionProblem): Omit<Problem, "line" | "column"> {
  const words = field.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return { path: `coil.${field}`, field: words, value: "", problem: message, allowed, severity: "error" };
}
