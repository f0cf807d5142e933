import type { Streams } from "./session.ts";

/** One line that tells how far long work is, written over itself; nothing where no person looks on. */
export interface ProgressLine {
  /** Tells a share, 0…1. */
  readonly say: (share: number) => void;
  /** Takes the line away. */
  readonly clear: () => void;
}

/** A line of progress on the errors' side of the streams, so that what is printed stays clean. */
export function progressLine({ watched, errors }: Pick<Streams, "watched" | "errors">, what: string): ProgressLine {
  if (!watched) return { say: () => {}, clear: () => {} };
  let last = "";
  const write = (text: string) => {
    if (text === last) return;
    errors(`\r${text.padEnd(last.length)}${text === "" ? "\r" : ""}`);
    last = text;
  };
  return {
    say: (share) => write(`${what}: ${Math.floor(100 * share)} %`),
    clear: () => write(""),
  };
}
