/** How the program ends, for scripts. */
export const exitCode = { fine: 0, found: 1, wrongUse: 2, fault: 70 } as const;

/** What each exit code means, for the help and the manual. */
export const exitCodeMeanings: readonly { readonly code: number; readonly meaning: string }[] = [
  { code: exitCode.fine, meaning: "answered" },
  {
    code: exitCode.found,
    meaning:
      "errors in the text or rows that was read, or a condition that could not be solved, or a work that was stopped; with --strict also something asked that is not met",
  },
  { code: exitCode.wrongUse, meaning: "wrong use, or a file that cannot be read as text" },
  { code: exitCode.fault, meaning: "a fault of the program" },
];

/** The program was called in a way that it does not understand: the message is one line that says what would do. */
export class UsageProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = "UsageProblem";
  }
}
