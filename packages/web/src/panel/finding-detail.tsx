import type { ReactNode } from "react";
import type { FindingLine } from "#state/finding-lines";
import { lineFigure, lineMargin } from "#state/finding-words";
import { useBench } from "#view/use-bench";
import { FixBlock } from "./fix-block.tsx";
import { SourceLines } from "./source-lines.tsx";
import { WaiveBlock } from "./waive-block.tsx";

/** All of a finding: figures and where, what the rule protects, whose limit it is and how sure, what mends it, who lets it go. */
export default function FindingDetail({ line }: { line: FindingLine }) {
  return (
    <div className="finding-detail">
      <Figures line={line} />
      <p>
        It protects {line.protects}. {capital(line.remedy)}. Where it is not met: <strong>{line.severity}</strong>.
      </p>
      <Basis line={line} />
      {line.requirements.length === 0 ? null : <p className="quiet">requirement: {line.requirements.join("; ")}</p>}
      <FixBlock line={line} />
      <WaiveBlock line={line} />
    </div>
  );
}

function Figures({ line }: { line: FindingLine }) {
  const system = useBench((bench) => bench.system);
  const isFlag = line.quantity === "flag";
  const rows: readonly (readonly [string, ReactNode])[] = [
    [line.measures, line.outcome === "cannot tell" ? "cannot be told" : lineFigure(line, line.value, system)],
    ...(line.outcome === "cannot tell" ? [["missing", line.missing ?? "a figure"] as const] : []),
    ...(isFlag || Number.isNaN(line.limit)
      ? []
      : [
          ["limit", `${line.sense} ${lineFigure(line, line.limit, system)}`] as const,
          ["margin", lineMargin(line)] as const,
        ]),
    ...(line.limitWords === undefined ? [] : [["limit from", line.limitWords] as const]),
    ...(line.condition === undefined ? [] : [["smallest at", <At key="at" line={line} />] as const]),
    ...(line.detail === undefined ? [] : [["of", line.detail] as const]),
  ];
  return (
    <dl>
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** The condition where the margin is smallest; a click takes it in hand. */
function At({ line }: { line: FindingLine }) {
  const { pickCondition } = useBench((bench) => bench.actions);
  const { condition, missed, told } = line;
  const key = condition?.key;
  return (
    <>
      {key === undefined ? (
        condition?.name
      ) : (
        <button type="button" onClick={() => pickCondition(key)}>
          {condition?.name}
        </button>
      )}
      {missed > 0 ? <span className="quiet">; missed at {`${missed} of ${told}`}</span> : null}
    </>
  );
}

/** Whose limit it is, with clause and certainty; what contradicts it. */
function Basis({ line }: { line: FindingLine }) {
  const { own, source, certainty, isGuide, contested, decides } = line;
  return (
    <div className="basis-block">
      {own === undefined ? null : (
        <p>
          limit of {own.profile}: {own.reason}; it decides
        </p>
      )}
      <SourceLines source={source} />
      <p className="quiet">
        {certaintyWords[certainty]}
        {isGuide ? "; its source recommends and does not demand" : ""}
        {decides ? "" : "; it advises and fails no unit"}
      </p>
      {contested === undefined ? null : <p className="quiet">sources contradict one another: {contested}</p>}
    </div>
  );
}

const certaintyWords: Readonly<Record<FindingLine["certainty"], string>> = {
  read: "read in the source",
  "second-hand": "second-hand: quoted by another than its source",
  "derived here": "derived here, with its working",
  "common practice": "common practice, no publication",
  "from memory": "from memory",
};

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
