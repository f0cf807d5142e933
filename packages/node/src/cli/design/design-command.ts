import { readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { readDutyFile } from "@oncethrough/engine/sizing/duty-file";
import { readProfileFolders } from "#files/profile-folder";
import { writeTextFile } from "#files/write-text";
import { exitCode } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, loadCatalogue, problemLine, readOperand } from "../job-source.ts";
import { chosenProfile } from "../profile-source.ts";
import { type Given, optionFlag, optionText, printJson, type Streams } from "../session.ts";
import { designOf } from "./design-output.ts";
import { printDesign } from "./design-print.ts";

/** `oncethrough design`: from a duty to a complete job, each choice with its number and limit. */
export async function designCommand(given: Given, streams: Streams): Promise<number> {
  const { name, text } = await readOperand(given, streams);
  const { catalogue, problems: catalogueProblems } = await loadCatalogue(given);
  const ink = textInk(streams.colour);
  const reading = readDutyFile(text, catalogue);
  const profiles = readProfiles(await readProfileFolders(optionText(given, "profiles")), rules);
  const { profile, problem } = chosenProfile(profiles, optionText(given, "profile"), {
    file: name,
    wanted: reading.duty?.ownerProfile,
    place: reading.places("duty.ownerProfile"),
  });
  const all = [
    ...catalogueProblems,
    ...profiles.problems,
    ...reading.problems.map((each) => ({ ...each, file: name })),
    ...(problem === undefined ? [] : [problem]),
  ];
  for (const each of all) streams.errors(problemLine(each, ink));
  if (profile === undefined || hasErrors(all)) {
    streams.errors(`${name}: not sized; mend the text first\n`);
    return exitCode.found;
  }
  const output = designOf(text, catalogue, profile);
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
