import { isCaseData } from "./case-data.ts";
import { formats } from "./formats.ts";
import type { Row } from "./row.ts";

/** A file of published cases that cannot be used; the message is one line without the file's name. */
export class CaseFileProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = "CaseFileProblem";
  }
}

/**
 * Runs the text of a file of published cases.
 *
 * @throws CaseFileProblem when it is no JSON, of no known format or without cases
 */
export function runCases(text: string): Row[] {
  const data = parsed(text);
  if (!isCaseData(data)) throw new CaseFileProblem("it holds no JSON object at its top");
  const format = formats.find((each) => each.recognises(data));
  if (format === undefined) {
    throw new CaseFileProblem(`it is of no known format (${formats.map((each) => each.name).join(", ")})`);
  }
  const rows = format.rows(data);
  if (rows.length === 0) throw new CaseFileProblem(`it holds no cases (read as ${format.name})`);
  return rows;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (error) {
    const words = error instanceof Error ? error.message.replace(/\s+/g, " ") : String(error);
    throw new CaseFileProblem(`it is not JSON: ${words}`);
  }
}
