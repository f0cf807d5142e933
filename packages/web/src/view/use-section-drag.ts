import { type AirwayAxis, axisPosition, sectionSpan } from "@oncethrough/engine/chart/airway-axis";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import { type PointerEvent, useEffect, useRef, useState } from "react";
import { useBench } from "./use-bench.ts";

/** A section on its way to another place. */
export interface SectionDrag {
  readonly from: number;
  /** Where it would come to stand. */
  readonly to: number;
  /** px that it has been carried. */
  readonly by: number;
}

/** What the columns hand to the drag, and what the drag is at. */
export interface SectionDragHands {
  readonly drag: SectionDrag | undefined;
  readonly onPointerDown: (event: PointerEvent<SVGElement>, index: number) => void;
  readonly onPointerMove: (event: PointerEvent<SVGElement>) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
  /** True right after a drag, whose click is no pick. */
  readonly tookClick: () => boolean;
}

/** px that a pointer may tremble before a press becomes a drag. */
const tremble = 7;

const none: readonly UnitSection[] = [];

/** Carrying a section along the airway; Escape puts it back. */
export function useSectionDrag(axis: AirwayAxis): SectionDragHands {
  const sections = useBench((bench) => bench.sound?.job.unit.sections) ?? none;
  const { moveSection } = useBench((bench) => bench.actions);
  const [drag, setDrag] = useState<SectionDrag | undefined>(undefined);
  const pressed = useRef<{ readonly x: number; readonly index: number } | undefined>(undefined);
  const click = useRef(false);
  const end = () => {
    pressed.current = undefined;
    setDrag(undefined);
  };
  const isDragging = drag !== undefined;
  useEffect(() => {
    if (!isDragging) return;
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      pressed.current = undefined;
      setDrag(undefined);
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, [isDragging]);
  return {
    drag,
    onPointerDown: (event, index) => {
      if (event.button !== 0 || !event.isPrimary) return;
      click.current = false;
      pressed.current = { x: event.clientX, index };
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event) => {
      const from = pressed.current;
      if (from === undefined) return;
      const by = event.clientX - from.x;
      if (!isDragging && Math.abs(by) < tremble) return;
      click.current = true;
      setDrag({ from: from.index, to: placeFor(sections, axis, from.index, by), by });
    },
    onPointerUp: () => {
      if (drag !== undefined && drag.to !== drag.from) moveSection(drag.from, drag.to);
      end();
    },
    onPointerCancel: end,
    tookClick: () => click.current,
  };
}

/** Where a section comes to stand that is carried so far: behind all whose middle it has passed. */
function placeFor(sections: readonly UnitSection[], axis: AirwayAxis, from: number, by: number): number {
  const section = sections[from];
  if (section === undefined) return from;
  const carried = middleOf(section) + axisPosition(axis, by) - axisPosition(axis, 0);
  return sections.filter((each, index) => index !== from && middleOf(each) < carried).length;
}

function middleOf(section: UnitSection): number {
  const { from, to } = sectionSpan(section);
  return (from + to) / 2;
}
