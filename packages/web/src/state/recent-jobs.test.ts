import { describe, expect, it } from "vitest";
import { recentJobs, rememberJob } from "./recent-jobs.ts";

function browser() {
  const held = new Map<string, string>();
  return {
    getItem: (key: string) => held.get(key) ?? null,
    setItem: (key: string, value: string) => void held.set(key, value),
    removeItem: (key: string) => void held.delete(key),
  };
}

describe("recent jobs", () => {
  it("stand the latest first, each once, and not for ever", () => {
    const storage = browser();
    for (const name of ["a", "b", "a", "c"]) rememberJob(storage, { name, origin: "server" });
    rememberJob(storage, { name: "a", origin: "example" });
    expect(recentJobs(storage).map(({ name, origin }) => `${origin} ${name}`)).toEqual([
      "example a",
      "server c",
      "server a",
      "server b",
    ]);
    for (let number = 0; number < 20; number++) rememberJob(storage, { name: `job ${number}`, origin: "disk" });
    expect(recentJobs(storage)).toHaveLength(8);
  });

  it("are none where something else is written, or nothing can be", () => {
    const storage = browser();
    storage.setItem("oncethrough-recent", '[{"name":1},null,{"name":"x","origin":"moon"}]');
    expect(recentJobs(storage)).toEqual([]);
    const full = {
      ...browser(),
      setItem: () => {
        throw new Error("full");
      },
    };
    expect(() => rememberJob(full, { name: "a", origin: "disk" })).not.toThrow();
  });
});
