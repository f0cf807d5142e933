import { useMemo } from "react";
import type { Judgement } from "#state/finding-lines";
import { useBench } from "./use-bench.ts";
import { useWork, type Work } from "./use-work.ts";

/** The job judged: every edit is judged anew in a worker, and until it answers what was found before stands. */
export interface FindingsInHand extends Work<"findings"> {
  /** True where what stands is of the job before. */
  readonly isStale: boolean;
}

/** The findings of the latest sound job. */
export function useFindings(): FindingsInHand {
  const text = useBench((bench) => bench.sound?.text);
  const task = useMemo(() => (text === undefined ? undefined : ({ kind: "findings", text } as const)), [text]);
  const work = useWork(task);
  return { ...work, isStale: work.now?.is !== "done" };
}

/** The lines of the latest judgement. */
export function useFindingLines(): Judgement["lines"] {
  return useFindings().latest?.lines ?? none;
}

const none: Judgement["lines"] = [];
