import { describe, expect, it } from "vitest";
import type { JobFile } from "./bench-state.ts";
import { type DraftStorage, draftOf, keepDraft } from "./draft.ts";

const file: JobFile = { name: "wing.yaml", origin: "server", version: "1", storedText: "stored\n" };

function storage(entries = new Map<string, string>()): DraftStorage & { readonly entries: Map<string, string> } {
  return {
    entries,
    getItem: (key) => entries.get(key) ?? null,
    setItem: (key, value) => void entries.set(key, value),
    removeItem: (key) => void entries.delete(key),
  };
}

describe("drafts", () => {
  it("keep unsaved text by file, and go when the text is stored", () => {
    const kept = storage();
    expect(keepDraft(kept, file, "changed\n")).toBe(true);
    expect(draftOf(kept, file)).toEqual({ text: "changed\n", storedText: "stored\n" });
    expect(draftOf(kept, { ...file, name: "other.yaml" })).toBeUndefined();
    expect(draftOf(kept, { ...file, origin: "disk" })).toBeUndefined();
    keepDraft(kept, { ...file, storedText: "changed\n" }, "changed\n");
    expect(kept.entries.size).toBe(0);
  });

  it("say nothing when they say what the file says, or when what is kept is no draft", () => {
    const kept = storage();
    keepDraft(kept, file, "changed\n");
    expect(draftOf(kept, { ...file, storedText: "changed\n" })).toBeUndefined();
    const key = [...kept.entries.keys()][0]!;
    for (const broken of ["{", "null", '"text"', '{"text":1,"storedText":"x"}']) {
      kept.entries.set(key, broken);
      expect(draftOf(kept, file), broken).toBeUndefined();
    }
  });

  it("do not stop the page when the storage is full", () => {
    const full: DraftStorage = {
      ...storage(),
      setItem: () => {
        throw new Error("quota");
      },
    };
    expect(keepDraft(full, file, "changed\n")).toBe(false);
  });
});
