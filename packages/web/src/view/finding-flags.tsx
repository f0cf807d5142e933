import { type AirwayAxis, axisPoint, sectionSpan } from "@oncethrough/engine/chart/airway-axis";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import type { KeyboardEvent } from "react";
import { nextOfFlag, type SectionFlag, sectionFlags, type Standing, standingOf } from "#state/finding-lines";
import { countWords, lineSentence, signs } from "#state/finding-words";
import "./finding-flags.css";
import { useBench } from "./use-bench.ts";
import { useFindings } from "./use-findings.ts";

const none: readonly UnitSection[] = [];

/** px: size of a flag, and the gap between two that meet. */
const flagHeight = 24;
const gap = 4;
const signWidth = 13;
const digitWidth = 7.2;

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
 * Findings where they happen: a flag over each section that has something to be minded, with a shape and a count for each
 * kind of finding. Picking it opens the gravest finding, picking it again the next.
 */
export function FindingFlags({ axis, top, foot }: { axis: AirwayAxis; top: number; foot: number }) {
  const sections = useBench((bench) => bench.sound?.job.unit.sections) ?? none;
  const { latest, isStale } = useFindings();
  const flags = placedFlags(sectionFlags(latest?.lines ?? []), sections, axis);
  if (flags.length === 0) return null;
  return (
    <g className={`finding-flags${isStale ? " stale-flags" : ""}`} data-hand="" role="group" aria-label="findings by section">
      {flags.map((placed) => (
        <Flag key={placed.flag.section} placed={placed} top={top} foot={foot} />
      ))}
    </g>
  );
}

function Flag({ placed, top, foot }: { placed: Placed; top: number; foot: number }) {
  const { flag, groups, x, width, stem } = placed;
  const inHand = useBench((bench) => bench.finding);
  const system = useBench((bench) => bench.system);
  const { pickFinding } = useBench((bench) => bench.actions);
  const isInHand = flag.lines.some(({ key }) => key === inHand);
  const pick = () => pickFinding(nextOfFlag(flag, inHand).key, flag.index);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "Enter" && event.key !== " ") return;
    event.preventDefault();
    pick();
  };
  const counts = groups.map(([standing, count]) => `${count} ${countWords[standing][count === 1 ? 0 : 1]}`).join(", ");
  return (
    // biome-ignore lint/a11y/useSemanticElements: a button of HTML cannot stand in a drawing
    <g
      role="button"
      tabIndex={0}
      className={`flag flag-${flag.standing.replace(" ", "-")}${isInHand ? " flag-in-hand" : ""}`}
      aria-pressed={isInHand}
      aria-label={`${flag.section}: ${counts}; gravest: ${lineSentence(flag.lines[0]!, system)}`}
      onClick={pick}
      onKeyDown={onKeyDown}
    >
      <title>{flag.lines.map((line) => lineSentence(line, system)).join("\n")}</title>
      <path className="flag-stem" d={`M${stem} ${top + flagHeight}V${foot}`} />
      <rect x={x} y={top} width={width} height={flagHeight} rx={2} />
      {groups.map(([standing, count], place) => {
        const left = x + 7 + groupsWidth(groups.slice(0, place));
        return (
          <text key={standing} className={`sign-${standing.replace(" ", "-")}`} x={left} y={top + 16}>
            {signs[standing]}
            <tspan dx={3}>{count}</tspan>
          </text>
        );
      })}
    </g>
  );
}

function groupsWidth(groups: Placed["groups"]): number {
  return groups.reduce((sum, [, count]) => sum + signWidth + String(count).length * digitWidth + 8, 0);
}

/** Flags over their sections, pushed apart where they would cover one another; the unit's own stands at the left. */
function placedFlags(
  flags: readonly SectionFlag[],
  sections: readonly UnitSection[],
  axis: AirwayAxis,
): readonly Placed[] {
  const placed: Placed[] = [];
  const middle = ({ index }: SectionFlag) => {
    const section = sections[index];
    if (section === undefined) return axisPoint(axis, 0);
    const { from, to } = sectionSpan(section);
    return (axisPoint(axis, from) + axisPoint(axis, to)) / 2;
  };
  let free = 0;
  for (const flag of flags.filter(({ index }) => index < sections.length).toSorted((a, b) => middle(a) - middle(b))) {
    const groups = groupsOf(flag);
    const width = groupsWidth(groups) + 6;
    const stem = middle(flag);
    const x = Math.max(free, stem - width / 2);
    placed.push({ flag, groups, x, width, stem: Math.min(Math.max(stem, x + 4), x + width - 4) });
    free = x + width + gap;
  }
  return placed;
}

function groupsOf({ lines }: SectionFlag): Placed["groups"] {
  const counts = new Map<Standing, number>();
  for (const line of lines) counts.set(standingOf(line), (counts.get(standingOf(line)) ?? 0) + 1);
  return [...counts];
}
