import { createContext, useContext } from "react";
import { useStore } from "zustand";
import { sectionIndex } from "#state/bench-state";
import type { Bench, BenchStore } from "#state/bench-store";

/** The store of the page; views read it themselves, so that nothing is handed down through layers. */
export const BenchContext = createContext<BenchStore | undefined>(undefined);

/** A part of the bench; the component follows it. */
export function useBench<Part>(part: (bench: Bench) => Part): Part {
  const store = useContext(BenchContext);
  if (store === undefined) throw new Error("the bench is used outside its page");
  return useStore(store, part);
}

/** The rating at the condition in hand. */
export function useRating() {
  return useBench((bench) => bench.sound?.book.rating(bench.condition));
}

/** True while the part in hand is the fan section. */
export function useFanInHand(): boolean {
  return useBench((bench) => {
    const index = sectionIndex(bench.picked);
    return index !== undefined && bench.sound?.job.unit.sections[index]?.behaviour.role === "fan";
  });
}
