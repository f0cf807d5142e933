import { weighArranged } from "@oncethrough/engine/arrangement/weigh";
import { endViews } from "@oncethrough/engine/drawing/end";
import { planView } from "@oncethrough/engine/drawing/plan";
import { useMemo } from "react";
import { sectionIndex } from "#state/bench-state";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { useArrangement } from "./use-arrangement.ts";
import { useBench } from "./use-bench.ts";

/** The machine from above, or from its two ends, as it is drawn on a sheet. */
export default function SheetCanvas({ view, width }: { view: "plan" | "ends"; width: number }) {
  const { unit } = useBench((bench) => bench.sound)!.job;
  const arrangement = useArrangement()!;
  const system = useBench((bench) => bench.system);
  const picked = useBench((bench) => bench.picked);
  const index = sectionIndex(picked);
  const pickedName = index === undefined ? undefined : unit.sections[index]?.name;
  const weighing = useMemo(() => weighArranged(unit, arrangement), [unit, arrangement]);
  const list = useMemo(() => {
    const options = { width, system, ...(pickedName === undefined ? {} : { picked: pickedName }) };
    return view === "plan" ? planView(unit, weighing, options) : endViews(unit, weighing, options);
  }, [unit, weighing, view, width, system, pickedName]);
  const scale = width / list.box.width;
  return (
    <svg width={width} height={Math.ceil(list.box.height * scale)} role="img" aria-label={list.title}>
      <PaintedList list={list} placing={placedAt(list, scale, 0, 0)} />
    </svg>
  );
}
