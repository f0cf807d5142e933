import type { Contradiction } from "@oncethrough/engine/sizing/contradiction";
import { type TextInk, wrapped } from "../ink.ts";
import { printTable } from "../table.ts";
import type { DesignOutput } from "./design-output.ts";

/** How a unit was sized, or why none can be. */
export function printDesign(output: DesignOutput, ink: TextInk, columns: number): string {
  switch (output.outcome) {
    case "unit":
      return [choiceLines(output, ink, columns), questionTable(output, ink)].filter((part) => part !== "").join("\n\n");
    case "contradiction":
      return [
        ...(output.choices.length === 0 ? [] : [choiceLines(output, ink, columns)]),
        ...output.contradictions.map((each) => contradictionText(each, ink, columns)),
      ].join("\n\n");
    case "not read":
      return ink.fail("not sized; mend the text first");
  }
}

function choiceLines({ choices }: DesignOutput, ink: TextInk, columns: number): string {
  const lines = choices.map((choice) =>
    wrapped(`${ink.strong(choice.of)}: ${choice.chosen} ${ink.quiet(`— ${choice.because}`)}`, columns),
  );
  return [ink.strong("what was chosen, and why"), ...lines].join("\n");
}

function questionTable({ questions }: DesignOutput, ink: TextInk): string {
  if (questions.length === 0) return "";
  const rows = questions.map(({ path, assumed, why }) => [path, assumed, why]);
  const table = printTable(
    [
      { name: "open question", align: "left" },
      { name: "assumed", align: "left" },
      { name: "what hangs on it", align: "left" },
    ],
    rows,
    ink,
  );
  return `${ink.strong("what nobody said")}, what matters most first\n${table}`;
}

function contradictionText({ words, nearest, why }: Contradiction, ink: TextInk, columns: number): string {
  const ways = nearest.map((way) => {
    const changes = [way, ...(way.also ?? [])].map(({ path, value }) => `${path}: ${value}`);
    return wrapped(`  ${way.words}: ${ink.strong(changes.join(", "))}`, columns);
  });
  return [
    wrapped(ink.fail(`No unit holds this duty: ${words}.`), columns),
    ...(ways.length > 0 ? ["nearest duties that work, each alone:", ...ways] : []),
    ...(why === undefined ? [] : [wrapped(ink.quiet(why), columns)]),
  ].join("\n");
}
