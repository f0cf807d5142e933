import { pathSteps } from "@oncethrough/engine/form/path";
import type { DefaultApplied } from "@oncethrough/engine/form/reading";
import { exitCode } from "../exit-code.ts";
import { textInk, wrapped } from "../ink.ts";
import { hasErrors, type LoadedJob, loadJob, problemLine } from "../job-source.ts";
import { type Given, optionFlag, printJson, type Streams } from "../session.ts";

/** What `oncethrough read --json` prints. */
interface ReadOutput {
  readonly format: "oncethrough reading 1";
  readonly sound: boolean;
  readonly problems: LoadedJob["problems"];
  readonly defaults: readonly DefaultApplied[];
}

/** `oncethrough read`: every error of a job text, and on wish every default. */
export async function readCommand(given: Given, streams: Streams): Promise<number> {
  const loaded = await loadJob(given, streams);
  const { reading, problems } = loaded;
  const bad = hasErrors(problems) || reading.job === undefined;
  if (optionFlag(given, "json")) {
    const output: ReadOutput = { format: "oncethrough reading 1", sound: !bad, problems, defaults: reading.defaults };
    printJson(streams, output);
    return bad ? exitCode.found : exitCode.fine;
  }
  for (const problem of problems) streams.output(problemLine(problem, textInk(streams.colour)));
  if (optionFlag(given, "defaults")) streams.output(defaultLines(loaded, streams));
  streams.output(`${verdict(loaded, bad)}\n`);
  return bad ? exitCode.found : exitCode.fine;
}

function verdict({ name, reading, problems }: LoadedJob, bad: boolean): string {
  const { job, defaults } = reading;
  const errors = problems.filter((problem) => problem.severity === "error").length;
  if (bad || job === undefined) return `${name}: ${errors} ${errors === 1 ? "error" : "errors"}`;
  const parts = [
    "no errors",
    `${job.unit.sections.length} sections`,
    `${job.conditions.length} conditions`,
    `${defaults.length} defaults`,
  ];
  return `${name}: ${parts.join(", ")}`;
}

/** Every default under the group that it belongs to, as it would be written in the text. */
function defaultLines({ reading }: LoadedJob, streams: Streams): string {
  const ink = textInk(streams.colour);
  const groups = new Map<string, DefaultApplied[]>();
  for (const each of reading.defaults) {
    const group = each.path.replace(/\.?[^.[\]]+$/, "");
    groups.set(group, [...(groups.get(group) ?? []), each]);
  }
  const lines: string[] = [];
  for (const [group, members] of groups) {
    lines.push(ink.strong(groupWords(group, reading.places)));
    for (const { path, value, meaning } of members) {
      const typed = `${lastWord(path)}: ${value}`;
      lines.push(
        `  ${typed.padEnd(38)}  ${wrapped(meaning, Math.max(streams.columns - 42, 30)).replaceAll("\n", `\n${" ".repeat(42)}`)}`,
      );
    }
  }
  return lines.length === 0 ? "no defaults are in use\n" : `${lines.join("\n")}\n\n`;
}

function lastWord(path: string): string {
  return String(pathSteps(path)?.at(-1) ?? path);
}

/** `unit.sections[3]` is called by the section's name or kind. */
function groupWords(group: string, places: LoadedJob["reading"]["places"]): string {
  const steps = pathSteps(group) ?? [group];
  const words = steps.map((step) => (typeof step === "number" ? `${step + 1}` : step)).join(", ");
  const section = /^unit\.sections\[\d+\]/.exec(group)?.[0];
  const name = section === undefined ? undefined : (places(`${section}.name`) ?? places(`${section}.kind`))?.text;
  return name === undefined ? words || "job" : `${words} (${name})`;
}
