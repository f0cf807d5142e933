import { type Arrangement, arrangeUnit } from "@oncethrough/engine/arrangement/arrange";
import { arrangementTask } from "@oncethrough/engine/arrangement/weigh";
import { useMemo } from "react";
import { useBench } from "./use-bench.ts";

/** The unit in millimetres; undefined without a sound job. */
export function useArrangement(): Arrangement | undefined {
  const job = useBench((bench) => bench.sound?.job);
  return useMemo(() => (job === undefined ? undefined : arrangeUnit(job.unit, arrangementTask(job.duty))), [job]);
}
