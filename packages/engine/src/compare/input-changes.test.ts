import { describe, expect, it } from "vitest";
import { inputChanges } from "./input-changes.ts";

const one = `# invented
duty:
  tag: A
  supply airflow: { design: 12000 cfm }
unit:
  casing: { width: 72 in }
  sections:
    - kind: access
    - { kind: chilled-water coil, name: cooling coil, rows: 8 }
    - kind: access
`;

describe("what job texts say differently", () => {
  it("is nothing for the same text, whatever its spaces and comments", () => {
    expect(inputChanges([one, one.replace("# invented\n", "").replace("  tag: A", "  tag:   A")])).toEqual([]);
  });

  it("is told as typed, with what it belongs to; what one leaves out is undefined", () => {
    const other = one
      .replace("12000 cfm }", "340 m3/min, minimum: 8000 cfm }")
      .replace("width: 72 in", "width: 84 in")
      .replace("rows: 8", "rows: 10");
    expect(inputChanges([one, other])).toEqual([
      { owner: "duty", field: "supply airflow, design", values: ["12000 cfm", "340 m3/min"] },
      { owner: "casing", field: "width", values: ["72 in", "84 in"] },
      { owner: "cooling coil", field: "rows", values: ["8", "10"] },
      { owner: "duty", field: "supply airflow, minimum", values: [undefined, "8000 cfm"] },
    ]);
  });

  it("does not take a section that moved for another one, and tells the second of a kind from the first", () => {
    const moved = one.replace("    - kind: access\n    - {", "    - {").replace(/\n$/, "\n    - kind: access\n");
    expect(inputChanges([one, moved])).toEqual([
      {
        owner: "unit",
        field: "sections in airflow order",
        values: ["access, cooling coil, access 2", "cooling coil, access, access 2"],
      },
    ]);
    expect(inputChanges([one, one.replace(/ {4}- kind: access\n$/, "")])).toEqual([
      {
        owner: "unit",
        field: "sections in airflow order",
        values: ["access, cooling coil, access 2", "access, cooling coil"],
      },
      { owner: "access 2", field: "kind", values: ["access", undefined] },
    ]);
  });

  it("takes a text that is no YAML for one that says nothing", () => {
    expect(inputChanges([one, "a: [b"]).every(({ values }) => values[1] === undefined)).toBe(true);
  });
});
