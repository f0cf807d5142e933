import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { shippedCatalogue } from "#section/shipped.test-data";
import { readJob } from "./read-job.ts";

const demo = readFileSync(new URL("../../../../examples/marine-biology-wing.yaml", import.meta.url), "utf8");
const withoutOptions = demo.slice(0, demo.indexOf("\noptions:"));

function read(options: string, text = withoutOptions) {
  return readJob(`${text}\noptions:\n${options}`, shippedCatalogue);
}

const fins = "  - { name: fins, taken: yes, changes: [{ part: cooling coil, field: fin material, value: copper }] }\n";

describe("options of a job", () => {
  it("build the very unit that the changed text builds", () => {
    const { job } = read(fins);
    const typed = readJob(
      withoutOptions.replace("fin material: epoxy-coated aluminium", "fin material: copper"),
      shippedCatalogue,
    ).job;
    const plain = readJob(withoutOptions, shippedCatalogue).job;
    const designs = (unit: typeof job) => JSON.stringify(unit?.unit.sections.map(({ design }) => design));
    expect(designs(job)).toBe(designs(typed));
    expect(designs(job)).not.toBe(designs(plain));
    expect(JSON.stringify(job?.base.sections.map(({ design }) => design))).toBe(designs(plain));
    expect(job?.options[0]?.unit).toBe(job?.unit);
  });

  it("leave the machine as it is while none is taken, and change fields inside groups and of the cabinet", () => {
    const { job, problems } = read(`  - name: wide
    changes:
      - { part: mixing box, field: outside air.width, value: 66 in }
      - { part: cabinet, field: panel thickness, value: 4 in }
`);
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(job?.unit).toBe(job?.base);
    const wide = job?.options[0]?.unit;
    expect(wide?.casing.panelThickness).toBeCloseTo(0.1016, 9);
    expect(job?.base.casing.panelThickness).toBeCloseTo(0.0508, 9);
    expect(JSON.stringify(wide?.sections[2]?.design)).not.toBe(JSON.stringify(job?.base.sections[2]?.design));
  });

  const wrong: readonly (readonly [string, string, string, RegExp, RegExp])[] = [
    ["a part that is not there", "{ part: cooling coal, field: rows, value: 6 }", "part", /no part/, /cooling coil/],
    ["a field that is not there", "{ part: cooling coil, field: row, value: 6 }", "field", /no field/, /rows/],
    ["a group", "{ part: mixing box, field: outside air, value: 6 in }", "field", /single value/, /outside air\./],
    ["a value out of range", "{ part: cabinet, field: panel thickness, value: 9 in }", "value", /panel/, /6 in/],
    ["a value without sense", "{ part: cooling coil, field: rows, value: many }", "value", /rows/, /\d/],
  ];
  it.each(wrong)("say %s at its place", (_, change, at, says, allows) => {
    const { job, problems } = read(`  - { name: wrong, changes: [${change}] }\n`);
    expect(job).toBeUndefined();
    const [problem] = problems.filter(({ severity }) => severity === "error");
    expect(problem?.path).toBe(`options[0].changes[0].${at}`);
    expect(problem?.problem).toMatch(says);
    expect(problem?.allowed).toMatch(allows);
    expect(problem?.line).toBeGreaterThan(withoutOptions.split("\n").length);
  });

  it("say what cannot be built, two that quarrel, and one that is nothing", () => {
    const tooLarge = "[{ part: fan, field: diameter, value: 60 in }]";
    expect(
      read(`  - { name: large, changes: ${tooLarge} }\n`)
        .problems.map(({ problem }) => problem)
        .join(),
    ).toMatch(/with "large": fan:/);
    const other = fins.replace("name: fins", "name: other fins");
    expect(read(fins + other).problems.map(({ problem }) => problem)).toContainEqual(
      expect.stringMatching(/"fins" and "other fins" are both taken/),
    );
    expect(read(fins + other.replace("taken: yes", "taken: no")).job?.options).toHaveLength(2);
    expect(read(fins + fins).problems.map(({ problem }) => problem)).toContainEqual(
      expect.stringMatching(/two options are called/),
    );
    expect(read("  - { name: nothing }\n").problems.map(({ problem }) => problem)).toContainEqual(
      expect.stringMatching(/changes nothing and has no price/),
    );
  });
});
