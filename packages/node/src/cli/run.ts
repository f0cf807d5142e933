import { FileProblem } from "#files/file-problem";
import { ListenProblem } from "#server/serve";
import { airCommand } from "./air/air-command.ts";
import { checkCommand } from "./check/check-command.ts";
import { coilCommand } from "./coil/coil-command.ts";
import { programName } from "./command-table.ts";
import { dampersCommand } from "./dampers/dampers-command.ts";
import { designCommand } from "./design/design-command.ts";
import { drawCommand } from "./draw/draw-command.ts";
import { exitCode, UsageProblem } from "./exit-code.ts";
import { fanCommand } from "./fan/fan-command.ts";
import { fitSurfaceCommand } from "./fit-surface/fit-surface-command.ts";
import { importFanCommand } from "./import-fan/import-fan-command.ts";
import { priceCommand } from "./price/price-command.ts";
import { type Actions, understand } from "./program.ts";
import { rateCommand } from "./rate/rate-command.ts";
import { readCommand } from "./read/read-command.ts";
import { schemaCommand } from "./schema/schema-command.ts";
import { serveCommand } from "./serve-command.ts";
import type { Streams } from "./session.ts";
import { soundCommand } from "./sound/sound-command.ts";
import { takeoffCommand } from "./takeoff/takeoff-command.ts";
import { weatherCommand } from "./weather/weather-command.ts";
import { weighCommand } from "./weigh/weigh-command.ts";
import { yearCommand } from "./year/year-command.ts";

const actions: Actions = {
  rate: rateCommand,
  design: designCommand,
  fan: fanCommand,
  sound: soundCommand,
  "import-fan": importFanCommand,
  dampers: dampersCommand,
  weigh: weighCommand,
  draw: drawCommand,
  check: checkCommand,
  takeoff: takeoffCommand,
  price: priceCommand,
  weather: weatherCommand,
  year: yearCommand,
  air: airCommand,
  coil: coilCommand,
  "fit-surface": fitSurfaceCommand,
  read: readCommand,
  schema: schemaCommand,
  serve: serveCommand,
};

/**
 * Runs the program with the words typed after its name.
 *
 * @returns the exit code; nothing is thrown, whatever the input
 */
export async function run(words: readonly string[], streams: Streams): Promise<number> {
  try {
    const understood = await understand(words, streams);
    if (understood.done) return understood.code;
    return await actions[understood.command](understood.given, streams);
  } catch (error) {
    return explain(error, streams);
  }
}

/** One line for what went wrong: a mistake of use or a file in its own words, anything else as a fault. */
export function explain(error: unknown, streams: Pick<Streams, "errors">): number {
  if (error instanceof UsageProblem || error instanceof FileProblem || error instanceof ListenProblem) {
    streams.errors(`${programName}: ${error.message.replace(/\s*\n\s*/g, " ")}\n`);
    return exitCode.wrongUse;
  }
  const words = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  const trace = process.env.ONCETHROUGH_TRACE === "1" && error instanceof Error ? `${error.stack}\n` : "";
  streams.errors(
    `${programName}: a fault of the program, not of the input: ${words.replace(/\s*\n\s*/g, " ")}\n${trace}`,
  );
  return exitCode.fault;
}
