import { describe, expect, it } from "vitest";
import { foundEntries, goEntries } from "./go-entries.ts";
import { catalogue, sampleBench } from "./sample-job.test-data.ts";
import { fieldEdited } from "./transitions.ts";

const bench = sampleBench();
bench.sound?.book.rating(bench.condition);
const entries = goEntries(bench, catalogue, []);
const first = (typed: string) => foundEntries(entries, typed, 10)[0];

describe("search and go", () => {
  it("holds every section, condition, field and figure of the job once, under keys of their own", () => {
    expect(new Set(entries.map(({ key }) => key)).size).toBe(entries.length);
    const count = (kind: string) => entries.filter((entry) => entry.kind === kind).length;
    expect(count("section")).toBe(3 + 2);
    expect(count("condition")).toBe(bench.sound!.job.conditions.length);
    expect(count("figure")).toBeGreaterThan(20);
    expect(entries.some(({ way }) => way.to === "field" && way.path === "duty.supplyAirflow.design")).toBe(true);
  });

  it("finds by the beginnings of words, in any order, and by where a thing stands", () => {
    expect(first("fan")?.way).toEqual({ to: "part", path: "unit.sections[2]" });
    expect(first("power motor")?.name).toBe("motor power");
    expect(first("filters medium")?.way).toMatchObject({ to: "field", path: "unit.sections[0].medium" });
    expect(first("winter change")?.kind).toBe("condition");
    expect(first("motr")).toBeUndefined();
  });

  it("names the step that undo takes back, and offers none where there is none", () => {
    expect(entries.some(({ key }) => key === "command undo")).toBe(false);
    const edited = fieldEdited(bench, "duty.tag", "T-9", catalogue);
    expect(goEntries(edited, catalogue, []).find(({ key }) => key === "command undo")?.name).toBe("undo: tag T-9");
  });
});
