import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { emptyHistory, redone, typing, type Undoable, undone, withStep } from "./history.ts";
import { changeBetween } from "./text-change.ts";

function edit({ text, history }: Undoable, name: string, next: string): Undoable {
  const change = changeBetween(text, next);
  return change === undefined ? { text, history } : { text: next, history: withStep(history, { name, change }) };
}

describe("the history of a text", () => {
  it("ends where it began after random edits, undos and redos, and comes back to the end", () => {
    const texts = fc.array(fc.string({ unit: fc.constantFrom("a", "b", "\n"), maxLength: 12 }), { maxLength: 20 });
    fc.assert(
      fc.property(texts, fc.boolean(), (steps, typed) => {
        const first: Undoable = { text: "start\n", history: emptyHistory };
        let now = steps.reduce((state, next) => edit(state, typed ? typing : "a step", next), first);
        const end = now.text;
        while (now.history.past.length > 0) now = undone(now);
        expect(now.text).toBe("start\n");
        while (now.history.future.length > 0) now = redone(now);
        expect(now.text).toBe(end);
      }),
    );
  });

  it("takes letters typed on at one place as one step, and a new line as another", () => {
    let now: Undoable = { text: "rows: ", history: emptyHistory };
    for (const next of ["rows: 1", "rows: 12", "rows: 1", "rows: 10"]) now = edit(now, typing, next);
    expect(now.history.past).toHaveLength(1);
    now = edit(now, typing, "rows: 10\n");
    expect(now.history.past).toHaveLength(2);
    expect(undone(undone(now)).text).toBe("rows: ");
  });

  it("forgets what was undone when something new is done, and does nothing at its ends", () => {
    const one = edit({ text: "a", history: emptyHistory }, "first", "b");
    const back = undone(one);
    expect(redone(edit(back, "second", "c")).text).toBe("c");
    expect(undone(back).text).toBe("a");
    expect(redone(one).text).toBe("b");
  });
});
