import type { Job } from "@oncethrough/engine/job/job";
import { exitCode } from "../exit-code.ts";
import { wrapped } from "../ink.ts";
import { conditionOption, workingOption } from "../job-option.ts";
import { readyJob } from "../job-source.ts";
import { type Given, optionFlag, printJson, type Streams, unitSystem } from "../session.ts";
import { printWorking, printWorkingTables } from "../working-print.ts";
import { decidingCondition } from "./deciding.ts";
import { printFilterStates, printLedger } from "./ledger-print.ts";
import { printLargestFlow } from "./most-air-print.ts";
import { type RateOutput, rateJob } from "./rate-output.ts";
import { printCondition, printSummary, type Style } from "./rate-print.ts";

/** `oncethrough rate`: solves the unit of a job and prints its stations. */
export async function rateCommand(given: Given, streams: Streams): Promise<number> {
  const ready = await readyJob(given, streams, "not solved");
  if (ready === undefined) return exitCode.found;
  const { job, ink } = ready;
  const condition = conditionOption(given, job);
  const conditions = condition === undefined ? job.conditions : [condition];
  const working = workingOption(given, job);
  const output = rateJob(job, conditions, { working, ledger: optionFlag(given, "ledger") });
  if (optionFlag(given, "json")) printJson(streams, output);
  else {
    const columns = Math.min(streams.columns, 120);
    const style: Style = { system: unitSystem(given), ink, columns, allFigures: optionFlag(given, "all") };
    streams.output(`${printRating(job, output, working, style)}\n`);
  }
  return verdict(output, optionFlag(given, "strict"));
}

function verdict(output: RateOutput, strict: boolean): number {
  const unsolved = output.conditions.some((condition) => !condition.solved);
  const missed = output.conditions.some((condition) => condition.shortfalls.length > 0);
  return unsolved || (strict && missed) ? exitCode.found : exitCode.fine;
}

function printRating(job: Job, output: RateOutput, working: string | undefined, style: Style): string {
  const { ink } = style;
  const title = [ink.strong(job.tag), job.duty.service, job.duty.customer].filter((part) => part !== "").join(" · ");
  const deciding = decidingCondition(output.conditions);
  if (deciding === undefined) return title;
  const { condition, why } = deciding;
  const alone = output.conditions.length === 1;
  const parts = [alone ? title : `${title}\n${outcome(output, style)}`];
  if (!alone)
    parts.push(
      printSummary(output.conditions, style),
      ink.quiet(wrapped(`in full: ${condition.key} (${why}); others with --condition KEY`, style.columns)),
    );
  parts.push(printCondition(condition, job.unit, style), printLargestFlow(output, style));
  if (condition.ledger !== undefined) parts.push(printLedger(condition.ledger, style));
  if (condition.filterStates !== undefined) parts.push(printFilterStates(condition.filterStates, style));
  if (working !== undefined && condition.working !== undefined) {
    parts.push(
      printWorking(`${working}: how its figures came about`, condition.working.lines, style.system, ink, style.columns),
      ...printWorkingTables(condition.working.tables, style.system, ink, style.columns),
    );
  }
  return parts.filter((part) => part !== "").join("\n\n");
}

function outcome({ conditions }: RateOutput, { ink }: Style): string {
  const unsolved = conditions.filter((condition) => !condition.solved).length;
  const missing = conditions.filter((condition) => condition.shortfalls.length > 0).length;
  const solved =
    unsolved === 0
      ? `${conditions.length} conditions, all solved`
      : ink.fail(`${unsolved} of ${conditions.length} conditions not solved`);
  const met = missing === 0 ? "everything asked is met" : ink.fail(`something not met in ${missing}`);
  return `${solved}; ${met}`;
}
