import { type Document, LineCounter, type ParsedNode, parseDocument, type YAMLParseError } from "yaml";
import { type Problem, shortened } from "./problem.ts";

/** A text taken apart: its tree with places, or what is wrong with it as a text. */
export interface Source {
  readonly text: string;
  readonly document: Document.Parsed<ParsedNode> | undefined;
  readonly problems: readonly Problem[];
  /** Line and column, from 1, of an offset into the text. */
  readonly placeOf: (offset: number) => { readonly line: number; readonly column: number };
}

const longestText = 4 * 1024 * 1024;
const deepest = 60;

/** Takes a text apart. Whatever the text is, this does not throw: what cannot be read is a problem. */
export function takeApart(text: string): Source {
  const refusal = refusedAsText(text);
  if (refusal !== undefined) return { text, document: undefined, problems: [refusal], placeOf: simplePlace(text) };
  const lines = new LineCounter();
  const placeOf = (offset: number) => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  try {
    const document = parseDocument(text, {
      lineCounter: lines,
      prettyErrors: false,
      uniqueKeys: false,
      keepSourceTokens: true,
    });
    return { text, document, problems: syntaxProblems(text, document.errors, placeOf), placeOf };
  } catch {
    return {
      text,
      document: undefined,
      problems: [whole(text, 0, tooDeep, "a plain list of names and values")],
      placeOf,
    };
  }
}

const tooDeep = "the text is nested too deeply";

function simplePlace(text: string): Source["placeOf"] {
  return (offset) => {
    const before = text.slice(0, offset);
    return { line: before.split("\n").length, column: offset - before.lastIndexOf("\n") };
  };
}

function whole(text: string, offset: number, problem: string, allowed: string): Problem {
  return { ...simplePlace(text)(offset), path: "", field: "", value: "", problem, allowed, severity: "error" };
}

/** Texts that no one wrote by hand are refused before they are parsed. */
function refusedAsText(text: string): Problem | undefined {
  if (text.length > longestText) {
    const size = `${(text.length / 1024 / 1024).toFixed(1)} million characters`;
    return whole("", 0, `the text is too long: ${size}`, "at most 4 million characters");
  }
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these very characters are looked for
  const control = /[\u0000-\u0008\u000e-\u001f\ufffe\uffff]/.exec(text);
  if (control !== null) return whole(text, control.index, "this is not a text file", "plain text in UTF-8");
  const nested = nestedTooDeeply(text);
  return nested === undefined ? undefined : whole(text, nested, tooDeep, `at most ${deepest} levels`);
}

/** Where brackets or dashes nest beyond what a form needs; a parser that recurses must not see such a text. */
function nestedTooDeeply(text: string): number | undefined {
  let depth = 0;
  for (const found of text.matchAll(/#.*|"(?:[^"\\\n]|\\.)*"|[[{\]}]/g)) {
    const mark = found[0];
    if (mark === "[" || mark === "{") depth += 1;
    else if (mark === "]" || mark === "}") depth = Math.max(0, depth - 1);
    if (depth > deepest) return found.index;
  }
  const indented = new RegExp(`^(?: *[-?:] ){${deepest},}`, "m").exec(text);
  return indented?.index;
}

/** One problem per line, in our words; what follows from an earlier error on the same line is left out. */
function syntaxProblems(text: string, errors: readonly YAMLParseError[], placeOf: Source["placeOf"]): Problem[] {
  const problems: Problem[] = [];
  for (const error of errors) {
    const place = placeOf(error.pos[0]);
    if (problems.some((each) => each.line === place.line)) continue;
    const value = shortened(text.split("\n", place.line)[place.line - 1] ?? "");
    problems.push({ ...place, path: "", field: "", value, ...saidOf(error), severity: "error" });
    if (problems.length === 20) break;
  }
  return problems;
}

const indentation = "names of one group begin in the same column; what belongs to a name is two spaces further in";
const said: Readonly<Record<string, readonly [problem: string, allowed: string]>> = {
  TAB_AS_INDENT: ["a tab stands where lines are moved in", "spaces, two for each level"],
  BAD_INDENT: ["the line does not begin in the column where it should", indentation],
  BLOCK_AS_IMPLICIT_KEY: [
    "a second name begins on the line",
    'one name and its value to a line; text with a colon and a space in quotes: "like: this"',
  ],
  MULTILINE_IMPLICIT_KEY: ["a name is not followed by a colon and a space", "name: value"],
  BAD_SCALAR_START: ["a value cannot begin with this sign", 'put the text in quotes: "@ 12 in"'],
  MULTIPLE_DOCS: ["a second text begins here", "one text to a file, without lines of three dashes or dots"],
  BAD_DQ_ESCAPE: ["this backslash sign is not known in quotes", "single quotes for text with backslashes"],
};

function saidOf(error: YAMLParseError): { problem: string; allowed: string } {
  const known = said[error.code];
  if (known !== undefined) return { problem: known[0], allowed: known[1] };
  if (/quote/.test(error.message)) return { problem: "a quote is not closed", allowed: "the same quote at both ends" };
  if (/quoted-scalar at node end/.test(error.message)) {
    return { problem: "text follows a closing quote", allowed: `inches in single quotes, '6"', or as 6 in` };
  }
  if (/need to be followed by map values/.test(error.message)) {
    return { problem: "a name is not followed by a colon and a space", allowed: "name: value" };
  }
  if (/block-seq-ind on same line/.test(error.message)) {
    return { problem: "a dash and a space begin a list on the line of its name", allowed: "-40 °F without the space" };
  }
  return {
    problem: `the line cannot be read: ${error.message.charAt(0).toLowerCase()}${error.message.slice(1)}`,
    allowed: indentation,
  };
}
