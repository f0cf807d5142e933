import { nearestName } from "@oncethrough/engine/form/nearest-name";
import { type Profile, readProfiles } from "@oncethrough/engine/rule/profile";
import { rules } from "@oncethrough/engine/rule/rules";
import { readShop } from "@oncethrough/engine/takeoff/read-shop";
import { readProfileFolders } from "#files/profile-folder";
import { readShopFolder } from "#files/shop-folder";
import { writeTextFile } from "#files/write-text";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { textInk } from "../ink.ts";
import { hasErrors, type LoadedJob, loadJob, problemLine } from "../job-source.ts";
import { chosenProfile } from "../profile-source.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { judgeJob } from "./check-output.ts";
import { printCheck } from "./check-print.ts";
import { fixesOf, printFixes } from "./fixes.ts";

/** `oncethrough check`: the unit of a job judged by an owner's rules. */
export async function checkCommand(given: Given, streams: Streams): Promise<number> {
  const loaded = await loadJob(given, streams);
  const { name, reading, problems } = loaded;
  const profiles = readProfiles(await readProfileFolders(optionText(given, "profiles")), rules);
  const { profile, problem } = chosenProfile(profiles, optionText(given, "profile"), {
    file: name,
    wanted: reading.job?.duty.ownerProfile,
    place: reading.places("duty.ownerProfile"),
  });
  const ink = textInk(streams.colour);
  const all = [...profiles.problems, ...problems, ...(problem === undefined ? [] : [problem])];
  for (const each of all) streams.errors(problemLine(each, ink));
  const { job } = reading;
  if (job === undefined || profile === undefined || hasErrors(all)) {
    streams.errors(`${name}: not judged; mend the text first\n`);
    return exitCode.found;
  }
  const rule = optionText(given, "fix");
  if (rule !== undefined) return mendJob(given, streams, loaded, profile, rule);
  const judged = judgeJob(job, profile);
  if (optionFlag(given, "json")) printJson(streams, judged.output);
  else {
    const style: Style = { system: unitSystem(given), ink, columns: Math.min(streams.columns, 140) };
    const fixes = optionFlag(given, "fixes") ? await listFixes(given, loaded, profile, style) : "";
    streams.output(`${printCheck(judged, style, optionFlag(given, "all"))}\n${fixes}`);
  }
  const isUnknown = judged.output.counts["cannot tell"] > 0;
  return judged.output.passes && !(optionFlag(given, "strict") && isUnknown) ? exitCode.fine : exitCode.found;
}

async function listFixes(given: Given, loaded: LoadedJob, profile: Profile, style: Style): Promise<string> {
  const { books } = readShop(await readShopFolder(optionText(given, "shop")));
  const found = fixesOf(loaded.text, loaded.catalogue, profile, books, undefined);
  return found.length === 0 ? "" : `\n${printFixes(found, books?.prices.currency ?? "", style)}\n`;
}

/** Writes the job with the smallest fix of a rule in it: to --output, or over the file that was read, whose text is kept. */
async function mendJob(
  given: Given,
  streams: Streams,
  loaded: LoadedJob,
  profile: Profile,
  rule: string,
): Promise<number> {
  if (!rules.some(({ id }) => id === rule)) {
    const nearest = nearestName(
      rule,
      rules.map((each) => each.id),
    );
    const meant = nearest === undefined ? "" : ` (did you mean "${nearest}"?)`;
    throw new UsageProblem(`--fix "${rule}" is no rule${meant}; docs/rules.md lists them`);
  }
  const { books } = readShop(await readShopFolder(optionText(given, "shop")));
  const found = fixesOf(loaded.text, loaded.catalogue, profile, books, rule);
  const style: Style = { system: unitSystem(given), ink: textInk(streams.colour), columns: streams.columns };
  const fix = found.find((each) => each.fix !== undefined)?.fix;
  if (fix === undefined) {
    const words = found.length === 0 ? "is met with room, or does not apply" : "is mended by no single change";
    streams.errors(`${loaded.name}: "${rule}" ${words}; nothing is written\n`);
    return exitCode.found;
  }
  streams.errors(`${printFixes(found, books?.prices.currency ?? "", style)}\n`);
  const source = given.operands[0];
  const file = optionText(given, "output") ?? (source === "-" ? undefined : source);
  if (file === undefined) streams.output(fix.text);
  else await writeTextFile(file, fix.text);
  return exitCode.fine;
}
