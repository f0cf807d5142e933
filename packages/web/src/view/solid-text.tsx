import type { Solid } from "@oncethrough/engine/drawing/solids";
import type { Unit } from "@oncethrough/engine/unit/unit";
import { useMemo } from "react";
import { printFigure } from "#state/figures";
import { solidWords } from "#state/solid-words";
import { useBench } from "./use-bench.ts";

/** The machine in words. */
export function SolidText({ unit, solids }: { unit: Unit; solids: readonly Solid[] }) {
  const system = useBench((bench) => bench.system);
  const sections = useMemo(() => solidWords(unit, solids), [unit, solids]);
  const length = (metres: number) => printFigure(metres, "length", system);
  return (
    <details className="rest solid-text">
      <summary>the machine in words</summary>
      <p>
        Clear cabinet {length(unit.length)} long, {length(unit.frame.width)} wide, {length(unit.frame.height)} high;
        connections on the {unit.frame.hand}, seen in airflow.
      </p>
      <ol>
        {sections.map(({ section, start, length: long, parts }) => (
          <li key={section}>
            <strong>{section}</strong>,{" "}
            {long > 0 ? `${length(start)} to ${length(start + long)}` : "outside the cabinet"}
            {parts.length === 0
              ? ""
              : `: ${parts.map(({ name, count }) => (count > 1 ? `${count} × ${name}` : name)).join(", ")}`}
          </li>
        ))}
      </ol>
    </details>
  );
}
