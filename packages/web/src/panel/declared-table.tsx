import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { type DeclaredLine, declaredName, misses } from "@oncethrough/engine/section/declared";
import { declaredOf } from "@oncethrough/engine/unit/report";
import { useMemo } from "react";
import { printFigure } from "#state/figures";
import { TakeAway } from "#view/take-away.tsx";
import { useBench, useRating } from "#view/use-bench";
import "./declared-table.css";

/** A supplier's declared rating of the section beside ours, where the job holds one. */
export default function DeclaredTable({ section }: { section: string }) {
  const unit = useBench((bench) => bench.sound?.job.unit);
  const system = useBench((bench) => bench.system);
  const rating = useRating();
  const declared = useMemo(
    () =>
      unit === undefined || rating === undefined
        ? undefined
        : declaredOf(unit, rating).find((each) => each.section === section),
    [unit, rating, section],
  );
  if (declared === undefined) return null;
  return (
    <section aria-label="declared rating" className="declared">
      <h3>Declared beside ours</h3>
      <TakeAway of="table" name="declared beside ours" />
      <table>
        <caption className="quiet">
          {declaredName(declared)}; {declared.at}
        </caption>
        <thead>
          <tr>
            <th scope="col">figure</th>
            <th scope="col">declared</th>
            <th scope="col">ours</th>
            <th scope="col">apart</th>
          </tr>
        </thead>
        <tbody>
          {declared.lines.map((line) => (
            <tr key={line.what} className={misses(line) ? "failing" : ""}>
              <th scope="row">{line.what}</th>
              <td>{printFigure(line.declared, line.quantity, system)}</td>
              <td>{printFigure(line.ours, line.quantity, system)}</td>
              <td>
                {misses(line) ? <span aria-hidden="true">◆ </span> : null}
                {apartText(line, system)}
                {misses(line) ? <span className="unseen"> beyond its tolerance</span> : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** `+3.1 %`, or `−0.4 K` of temperatures. */
function apartText({ difference, quantity }: DeclaredLine, system: UnitSystem): string {
  const sign = difference < 0 ? "−" : "+";
  const size = Math.abs(difference);
  if (quantity === "temperature") return `${sign}${printFigure(size, "temperatureDifference", system)}`;
  return `${sign}${(100 * size).toFixed(1)} %`;
}
