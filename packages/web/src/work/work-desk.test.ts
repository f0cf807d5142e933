import { describe, expect, it } from "vitest";
import type { FromWorker, SystemCurvesTask, ToWorker } from "./task.ts";
import { taskKey, WorkDesk } from "./work-desk.ts";

const task = (text: string): SystemCurvesTask => ({ kind: "system curves", text, condition: "one" });

const shop = { prices: { path: "p", text: "" }, rates: { path: "r", text: "" }, stock: { path: "s", text: "" } };

/** A desk whose worker is played by the test. */
function playedDesk(workers = 1) {
  const posted: ToWorker[] = [];
  let hear: (message: FromWorker) => void = () => {};
  let broken: (problem: string) => void = () => {};
  let begun = 0;
  const desk = new WorkDesk(
    () => {
      begun++;
      return {
        post: (message) => posted.push(message),
        listen: (listener, failed) => {
          hear = listener;
          broken = failed;
        },
      };
    },
    () => ({ records: [{ path: "a.yaml", text: "" }], profiles: [], shop }),
    workers,
  );
  const state = (text: string) => desk.states.getState().get(taskKey(task(text)));
  return { desk, posted, state, say: (m: FromWorker) => hear(m), breaks: (p: string) => broken(p), begun: () => begun };
}

describe("the desk of long work", () => {
  it("starts its worker with the first task, tells how far it is, and keeps the result", () => {
    const { desk, posted, state, say, begun } = playedDesk();
    expect(begun()).toBe(0);
    desk.ask(task("a"));
    expect(posted.map((each) => each.say)).toEqual(["shelf", "do"]);
    say({ say: "share", id: 1, share: 0.4 });
    expect(state("a")).toEqual({ is: "under way", share: 0.4 });
    say({ say: "result", id: 1, result: [] });
    expect(state("a")).toEqual({ is: "done", result: [] });
    desk.ask(task("a"));
    expect(posted).toHaveLength(2);
  });

  it("stops an older task of the kind, and does not mistake its late answer for the new one", () => {
    const { desk, posted, state, say } = playedDesk();
    desk.ask(task("a"));
    desk.ask(task("b"));
    expect(posted.slice(2)).toEqual([
      { say: "stop", id: 1 },
      { say: "do", id: 2, task: task("b") },
    ]);
    say({ say: "result", id: 1, result: [] });
    expect(state("a")).toBeUndefined();
    expect(state("b")).toEqual({ is: "under way", share: 0 });
  });

  it("stops by hand, and begins again only when asked to", () => {
    const { desk, posted, state } = playedDesk();
    desk.ask(task("a"));
    desk.stop(task("a"));
    expect(state("a")).toEqual({ is: "stopped" });
    desk.ask(task("a"));
    expect(posted).toHaveLength(3);
    desk.ask(task("a"), true);
    expect(posted.at(-1)).toMatchObject({ say: "do", id: 2 });
  });

  it("says a problem, and starts another worker after one that broke", () => {
    const { desk, state, say, breaks, begun } = playedDesk();
    desk.ask(task("a"));
    say({ say: "problem", id: 1, problem: "no" });
    expect(state("a")).toEqual({ is: "failed", problem: "no" });
    desk.ask(task("b"));
    breaks("gone");
    expect(state("b")).toEqual({ is: "failed", problem: "gone" });
    desk.ask(task("c"));
    expect(begun()).toBe(2);
  });

  it("keeps no more results than it may", () => {
    const { desk, state, say } = playedDesk();
    for (let id = 1; id <= 110; id++) {
      desk.ask(task(`t${id}`));
      say({ say: "result", id, result: [] });
    }
    expect(state("t1")).toBeUndefined();
    expect(state("t110")?.is).toBe("done");
    expect(desk.states.getState().size).toBe(100);
  });

  it("lends weather to the workers of years alone, before their pieces, and keeps no more than four years", () => {
    const { desk, posted, state, say } = playedDesk();
    const weather = { hours: 8760 } as never;
    desk.lend("station", weather);
    expect(posted).toEqual([]);
    const year = (text: string) => ({ kind: "year", text, weather: "station" }) as const;
    /** Answers whatever is asked for a year until it is whole. */
    const solve = (text: string) => {
      desk.ask(year(text));
      for (;;) {
        const last = posted.at(-1)!;
        if (last.say !== "do") throw new Error("nothing is asked for");
        say({ say: "result", id: last.id, result: {} as never });
        if (last.task.kind === "year whole") return last.task.pieces.length;
      }
    };
    desk.ask(task("a"));
    expect(solve("y1")).toBe(24);
    expect(posted.slice(0, 5).map((each) => each.say)).toEqual(["shelf", "do", "shelf", "weather", "do"]);
    desk.lend("other", weather);
    expect(posted.at(-1)).toEqual({ say: "weather", name: "other", weather });
    say({ say: "result", id: 1, result: [] });
    for (const text of ["y2", "y3", "y4", "y5", "y6"]) solve(text);
    const kept = [...desk.states.getState().keys()].filter((key) => key.includes('"year"'));
    expect(kept).toHaveLength(4);
    expect(state("a")?.is).toBe("done");
  });

  it("shares a year among its workers, each given the next piece as it ends one, and stops all of them", () => {
    const { desk, posted, say, begun } = playedDesk(3);
    const year = { kind: "year", text: "y", weather: undefined } as const;
    desk.ask(year);
    expect(begun()).toBe(3);
    const pieces = () =>
      posted.flatMap((each) =>
        each.say === "do" && each.task.kind === "year piece" ? [{ id: each.id, segment: each.task.segment }] : [],
      );
    expect(pieces().map(({ segment }) => segment)).toEqual([0, 1, 2]);
    say({ say: "result", id: pieces()[1]!.id, result: {} as never });
    expect(pieces()).toHaveLength(4);
    const share = desk.states.getState().get(taskKey(year));
    expect(share).toEqual({ is: "under way", share: 1 / 25 });
    desk.stop(year);
    const stopped = posted.flatMap((each) => (each.say === "stop" ? [each.id] : []));
    for (const index of [0, 2, 3]) expect(stopped).toContain(pieces()[index]!.id);
    say({ say: "result", id: pieces()[0]!.id, result: {} as never });
    expect(pieces()).toHaveLength(4);
    expect(desk.states.getState().get(taskKey(year))).toEqual({ is: "stopped" });
  });
});
