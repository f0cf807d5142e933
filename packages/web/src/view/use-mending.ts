import { useContext, useEffect, useMemo, useState } from "react";
import { useStore } from "zustand";
import { type FindingLine, toMend } from "#state/finding-lines";
import type { FixTask, FoundFix } from "#work/task";
import { taskKey, type WorkState } from "#work/work-desk";
import { useBench } from "./use-bench.ts";
import { WorkContext } from "./use-work.ts";

/** ms that an edit rests before fixes are looked for: somebody who is still turning a knob does not want them. */
const rest = 1500;

const noLines: readonly FindingLine[] = [];

/** The search for smallest fixes, one finding after the other. */
export interface Mending {
  readonly wanted: number;
  readonly done: number;
  /** 0…1 of the one under way; undefined when none is. */
  readonly share: number | undefined;
  readonly isHalted: boolean;
  readonly halt: () => void;
  readonly goOn: () => void;
}

function fixTask(text: string, { section, rule }: FindingLine): FixTask {
  return { kind: "smallest fix", text, section, rule };
}

function useDesk() {
  const desk = useContext(WorkContext);
  if (desk === undefined) throw new Error("long work is asked for outside its page");
  return desk;
}

/** How the fix of one finding stands; undefined while it waits. */
export function useFix(line: FindingLine): WorkState<"smallest fix"> | undefined {
  const desk = useDesk();
  const text = useBench((bench) => bench.sound?.text) ?? "";
  const key = useMemo(() => taskKey(fixTask(text, line)), [text, line]);
  return useStore(desk.states, (states) => states.get(key)) as WorkState<"smallest fix"> | undefined;
}

/** Has the smallest fixes of a list of findings looked for, the finding in hand first; `lines` only once they are of the text in hand. */
export function useMending(lines: readonly FindingLine[] | undefined): Mending {
  const desk = useDesk();
  const text = useBench((bench) => bench.sound?.text) ?? "";
  const inHand = useBench((bench) => bench.finding);
  const states = useStore(desk.states);
  const [halted, setHalted] = useState<string | undefined>(undefined);
  const [rested, setRested] = useState("");
  const isHalted = halted === text;
  useEffect(() => {
    const waiting = setTimeout(() => setRested(text), rest);
    return () => clearTimeout(waiting);
  }, [text]);
  const tasks = useMemo(() => {
    const wanted = toMend(lines ?? noLines, inHand);
    return wanted.map((line) => ({ line, task: fixTask(text, line), key: taskKey(fixTask(text, line)) }));
  }, [lines, text, inHand]);
  const running = tasks.find(({ key }) => states.get(key)?.is === "under way");
  const waiting = tasks.filter(({ key }) => !states.has(key));
  const next = waiting.find(({ line }) => line.key === inHand) ?? waiting[0];
  useEffect(() => {
    if (rested === text && !isHalted && running === undefined && next !== undefined) desk.ask(next.task);
  }, [desk, rested, text, isHalted, running, next]);
  const now = running === undefined ? undefined : states.get(running.key);
  return {
    wanted: tasks.length,
    done: tasks.filter(({ key }) => isEnded(states.get(key))).length,
    share: now?.is === "under way" ? now.share : undefined,
    isHalted,
    halt: () => {
      setHalted(text);
      if (running !== undefined) desk.stop(running.task);
    },
    goOn: () => {
      setHalted(undefined);
      const stopped = tasks.find(({ key }) => states.get(key)?.is === "stopped");
      if (stopped !== undefined) desk.ask(stopped.task, true);
    },
  };
}

function isEnded(state: WorkState | undefined): boolean {
  return state?.is === "done" || state?.is === "failed";
}

/** The fix of a state, and whether the search came to an end without one. */
export function foundFix(state: WorkState<"smallest fix"> | undefined): FoundFix | undefined {
  return state?.is === "done" ? state.result : undefined;
}
