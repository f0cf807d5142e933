import { createContext, useContext, useEffect, useRef } from "react";
import { useStore } from "zustand";
import type { Results, Task } from "#work/task";
import { taskKey, type WorkDesk, type WorkState } from "#work/work-desk";

/** The page's desk of long work. */
export const WorkContext = createContext<WorkDesk | undefined>(undefined);

/** Long work as a component follows it. */
export interface Work<Kind extends keyof Results> {
  /** How the task stands; undefined before it is asked for. */
  readonly now: WorkState<Kind> | undefined;
  /** The latest result, also of an earlier task of the same component, so that something stands until the new one is there. */
  readonly latest: Results[Kind] | undefined;
  readonly again: () => void;
  readonly stop: () => void;
}

/** Has a task done in the worker, and done anew when it changes; nothing is asked for while it is undefined. */
export function useWork<Kind extends Task["kind"]>(
  task: Extract<Task, { readonly kind: Kind }> | (Task & { readonly kind: Kind }) | undefined,
): Work<Kind> {
  const desk = useContext(WorkContext);
  if (desk === undefined) throw new Error("long work is asked for outside its page");
  const key = task === undefined ? "" : taskKey(task);
  const now = useStore(desk.states, (states) => states.get(key)) as WorkState<Kind> | undefined;
  const latest = useRef<Results[Kind] | undefined>(undefined);
  if (now?.is === "done") latest.current = now.result;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says all that the task does
  useEffect(() => {
    if (task !== undefined) desk.ask(task);
  }, [desk, key]);
  return {
    now,
    latest: latest.current,
    again: () => task !== undefined && desk.ask(task, true),
    stop: () => task !== undefined && desk.stop(task),
  };
}
