import { UsageProblem } from "./exit-code.ts";

/** What the program reads from and writes to; a test gives its own. */
export interface Streams {
  readonly input: AsyncIterable<Uint8Array | string>;
  readonly output: (text: string) => void;
  readonly errors: (text: string) => void;
  /** Characters to a line. */
  readonly columns: number;
  readonly colour: boolean;
  /** A person sits at the other end of the output. */
  readonly terminal: boolean;
  /** A person looks at the errors: progress is shown there. */
  readonly watched: boolean;
  /** Resolves when the program is asked to end, by Ctrl-C or the system. */
  readonly untilInterrupted: () => Promise<void>;
}

/** What was typed after the command's name. */
export interface Given {
  readonly operands: readonly string[];
  readonly options: Readonly<Record<string, string | boolean | undefined>>;
}

/** A command: does its work and gives the exit code. */
export type Command = (given: Given, streams: Streams) => Promise<number>;

/** The value of an option that takes one. */
export function optionText(given: Given, name: string): string | undefined {
  const value = given.options[name];
  return typeof value === "string" ? value : undefined;
}

/** The whole number that an option gives, from 1 to `most`; undefined where it was not given. */
export function optionCount(given: Given, name: string, most: number): number | undefined {
  const typed = optionText(given, name);
  if (typed === undefined) return undefined;
  const count = Number(typed);
  if (/^\d+$/.test(typed) && count >= 1 && count <= most) return count;
  throw new UsageProblem(`--${name} "${typed}" is no such number; allowed: a whole number from 1 to ${most}`);
}

/** True where an option without value was given. */
export function optionFlag(given: Given, name: string): boolean {
  return given.options[name] === true;
}

/** An operand that the table says must be there. */
export function operand(given: Given, index: number): string {
  const value = given.operands[index];
  if (value === undefined) throw new UsageProblem("a file is missing");
  return value;
}

/** The system in which figures are printed. */
export function unitSystem(given: Given): "ip" | "si" {
  return given.options.units === "si" ? "si" : "ip";
}

/** Prints a value as JSON. */
export function printJson(streams: Streams, value: unknown): void {
  streams.output(`${JSON.stringify(value, undefined, 2)}\n`);
}
