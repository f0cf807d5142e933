import type { Contradiction } from "@oncethrough/engine/sizing/contradiction";
import { type TextInk, wrapped } from "../ink.ts";
import { printTable } from "../table.ts";
import type { DesignOutput } from "./design-output.ts";

/** How a unit was sized, or why none can be. */
export function printDesign(output: DesignOutput, ink: TextInk, columns: number): string {
  switch (output.outcome) {
    case "unit":
      return [choiceLines(output, ink, columns), unkeptLines(output, ink, columns), questionTable(output, ink)]
        .filter((part) => part !== "")
        .join("\n\n");
    case "no unit":
      return [
        choiceLines(output, ink, columns),
        ink.fail("no unit was found; of the one that came nearest this stands in the way"),
        ...output.obstacles.map((each) => wrapped(`  ${each}`, columns)),
      ].join("\n");
    case "contradiction":
      return output.contradictions.map((each) => contradictionText(each, ink, columns)).join("\n\n");
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

function unkeptLines({ unkept }: DesignOutput, ink: TextInk, columns: number): string {
  if (unkept.length === 0) return "";
  const head = ink.fail("rules of the owner that the unit does not keep; `check --fixes` tells more");
  return [head, ...unkept.map((each) => wrapped(`  ${each}`, columns, "    "))].join("\n");
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

function contradictionText({ words, nearest }: Contradiction, ink: TextInk, columns: number): string {
  const ways = nearest.map((way) => wrapped(`  ${way.words}: ${ink.strong(`${way.path}: ${way.value}`)}`, columns));
  return [
    wrapped(ink.fail(`The duty contradicts itself: ${words}.`), columns),
    ...(ways.length > 0 ? ["nearest duties that work, each alone:", ...ways] : []),
  ].join("\n");
}
