import { isAbsolute, join } from "node:path";
import { FileProblem } from "#files/file-problem";
import { readTextFile } from "#files/read-text";
import { printRows } from "./print-rows.ts";
import type { Row } from "./row.ts";
import { CaseFileProblem, runCases } from "./run-cases.ts";

/** Where the words come from and the text goes. */
export interface Surroundings {
  /** Folder that paths are read from. */
  readonly folder: string;
  /** The project's own files of cases, run when no file is named. */
  readonly ownCases: readonly string[];
  readonly output: (text: string) => void;
  readonly errors: (text: string) => void;
}

const usage = `npm run reference -- [FILE…] [--json]
Runs files of published cases and prints expected and got for every figure, with statistics per file.
Without a file: the project's own copies in reference/cases that are of a known format.
--json prints an array of { file, case, quantity, unit, expected, got, error, uncertainty, within }; what could not be
run has quantity "not run", or its own name, null figures and a reason.
Ends with 0 when all files were run, 2 on wrong use or when a file cannot be used.
`;

/** Bytes; a published grid of some thousand states stays well below. */
const largestFile = 64 * 1024 * 1024;

/** Runs the words typed after the command; the exit code. */
export async function runReference(words: readonly string[], surroundings: Surroundings): Promise<number> {
  if (words.includes("--help") || words.includes("-h")) {
    surroundings.output(usage);
    return 0;
  }
  const json = words.includes("--json");
  const unknown = words.find((word) => word.startsWith("-") && word !== "--json");
  if (unknown !== undefined) {
    surroundings.errors(`reference: there is no option ${unknown}; it takes files and --json\n`);
    return 2;
  }
  const named = words.filter((word) => word !== "--json");
  const files = named.length > 0 ? named : surroundings.ownCases;
  const collected: (Row & { file: string })[] = [];
  let code = 0;
  for (const file of files) {
    const rows = await rowsOf(file, surroundings, named.length > 0);
    if (rows === "bad") code = 2;
    if (typeof rows === "string") continue;
    if (json) collected.push(...rows.map(({ note: _printedOnly, ...row }) => ({ file, ...row })));
    else surroundings.output(`${printRows(file, rows)}\n`);
  }
  if (json) surroundings.output(`${JSON.stringify(collected, undefined, 1)}\n`);
  return code;
}

/** The rows of a file; a named file that cannot be used is told in one line, an own one of another format passed over. */
async function rowsOf(
  file: string,
  { folder, errors }: Surroundings,
  named: boolean,
): Promise<Row[] | "bad" | "other"> {
  try {
    const text = await readTextFile(isAbsolute(file) ? file : join(folder, file), { most: largestFile });
    return runCases(text);
  } catch (error) {
    if (error instanceof CaseFileProblem) {
      if (!named) return "other";
      errors(`reference: ${file}: ${error.message}\n`);
      return "bad";
    }
    if (error instanceof FileProblem) {
      errors(`reference: ${error.message}\n`);
      return "bad";
    }
    throw error;
  }
}
