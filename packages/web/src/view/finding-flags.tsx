import { type AirwayAxis, axisPoint, sectionSpan } from "@oncethrough/engine/chart/airway-axis";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import { nextOfFlag, type SectionFlag, type Standing, sectionFlags, standingOf } from "#state/finding-lines";
import { countWords, lineSentence, signs } from "#state/finding-words";
import "./finding-flags.css";
import { useBench } from "./use-bench.ts";
import { useFindings } from "./use-findings.ts";

const none: readonly UnitSection[] = [];

/** px: the gap between two flags that meet, and what the letters of a flag need. */
const gap = 4;
const signWidth = 16;
const digitWidth = 7.4;
const unitNameWidth = 30;

interface Placed {
  readonly flag: SectionFlag;
  /** Its groups: how many findings stand how, gravest first. */
  readonly groups: readonly (readonly [standing: Standing, count: number])[];
  readonly x: number;
  readonly width: number;
  /** Where the stem stands. */
  readonly stem: number;
}

/**
 * Findings where they happen: a strip above the drawing with a flag over each section that has something to be minded, a
 * shape and a count for each kind of finding. Picking it opens the gravest finding, picking it again the next.
 */
export default function FindingFlags({ axis }: { axis: AirwayAxis }) {
  const sections = useBench((bench) => bench.sound?.job.unit.sections) ?? none;
  const { latest, isStale } = useFindings();
  const flags = placedFlags(sectionFlags(latest?.lines ?? []), sections, axis);
  return (
    <fieldset className={`flag-strip${isStale ? " stale-flags" : ""}`}>
      <legend className="unseen">findings by section</legend>
      {flags.map((placed) => (
        <Flag key={placed.flag.section} placed={placed} />
      ))}
    </fieldset>
  );
}

function Flag({ placed }: { placed: Placed }) {
  const { flag, groups, x, width, stem } = placed;
  const inHand = useBench((bench) => bench.finding);
  const system = useBench((bench) => bench.system);
  const { pickFinding } = useBench((bench) => bench.actions);
  const isInHand = flag.lines.some(({ key }) => key === inHand);
  return (
    <button
      type="button"
      className={`flag flag-${flag.standing.replace(" ", "-")}`}
      style={{ left: x, width }}
      aria-pressed={isInHand}
      title={flag.lines.map((line) => lineSentence(line, system)).join("\n")}
      onClick={() => pickFinding(nextOfFlag(flag, inHand).key, flag.index)}
    >
      {flag.index < 0 ? <span className="flag-name">unit</span> : <span className="unseen">{flag.section}: </span>}
      {flag.index < 0 ? <span className="unseen">: </span> : null}
      {groups.map(([standing, count], index) => (
        <span key={standing} className={`sign-${standing.replace(" ", "-")}`}>
          {index > 0 ? <span className="unseen">, </span> : null}
          <span aria-hidden="true">{signs[standing]} </span>
          {count}
          <span className="unseen"> {countWords[standing][count === 1 ? 0 : 1]}</span>
        </span>
      ))}
      <span className="unseen">; gravest: {lineSentence(flag.lines[0]!, system)}</span>
      {flag.index < 0 ? null : <span className="flag-stem" style={{ left: stem - x }} />}
    </button>
  );
}

function groupsWidth(groups: Placed["groups"]): number {
  return groups.reduce((sum, [, count]) => sum + signWidth + String(count).length * digitWidth + 6, 8);
}

/** Flags over their sections, pushed apart where they would cover one another; the unit's own stands at the left. */
function placedFlags(
  flags: readonly SectionFlag[],
  sections: readonly UnitSection[],
  axis: AirwayAxis,
): readonly Placed[] {
  const middle = ({ index }: SectionFlag) => {
    const section = sections[index];
    if (section === undefined) return 0;
    const { from, to } = sectionSpan(section);
    return (axisPoint(axis, from) + axisPoint(axis, to)) / 2;
  };
  const placed: Placed[] = [];
  let free = 0;
  const known = flags.filter(({ index }) => index < sections.length);
  for (const flag of known.toSorted((one, other) => middle(one) - middle(other))) {
    const groups = groupsOf(flag);
    const width = groupsWidth(groups) + (flag.index < 0 ? unitNameWidth : 0);
    const stem = middle(flag);
    const x = Math.max(free, stem - width / 2);
    placed.push({ flag, groups, x, width, stem: Math.min(Math.max(stem, x + 6), x + width - 6) });
    free = x + width + gap;
  }
  return placed;
}

function groupsOf({ lines }: SectionFlag): Placed["groups"] {
  const counts = new Map<Standing, number>();
  for (const line of lines) counts.set(standingOf(line), (counts.get(standingOf(line)) ?? 0) + 1);
  return [...counts];
}
