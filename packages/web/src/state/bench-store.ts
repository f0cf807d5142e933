import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import type { Condition } from "@oncethrough/engine/duty/condition";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import type { ShopReading } from "@oncethrough/engine/takeoff/read-shop";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { BenchState, JobFile, Notice, UnitView } from "./bench-state.ts";
import { type DayTyped, dayMoved } from "./day-edits.ts";
import type { FindingLine } from "./finding-lines.ts";
import { typing } from "./history.ts";
import * as section from "./section-edits.ts";
import type { ToldConditions } from "./told-conditions.ts";
import * as transition from "./transitions.ts";
import { type NewWaiver, ruleWaived, waiverTaken } from "./waiving.ts";

/** What the page can do; each action is one transition. */
export interface BenchActions {
  readonly typeText: (text: string) => void;
  /** Another text as one named step: a draft of last time, a form filled in. */
  readonly replaceText: (step: string, text: string) => void;
  readonly editField: (path: string, typed: string) => void;
  /** Several fields at once as one named step. */
  readonly editFields: (step: string, changes: Parameters<typeof transition.fieldsEdited>[2]) => void;
  readonly moveSection: (from: number, to: number) => void;
  readonly addSection: (at: number, kind: string) => void;
  readonly removeSection: (index: number) => void;
  readonly resizeSection: (index: number, typed: string) => void;
  /** Draws the machine as a clear length would make it, and writes nothing; undefined: no longer. */
  readonly tryLength: (index: number, typed: string | undefined) => void;
  /** A design day of the duty as it would be typed elsewhere on the chart. */
  readonly moveDay: (key: string, day: DayTyped) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** Back or forward to where so many steps are done. */
  readonly stepTo: (count: number) => void;
  /** Lets a rule go for this job, by name and reason; or asks it again. */
  readonly waive: (waiver: NewWaiver) => void;
  readonly takeWaiver: (line: FindingLine) => void;
  readonly open: (file: JobFile, text?: string) => void;
  readonly markSaved: (file: JobFile) => void;
  /** Another hand has stored another text. */
  readonly takeFromDisk: (file: JobFile) => void;
  readonly notice: (notice: Notice | undefined) => void;
  readonly pick: (path: string) => void;
  readonly pickBeside: (by: 1 | -1) => void;
  /** Opens a finding and picks its section; undefined closes. */
  readonly pickFinding: (finding: string | undefined, index?: number) => void;
  readonly pickCondition: (key: string) => void;
  /** An hour of a year in place of a condition of the job. */
  readonly pickHour: (hour: Condition) => void;
  readonly setSystem: (system: UnitSystem) => void;
  readonly setView: (view: UnitView) => void;
  /** Asks which section is to be put at a place; undefined: none any more. */
  readonly addAt: (at: number | undefined) => void;
  readonly setAirMoves: (moves: boolean) => void;
  readonly toggleWorking: (figure: string) => void;
  /** What a worker tells of all conditions of the job of that text. */
  readonly takeConditions: (text: string, told: ToldConditions) => void;
}

/** The bench with its actions, the catalogue that its texts are read against, and the books that price it. */
export interface Bench extends BenchState {
  readonly catalogue: Catalogue;
  /** The shop's books, or why they cannot be read. */
  readonly shop: ShopReading;
  readonly actions: BenchActions;
}

/** The store of the page, for whoever acts on it from outside of the views. */
export type BenchStore = StoreApi<Bench>;

/** A store that holds a bench; transitions are pure, this is the only place where state changes hands. */
export function createBenchStore(first: BenchState, catalogue: Catalogue, shop: ShopReading): BenchStore {
  return createStore<Bench>()((set) => {
    const to = (next: (state: Bench) => BenchState) => set((state) => next(state));
    const actions: BenchActions = {
      typeText: (text) => to((state) => transition.edited(state, typing, text, catalogue)),
      replaceText: (step, text) => to((state) => transition.edited(state, step, text, catalogue)),
      editField: (path, typed) => to((state) => transition.fieldEdited(state, path, typed, catalogue)),
      editFields: (step, changes) => to((state) => transition.fieldsEdited(state, step, changes, catalogue)),
      moveSection: (from, at) => to((state) => section.sectionMoved(state, from, at, catalogue)),
      addSection: (at, kind) => to((state) => section.sectionAdded(state, at, kind, catalogue)),
      removeSection: (index) => to((state) => section.sectionRemoved(state, index, catalogue)),
      resizeSection: (index, typed) => to((state) => section.sectionResized(state, index, typed, catalogue)),
      tryLength: (index, typed) => to((state) => section.lengthTried(state, index, typed, catalogue)),
      moveDay: (key, day) => to((state) => dayMoved(state, key, day, catalogue)),
      undo: () => to((state) => transition.stepBack(state, catalogue)),
      redo: () => to((state) => transition.stepForward(state, catalogue)),
      stepTo: (count) => to((state) => transition.steppedTo(state, count, catalogue)),
      waive: (waiver) => to((state) => ruleWaived(state, waiver, catalogue)),
      takeWaiver: (line) => to((state) => waiverTaken(state, line, catalogue)),
      open: (file, text) => to((state) => transition.opened(state, file, catalogue, text)),
      takeFromDisk: (file) => to((state) => transition.takenFromDisk(state, file, catalogue)),
      markSaved: (file) => to((state) => transition.saved(state, file)),
      notice: (notice) => to((state) => transition.noticed(state, notice)),
      pick: (path) => to((state) => transition.pickedPart(state, path)),
      pickBeside: (by) => to((state) => transition.pickedBeside(state, by)),
      pickFinding: (finding, index = -1) => to((state) => transition.pickedFinding(state, finding, index)),
      pickCondition: (key) => to((state) => transition.pickedCondition(state, key)),
      pickHour: (hour) => to((state) => transition.pickedHour(state, hour)),
      setSystem: (system) => to((state) => transition.withSystem(state, system)),
      setView: (view) => to((state) => transition.withView(state, view)),
      addAt: (at) => to((state) => transition.addingSection(state, at)),
      setAirMoves: (moves) => to((state) => transition.withAir(state, moves)),
      toggleWorking: (figure) => to((state) => transition.workingToggled(state, figure)),
      takeConditions: (text, told) => to((state) => transition.conditionsTold(state, text, told)),
    };
    return { ...first, catalogue, shop, actions };
  });
}
