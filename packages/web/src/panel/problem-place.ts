import type { Problem } from "@oncethrough/engine/form/problem";

/** The characters of the text at which a problem is shown: the value, or the rest of the line. */
export function problemSpan(text: string, problem: Problem): { readonly from: number; readonly to: number } {
  let start = 0;
  for (let line = 1; line < problem.line; line += 1) {
    const end = text.indexOf("\n", start);
    if (end < 0) break;
    start = end + 1;
  }
  const foot = text.indexOf("\n", start);
  const end = foot < 0 ? text.length : foot;
  const from = Math.min(start + problem.column - 1, end);
  const isShort = problem.value !== "" && text.startsWith(problem.value, from);
  return { from, to: isShort ? Math.min(from + problem.value.length, end) : end };
}
