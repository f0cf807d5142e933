import { writeTextFile } from "#files/write-text";
import { exitCode } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadCatalogue, problemLine, readOperand } from "../job-source.ts";
import { type Given, optionFlag, optionText, printJson, type Streams } from "../session.ts";
import { designOf } from "./design-output.ts";
import { printDesign } from "./design-print.ts";

/** `oncethrough design`: from a duty to a complete job, each choice with its number and limit. */
export async function designCommand(given: Given, streams: Streams): Promise<number> {
  const { name, text } = await readOperand(given, streams);
  const { catalogue, problems: catalogueProblems } = await loadCatalogue(given);
  const ink = textInk(streams.colour);
  const { output, problems } = designOf(text, catalogue);
  const all = [...catalogueProblems, ...problems.map((each) => ({ ...each, file: name }))];
  for (const problem of all) streams.errors(problemLine(problem, ink));
  if (hasErrors(all)) {
    streams.errors(`${name}: not sized; mend the text first\n`);
    return exitCode.found;
  }
  const file = optionText(given, "output");
  const found = output.outcome === "unit";
  if (found && file !== undefined) await writeTextFile(file, output.text);
  if (optionFlag(given, "json")) {
    printJson(streams, output);
    return found ? exitCode.fine : exitCode.found;
  }
  const words = `${printDesign(output, ink, Math.min(streams.columns, 120))}\n`;
  // Where the job goes to standard output, what is said about it goes beside it.
  if (found && file === undefined) {
    streams.errors(words);
    streams.output(output.text);
  } else {
    streams.output(words);
    if (found) streams.output(`\n${file} is written\n`);
  }
  return found ? exitCode.fine : exitCode.found;
}
