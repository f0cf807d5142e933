import { weighUnit } from "@oncethrough/engine/arrangement/weigh";
import { endViews } from "@oncethrough/engine/drawing/end";
import { planView } from "@oncethrough/engine/drawing/plan";
import { useMemo } from "react";
import { sectionIndex } from "#state/bench-state";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { useBench } from "./use-bench.ts";

/** The machine from above, or from its two ends, as it is drawn on a sheet. */
export default function SheetCanvas({ view, width }: { view: "plan" | "ends"; width: number }) {
  const { job } = useBench((bench) => bench.sound)!;
  const system = useBench((bench) => bench.system);
  const picked = useBench((bench) => bench.picked);
  const index = sectionIndex(picked);
  const pickedName = index === undefined ? undefined : job.unit.sections[index]?.name;
  const weighing = useMemo(() => weighUnit(job.unit, job.duty, job.conditions), [job]);
  const list = useMemo(() => {
    const options = { width, system, ...(pickedName === undefined ? {} : { picked: pickedName }) };
    return view === "plan" ? planView(job.unit, weighing, options) : endViews(job.unit, weighing, options);
  }, [job, weighing, view, width, system, pickedName]);
  const scale = width / list.box.width;
  return (
    <svg width={width} height={Math.ceil(list.box.height * scale)} role="img" aria-label={list.title}>
      <PaintedList list={list} placing={placedAt(list, scale, 0, 0)} />
    </svg>
  );
}
