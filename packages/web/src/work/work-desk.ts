import type { WeatherYear } from "@oncethrough/engine/weather/weather-year";
import { createStore, type StoreApi } from "zustand/vanilla";
import { isOfYears, mostWorkers, type Pieces, piecesOf } from "./pieces.ts";
import type { FromWorker, Results, ShelfTexts, Task, ToWorker } from "./task.ts";

/** How a piece of long work stands. */
export type WorkState<Kind extends keyof Results = keyof Results> =
  | { readonly is: "under way"; readonly share: number }
  | { readonly is: "done"; readonly result: Results[Kind] }
  | { readonly is: "failed"; readonly problem: string }
  | { readonly is: "stopped" };

/** The page's end of a worker. */
export interface WorkPort {
  readonly post: (message: ToWorker) => void;
  readonly listen: (hear: (message: FromWorker) => void, broken: (problem: string) => void) => void;
}

/** Results that are kept, so that going back in the history shows them at once. */
const resultsKept = 100;

/** Years of them, which are large. */
const yearsKept = 4;

/** What a task is kept under. */
export function taskKey(task: Task): string {
  return JSON.stringify(task);
}

function isYear(key: string): boolean {
  return key.startsWith('{"kind":"year"');
}

/** A worker of its own for what may not wait: findings follow every edit; fixes and years take their time. */
type Lane = "long" | "findings" | "fixes" | YearLane;
/** As many of these as the machine runs beside the page. */
type YearLane = `year ${number}`;

/** Work that is cut into pieces: what is done of it, and where the rest is being done. */
interface SharedWork {
  readonly pieces: Pieces;
  readonly done: unknown[];
  next: number;
  readonly doing: Map<number, { readonly lane: YearLane; share: number }>;
}

function laneOf(kind: Task["kind"]): Lane {
  if (isOfYears(kind)) return "year 0";
  // One worker solves the conditions, then judges what it solved.
  if (kind === "conditions" || kind === "findings") return "findings";
  return kind === "smallest fix" ? "fixes" : "long";
}

/**
 * Hands tasks to workers, each started with the first task that it gets. A newer task of a kind stops the older one;
 * results are kept.
 */
export class WorkDesk {
  /** States by `taskKey`. */
  readonly states: StoreApi<ReadonlyMap<string, WorkState>> = createStore<ReadonlyMap<string, WorkState>>()(
    () => new Map(),
  );
  readonly #begin: () => WorkPort;
  readonly #texts: () => ShelfTexts;
  readonly #ports = new Map<Lane, WorkPort>();
  #lent: Extract<ToWorker, { say: "weather" }> | undefined;
  #lastId = 0;
  readonly #running = new Map<number, { readonly key: string; readonly kind: Task["kind"] }>();
  readonly #shared = new Map<number, SharedWork>();
  readonly #yearLanes: readonly YearLane[];

  /** `workers`: how many share the hours of a year. */
  constructor(begin: () => WorkPort, texts: () => ShelfTexts, workers = 1) {
    this.#begin = begin;
    this.#texts = texts;
    const count = Math.max(1, Math.min(mostWorkers, Math.floor(workers)));
    this.#yearLanes = Array.from({ length: count }, (_, index): YearLane => `year ${index}`);
  }

  /** Sees to it that a task is done or under way; one that was stopped or failed begins again only when `again`. */
  ask(task: Task, again = false): void {
    const key = taskKey(task);
    const known = this.states.getState().get(key);
    if (known?.is === "done" || known?.is === "under way") {
      if (known.is === "done") this.#stopOthers(task.kind, key);
      return;
    }
    if (known !== undefined && !again) return;
    this.#stopOthers(task.kind, key);
    const id = ++this.#lastId;
    this.#running.set(id, { key, kind: task.kind });
    this.#put(key, { is: "under way", share: 0 });
    try {
      const pieces = piecesOf(task);
      if (pieces !== undefined) this.#share(id, pieces);
      else this.#port(laneOf(task.kind)).post({ say: "do", id, task });
    } catch (error) {
      this.#stopPieces(id);
      this.#end(id, { is: "failed", problem: error instanceof Error ? error.message : String(error) });
    }
  }

  /** Lends the worker a year of weather, by a name that tasks give; another worker is lent it again. */
  lend(name: string, weather: WeatherYear): void {
    this.#lent = { say: "weather", name, weather };
    for (const lane of this.#yearLanes) this.#ports.get(lane)?.post(this.#lent);
  }

  /** Stops a task that is under way. */
  stop(task: Task): void {
    const key = taskKey(task);
    for (const [id, running] of this.#running) if (running.key === key) this.#stopOne(id, { is: "stopped" });
  }

  #stopOthers(kind: Task["kind"], key: string): void {
    for (const [id, running] of this.#running)
      if (running.kind === kind && running.key !== key) this.#stopOne(id, undefined);
  }

  #stopOne(id: number, state: WorkState | undefined): void {
    const kind = this.#running.get(id)?.kind;
    this.#stopPieces(id);
    if (kind !== undefined) this.#ports.get(laneOf(kind))?.post({ say: "stop", id });
    this.#end(id, state);
  }

  #port(lane: Lane): WorkPort {
    const known = this.#ports.get(lane);
    if (known !== undefined) return known;
    const port = this.#begin();
    this.#ports.set(lane, port);
    port.listen(
      (heard) => this.#hear(heard),
      (problem) => this.#broken(lane, problem),
    );
    port.post({ say: "shelf", texts: this.#texts() });
    if (lane.startsWith("year") && this.#lent !== undefined) port.post(this.#lent);
    return port;
  }

  /** Gives every worker of years a piece; each is given the next as it ends one. */
  #share(id: number, pieces: Pieces): void {
    const work: SharedWork = { pieces, done: [], next: 0, doing: new Map() };
    this.#shared.set(id, work);
    for (const lane of this.#yearLanes) this.#nextPiece(work, lane);
  }

  #nextPiece(work: SharedWork, lane: YearLane): void {
    if (work.next === work.pieces.count) return;
    const task = work.pieces.piece(work.next++);
    const id = ++this.#lastId;
    work.doing.set(id, { lane, share: 0 });
    this.#port(lane).post({ say: "do", id, task });
  }

  /** True when the message was about a piece of shared work. */
  #heardPiece(message: FromWorker): boolean {
    for (const [id, work] of this.#shared) {
      const piece = work.doing.get(message.id);
      if (piece === undefined) continue;
      if (message.say === "problem") this.#failShared(id, message.problem);
      else if (message.say === "share") piece.share = message.share;
      else {
        work.doing.delete(message.id);
        work.done.push(message.result);
        this.#nextPiece(work, piece.lane);
      }
      this.#tellShared(id, work);
      return true;
    }
    return false;
  }

  /** How far shared work is; when all its pieces are there, one worker puts them together. */
  #tellShared(id: number, { pieces, done, doing }: SharedWork): void {
    const key = this.#running.get(id)?.key;
    if (key === undefined) return;
    const begun = [...doing.values()].reduce((sum, { share }) => sum + share, 0);
    this.#put(key, { is: "under way", share: (done.length + begun) / (pieces.count + 1) });
    if (done.length < pieces.count) return;
    this.#shared.delete(id);
    this.#port("year 0").post({ say: "do", id, task: pieces.whole(done) });
  }

  #failShared(id: number, problem: string): void {
    this.#stopPieces(id);
    this.#end(id, { is: "failed", problem });
  }

  #stopPieces(id: number): void {
    for (const [piece, { lane }] of this.#shared.get(id)?.doing ?? [])
      this.#ports.get(lane)?.post({ say: "stop", id: piece });
    this.#shared.delete(id);
  }

  #hear(message: FromWorker): void {
    if (this.#heardPiece(message)) return;
    const running = this.#running.get(message.id);
    if (running === undefined) return;
    if (message.say === "share") this.#put(running.key, { is: "under way", share: message.share });
    else if (message.say === "result") this.#end(message.id, { is: "done", result: message.result });
    else this.#end(message.id, { is: "failed", problem: message.problem });
  }

  /** A worker that broke takes all that it was doing with it; the next task starts another one. */
  #broken(lane: Lane, problem: string): void {
    this.#ports.delete(lane);
    if (lane.startsWith("year")) for (const id of [...this.#shared.keys()]) this.#failShared(id, problem);
    for (const [id, { kind }] of [...this.#running])
      if (laneOf(kind) === lane) this.#end(id, { is: "failed", problem });
  }

  #end(id: number, state: WorkState | undefined): void {
    const key = this.#running.get(id)?.key;
    this.#running.delete(id);
    if (key !== undefined) this.#put(key, state);
  }

  /** Latest last; the oldest that are not under way give way. */
  #put(key: string, state: WorkState | undefined): void {
    const states = new Map(this.states.getState());
    states.delete(key);
    if (state !== undefined) states.set(key, state);
    const old = [...states].filter(([, each]) => each.is !== "under way").slice(0, -resultsKept);
    const oldYears = [...states].filter(([each, { is }]) => is === "done" && isYear(each)).slice(0, -yearsKept);
    for (const [each] of [...old, ...oldYears]) states.delete(each);
    this.states.setState(states, true);
  }
}
