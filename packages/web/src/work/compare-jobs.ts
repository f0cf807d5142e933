import { digestOf } from "@oncethrough/engine/compare/digest";
import { inputChanges } from "@oncethrough/engine/compare/input-changes";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import type { BookShelf } from "./book-shelf.ts";
import type { Comparison, ComparisonTask, DigestOrProblem } from "./task.ts";

/** Solves, judges and prices job texts one after the other, and sets them side by side. */
export function* compareJobs({ texts, system }: ComparisonTask, shelf: BookShelf): Generator<number, Comparison> {
  const digests: DigestOrProblem[] = [];
  for (const text of texts) {
    yield digests.length / texts.length;
    digests.push(digested(text, system, shelf));
  }
  return { digests, inputs: inputChanges(texts) };
}

function digested(text: string, system: UnitSystem, shelf: BookShelf): DigestOrProblem {
  try {
    return { ok: true, digest: digestOf(shelf.proof(text).proof, system) };
  } catch (error) {
    return { ok: false, problem: error instanceof Error ? error.message : String(error) };
  }
}
