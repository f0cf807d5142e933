import { useMemo, useState } from "react";
import { countStandings, type FindingLine, firstFilter, shownFindings, standings } from "#state/finding-lines";
import { countWords, findingRows } from "#state/finding-words";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";
import { useFindings } from "#view/use-findings";
import { FindingFilters } from "./finding-filters.tsx";
import { FindingRow } from "./finding-row.tsx";
import "./findings.css";
import { MendingLine } from "./mending-line.tsx";
import { ProfileChoice } from "./profile-choice.tsx";

const none: readonly FindingLine[] = [];

/** The unit judged by its owner's rules: counts, what is to be minded with the smallest margin first, and what mends it. */
export default function FindingsPanel() {
  const { latest, now, isStale } = useFindings();
  const [filter, setFilter] = useState(firstFilter);
  const system = useBench((bench) => bench.system);
  const lines = latest?.lines ?? none;
  const shown = useMemo(() => shownFindings(lines, filter), [lines, filter]);
  return (
    <section className="part findings-part" aria-label="findings" aria-busy={isStale}>
      <h2>
        Findings
        <small>{latest === undefined ? "judging …" : countsText(lines)}</small>
      </h2>
      <TakeAway of="table" name="findings" table={() => findingRows(shown, system)} />
      {now?.is === "failed" ? (
        <p className="failing" role="alert">
          <span aria-hidden="true">◆</span> not judged: {now.problem}
        </p>
      ) : null}
      <div className="findings-head">
        <ProfileChoice names={latest?.profiles ?? []} />
        <FindingFilters lines={lines} filter={filter} onFilter={setFilter} />
      </div>
      <MendingLine lines={isStale ? undefined : lines} />
      <ul className={`findings${isStale ? " stale" : ""}`} aria-label="findings, the smallest margin first">
        {shown.map((line) => (
          <FindingRow key={line.key} line={line} named />
        ))}
      </ul>
      {shown.length === 0 && latest !== undefined ? <p className="quiet">nothing of that kind</p> : null}
    </section>
  );
}

/** `1 fails, 12 advice, 5 thin, 108 hold`. */
function countsText(lines: readonly FindingLine[]): string {
  const counts = countStandings(lines);
  return standings
    .filter((standing) => counts[standing] > 0)
    .map((standing) => `${counts[standing]} ${countWords[standing][counts[standing] === 1 ? 0 : 1]}`)
    .join(", ");
}
