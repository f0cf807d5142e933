import type { Problem } from "@oncethrough/engine/form/problem";
import { readForm } from "@oncethrough/engine/form/read";
import { SectionProblem } from "@oncethrough/engine/section/contract";
import { exitCode } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { type FileProblemLine, hasErrors, loadCatalogue, problemLine, readOperand } from "../job-source.ts";
import { type Given, optionFlag, printJson, type Streams, unitSystem } from "../session.ts";
import { checkCoilFile, coilFields, coilKinds } from "./coil-file.ts";
import { type CoilOutput, rateCoil } from "./coil-output.ts";
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
  if (!hasErrors(problems) && reading.ok && kind !== undefined) {
    const output = rated(() => rateCoil(kind, reading.values, optionFlag(given, "working")));
    if (!(output instanceof SectionProblem)) {
      const style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 120) };
      if (optionFlag(given, "json")) printJson(streams, output);
      else streams.output(`${printCoil(output, kind, style)}\n`);
      return exitCode.fine;
    }
    const place = reading.places(`coil.${output.field}`) ?? reading.places("coil");
    problems.push({ ...sectionProblem(output), line: place?.line ?? 1, column: place?.column ?? 1, file: name });
  }
  for (const problem of problems) streams.errors(problemLine(problem, ink));
  return exitCode.found;
}

function rated(rate: () => CoilOutput): CoilOutput | SectionProblem {
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
