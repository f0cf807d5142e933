import { type AirwayAxis, axisPoint, sectionSpan } from "@oncethrough/engine/chart/airway-axis";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import type { KeyboardEvent } from "react";
import { sectionIndex, sectionPath } from "#state/bench-state";
import { sectionActOf } from "./section-keys.ts";
import { useBench } from "./use-bench.ts";
import type { SectionDragHands } from "./use-section-drag.ts";

const none: readonly UnitSection[] = [];

interface ColumnsProps {
  readonly axis: AirwayAxis;
  readonly height: number;
  /** The tint lies under the drawing, the areas that a hand reaches lie over it. */
  readonly layer: "tint" | "hands";
  /** How a section is carried; for the hands. */
  readonly carry?: SectionDragHands;
}

/** The sections as columns through elevation and profiles: the picked one is tinted, each can be picked. */
export function SectionColumns({ axis, height, layer, carry }: ColumnsProps) {
  const sections = useBench((bench) => (bench.trial ?? bench.sound)?.job.unit.sections) ?? none;
  const picked = useBench((bench) => sectionIndex(bench.picked));
  const section = picked === undefined ? undefined : sections[picked];
  if (layer === "tint") {
    if (section === undefined) return null;
    const { x, width } = columnOf(section, axis);
    return <rect className="picked-column" x={x} y={0} width={width} height={height} />;
  }
  return <SectionHands axis={axis} height={height} sections={sections} picked={picked} carry={carry} />;
}

const movingKeys = new Set(["ArrowRight", "ArrowDown", "ArrowLeft", "ArrowUp", "Home", "End"]);

interface HandsProps {
  readonly axis: AirwayAxis;
  readonly height: number;
  readonly sections: readonly UnitSection[];
  readonly picked: number | undefined;
  readonly carry: SectionDragHands | undefined;
}

function SectionHands({ axis, height, sections, picked, carry }: HandsProps) {
  const { pick, pickBeside, ...acts } = useBench((bench) => bench.actions);
  const onKeyDown = (event: KeyboardEvent) => {
    const act = picked === undefined ? undefined : sectionActOf(event);
    if (act !== undefined && picked !== undefined) {
      event.preventDefault();
      if (act === "remove") acts.removeSection(picked);
      else if (act === "add before" || act === "add behind") acts.addAt(act === "add before" ? picked : picked + 1);
      else acts.moveSection(picked, act === "earlier" ? picked - 1 : picked + 1);
      return;
    }
    if (event.altKey || event.ctrlKey || event.metaKey || !movingKeys.has(event.key)) return;
    event.preventDefault();
    if (event.key === "Home") pick(sectionPath(0));
    else if (event.key === "End") pick(sectionPath(sections.length - 1));
    else pickBeside(event.key === "ArrowRight" || event.key === "ArrowDown" ? 1 : -1);
  };
  return (
    <g
      className="section-hands"
      data-hand=""
      role="listbox"
      aria-label="sections in airflow order"
      aria-orientation="horizontal"
      aria-activedescendant={picked === undefined ? undefined : `section-${picked}`}
      tabIndex={0}
      onKeyDown={onKeyDown}
    >
      {sections.map((section, index) => (
        <rect
          key={section.name}
          id={`section-${index}`}
          role="option"
          aria-selected={index === picked}
          aria-label={section.name === section.kind ? section.name : `${section.name}, ${section.kind}`}
          {...columnOf(section, axis)}
          y={1}
          height={height - 2}
          className={carry?.drag?.from === index ? "is-carried" : undefined}
          onClick={() => carry?.tookClick() !== true && pick(sectionPath(index))}
          onPointerDown={(event) => carry?.onPointerDown(event, index)}
          onPointerMove={carry?.onPointerMove}
          onPointerUp={carry?.onPointerUp}
          onPointerCancel={carry?.onPointerCancel}
        >
          <title>{section.name}</title>
        </rect>
      ))}
    </g>
  );
}

function columnOf(section: UnitSection, axis: AirwayAxis): { readonly x: number; readonly width: number } {
  const { from, to } = sectionSpan(section);
  const x = axisPoint(axis, from);
  // A section without length of its own can still be met by a finger.
  const width = Math.max(8, axisPoint(axis, to) - x);
  return { x, width };
}
