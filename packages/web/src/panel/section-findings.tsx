import { sortedLines, standingOf } from "#state/finding-lines";
import { useFindings } from "#view/use-findings";
import { FindingRow } from "./finding-row.tsx";
import "./findings.css";

/** The findings of one section, or of the unit as a whole: what is to be minded, and behind a word what holds. */
export default function SectionFindings({ section }: { section: string }) {
  const { latest, isStale } = useFindings();
  const lines = sortedLines(latest?.lines ?? []).filter((line) => line.section === section);
  const minded = lines.filter((line) => standingOf(line) !== "holds");
  const held = lines.filter((line) => standingOf(line) === "holds");
  return (
    <section aria-label="findings here" className={isStale ? "stale" : ""}>
      <h3>Findings here</h3>
      {latest === undefined ? <p className="quiet">judging …</p> : null}
      <ul className="findings">
        {minded.map((line) => (
          <FindingRow key={line.key} line={line} named={false} />
        ))}
      </ul>
      {held.length === 0 ? null : (
        <details className="rest">
          <summary>
            {held.length} {held.length === 1 ? "rule holds" : "rules hold"}
          </summary>
          <ul className="findings">
            {held.map((line) => (
              <FindingRow key={line.key} line={line} named={false} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
