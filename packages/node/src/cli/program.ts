import { Command as Commander, CommanderError, Option } from "commander";
import {
  type CommandLine,
  type CommandName,
  commands,
  programMeaning,
  programName,
  programVersion,
} from "./command-table.ts";
import { exitCode, exitCodeMeanings } from "./exit-code.ts";
import type { Command, Given, Streams } from "./session.ts";

/** What is to be done after the words of the command line are understood. */
export type Understood =
  | { readonly done: true; readonly code: number }
  | { readonly done: false; readonly command: CommandName; readonly given: Given };

/** Understands the words of the command line by the table of commands; help and mistakes are answered at once. */
export async function understand(words: readonly string[], streams: Streams): Promise<Understood> {
  let found: Understood = { done: true, code: exitCode.wrongUse };
  const program = createProgram(streams, (command, given) => {
    found = { done: false, command, given };
  });
  if (words.length === 0) {
    program.outputHelp({ error: true });
    return found;
  }
  try {
    await program.parseAsync([...words], { from: "user" });
    return found;
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    return { done: true, code: error.exitCode === 0 ? exitCode.fine : exitCode.wrongUse };
  }
}

type Take = (command: CommandName, given: Given) => void;

function createProgram(streams: Streams, take: Take): Commander {
  const program = new Commander(programName);
  // Before any subcommand is made: they inherit what stands here.
  program
    .exitOverride()
    .configureOutput({
      writeOut: streams.output,
      writeErr: streams.errors,
      outputError: (text, write) => write(`${programName}: ${oneLine(text)}\n`),
      getOutHelpWidth: () => Math.min(streams.columns, 100),
      getErrHelpWidth: () => Math.min(streams.columns, 100),
      getOutHasColors: () => streams.colour,
      getErrHasColors: () => streams.colour,
    })
    .description(programMeaning)
    .version(`${programName} ${programVersion}`, "--version", "print the version")
    .helpOption("--help", "print this help")
    .helpCommand("help [command]", "print the help of a command")
    .allowExcessArguments(false)
    .addHelpText("after", exitCodeHelp);
  for (const line of commands) addCommand(program, line, take);
  return program;
}

function addCommand(program: Commander, line: CommandLine, take: Take): void {
  const command = program.command(line.name).summary(line.meaning).description(`${line.meaning}\n\n${line.details}`);
  for (const { name, meaning, optional, several } of line.operands) {
    const word = several ? `${name}...` : name;
    command.argument(optional ? `[${word}]` : `<${word}>`, meaning);
  }
  for (const { flags, meaning, choices, default: preset } of line.options) {
    const option = new Option(flags, meaning);
    if (choices !== undefined) option.choices([...choices]);
    if (preset !== undefined) option.default(preset);
    command.addOption(option);
  }
  const examples = line.examples.map((example) => `  ${programName} ${example.line}\n      ${example.meaning}`);
  command.addHelpText("after", `\nExamples:\n${examples.join("\n")}\n`);
  command.action(() => take(line.name, { operands: command.args, options: command.opts() }));
}

const exitCodeHelp = `\nExit codes:\n${exitCodeMeanings.map(({ code, meaning }) => `  ${String(code).padEnd(4)}${meaning}`).join("\n")}\n`;

/** Commander puts its suggestion on a second line. */
function oneLine(text: string): string {
  return text
    .replace(/^error:\s*/, "")
    .replace(/\s*\n\s*/g, " ")
    .replace("(Did you mean", "(did you mean")
    .trim();
}

/** A command for every name of the table. */
export type Actions = Readonly<Record<CommandName, Command>>;
