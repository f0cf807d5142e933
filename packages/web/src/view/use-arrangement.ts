import type { Arrangement } from "@oncethrough/engine/arrangement/arrange";
import { arrangementOf } from "#state/arranged";
import { useBench } from "./use-bench.ts";

/** The unit in millimetres; undefined without a sound job. */
export function useArrangement(): Arrangement | undefined {
  return useBench(({ sound }) => (sound === undefined ? undefined : arrangementOf(sound)));
}
