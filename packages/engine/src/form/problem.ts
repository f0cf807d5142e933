/** What is wrong at one place of a text, and what is allowed there. */
export interface Problem {
  /** Counted from 1. */
  readonly line: number;
  readonly column: number;
  /** Place in the text, `unit.sections[3].rows`; empty for the text as a whole. */
  readonly path: string;
  /** The field's words as written in the text. */
  readonly field: string;
  /** As typed, on one line; empty where nothing is. */
  readonly value: string;
  readonly problem: string;
  readonly allowed: string;
  /** The name that was probably meant. */
  readonly nearest?: string;
  readonly severity: "error" | "warning";
}

/** A problem in one line: `line 12, column 9: rows: "eght" is not a number; allowed: …; did you mean …?` */
export function problemText(problem: Problem): string {
  const field = problem.field === "" ? "" : `${problem.field}: `;
  const allowed = problem.allowed === "" ? "" : `; allowed: ${problem.allowed}`;
  const nearest = problem.nearest === undefined ? "" : `; did you mean "${problem.nearest}"?`;
  return `line ${problem.line}, column ${problem.column}: ${field}${problem.problem}${allowed}${nearest}`;
}

const longestValue = 80;

/** A piece of text on one line and not too long, to be quoted in a problem. */
export function shortened(piece: string): string {
  const line = piece.replace(/\s+/g, " ").trim();
  return line.length > longestValue ? `${line.slice(0, longestValue - 1)}…` : line;
}
