import { Readable } from "node:stream";
import type { Streams } from "./session.ts";

/** Streams that keep what is written to them. */
export interface KeptStreams extends Streams {
  readonly written: () => string;
  readonly complained: () => string;
}

/** Streams for a test: `input` is what stands on standard input. */
export function keptStreams(input = "", changes: Partial<Streams> = {}): KeptStreams {
  let output = "";
  let errors = "";
  return {
    input: Readable.from(input === "" ? [] : [Buffer.from(input)]),
    output: (text) => {
      output += text;
    },
    errors: (text) => {
      errors += text;
    },
    columns: 100,
    colour: false,
    terminal: false,
    watched: false,
    untilInterrupted: () => Promise.resolve(),
    ...changes,
    written: () => output,
    complained: () => errors,
  };
}
