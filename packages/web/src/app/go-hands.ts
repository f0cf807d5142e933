import { useContext } from "react";
import { sectionIndex } from "#state/bench-state";
import type { Command, Way } from "#state/go-entries";
import { BenchContext } from "#view/use-bench";
import { useSheet } from "#view/use-sheet";
import { toNextTheme } from "./theme.ts";

/** What commands do that the bench does not know. */
export interface GoHands {
  readonly save: () => void;
}

/** Goes the way of an entry. */
export function useGoHands({ save }: GoHands): (way: Way) => void {
  const bench = useContext(BenchContext)!;
  const lay = useSheet((sheets) => sheets.lay);
  const { actions } = bench.getState();
  const onSection = (act: (index: number) => void) => {
    const index = sectionIndex(bench.getState().picked);
    if (index !== undefined) act(index);
  };
  const acts: Readonly<Record<Command, () => void>> = {
    save,
    open: () => lay({ name: "open a job" }),
    new: () => lay({ name: "a new unit" }),
    variants: () => lay({ name: "variants" }),
    help: () => lay({ name: "help", topic: "sections/duty" }),
    tour: () => lay({ name: "tour" }),
    keys: () => lay({ name: "keys" }),
    undo: actions.undo,
    redo: actions.redo,
    print: () => window.setTimeout(() => window.print()),
    theme: toNextTheme,
    units: () => actions.setSystem(bench.getState().system === "ip" ? "si" : "ip"),
    air: () => actions.setAirMoves(!bench.getState().airMoves),
    "add before": () => onSection((index) => actions.addAt(index)),
    "add behind": () => onSection((index) => actions.addAt(index + 1)),
    earlier: () => onSection((index) => actions.moveSection(index, index - 1)),
    later: () => onSection((index) => actions.moveSection(index, index + 1)),
    remove: () => onSection(actions.removeSection),
  };
  return (way) => {
    switch (way.to) {
      case "part":
        actions.pick(way.path);
        return focusSoon('[role="listbox"][aria-orientation="horizontal"]');
      case "finding":
        actions.pickFinding(way.key, way.index);
        return focusSoon(".finding-open > div > button, .finding-open button");
      case "figure":
        actions.pick(way.path);
        if (bench.getState().openWorking !== way.figure) actions.toggleWorking(way.figure);
        return focusSoon(`[data-figure="${way.figure}"]`);
      case "field":
        actions.pick(way.part);
        return focusSoon(`[data-path="${way.path}"] :is(input, select)`);
      case "condition":
        return actions.pickCondition(way.key);
      case "view":
        return actions.setView(way.view);
      case "command":
        return acts[way.command]();
    }
  };
}

/** Frames in which what was asked for has to come onto the page. */
const patience = 60;

/** Focuses an element as soon as it stands on the page, opening what hides it. */
function focusSoon(selector: string, tries = patience): void {
  requestAnimationFrame(() => {
    const element = document.querySelector<HTMLElement>(selector);
    if (element === null) {
      if (tries > 0) focusSoon(selector, tries - 1);
      return;
    }
    const around = element.closest("details");
    if (around !== null) around.open = true;
    element.scrollIntoView({ block: "nearest" });
    element.focus();
  });
}
