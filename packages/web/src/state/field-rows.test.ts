import { jobFields, sectionKind } from "@oncethrough/engine/job/job";
import { describe, expect, it } from "vitest";
import { sectionPath } from "./bench-state.ts";
import { type FieldRow, fieldRows } from "./field-rows.ts";
import { catalogue, sampleBench } from "./sample-job.test-data.ts";
import { fieldEdited } from "./transitions.ts";

const rowsOf = (bench = sampleBench(), index = 0) => {
  const kind = bench.sound!.job.unit.sections[index]!.kind;
  return fieldRows(sectionKind(kind)!.fields, sectionPath(index), bench.reading, catalogue);
};
const rowOf = (rows: ReturnType<typeof rowsOf>, name: string) =>
  rows.find((row): row is FieldRow => row.row === "field" && row.name === name)!;

describe("rows of fields", () => {
  it("show what is typed as typed, and what holds where nothing is", () => {
    const rows = rowsOf();
    expect(rowOf(rows, "medium")).toMatchObject({ typed: "typical MERV 8 pleated 4 in", control: "choice" });
    expect(rowOf(rows, "medium").choices).toContain("typical MERV 14 rigid 12 in");
    expect(rowOf(rows, "rack")).toMatchObject({ typed: undefined, fallback: "flat", choices: ["flat", "angled"] });
    expect(rowOf(rows, "length")).toMatchObject({ typed: undefined, fallback: "44 in", control: "line" });
  });

  it("carry the problem of their own value", () => {
    const bench = fieldEdited(sampleBench(), `${sectionPath(0)}.length`, "long", catalogue);
    const row = rowOf(rowsOf(bench), "length");
    expect(row.typed).toBe("long");
    expect(row.problems).toHaveLength(1);
    expect(rowOf(rowsOf(bench), "rack").problems).toEqual([]);
  });

  it("head groups, and say which groups are not given", () => {
    const bench = sampleBench();
    const rows = fieldRows(jobFields.duty.fields, "duty", bench.reading, catalogue);
    const heads = rows.flatMap((row) => (row.row === "head" ? [[row.name, row.note]] : []));
    expect(heads).toContainEqual(["return air", "not given"]);
    expect(heads).toContainEqual(["supply airflow", ""]);
    expect(rows.some((row) => row.path === "duty.supplyAirflow.design" && row.row === "field")).toBe(true);
  });
});
