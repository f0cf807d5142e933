import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { agrees, evaluate, readExamples, takeApart } from "./doc-block/block.ts";
import { readExports } from "./doc-block/exports.ts";
import { judgeFull, judgePlain } from "./doc-block/judge.ts";
import { runSweep, sweepOf } from "./doc-block/sweep.ts";
import { bibliographyKeys, programFiles, readText, root } from "./project.ts";

/** Folders whose functions are calculations: every figure of theirs has unit, range, source and a worked number. */
const calculations = /^packages\/engine\/src\/(quantity|numerics|standard|fluid|component)\//;

const files = programFiles.map((path) => ({ path, things: readExports(readText(path), path) }));

describe("doc blocks", () => {
  it("sees the program", () => {
    expect(files.length).toBeGreaterThan(0);
    expect(files.some((file) => calculations.test(file.path))).toBe(true);
  });

  const withExports = files.filter((file) => file.things.length > 0).map((file) => [file.path, file.things] as const);

  it.each(withExports)("of %s", (path, things) => {
    const isCalculation = calculations.test(path);
    const findings = things.flatMap((thing) =>
      isCalculation ? judgeFull(thing, bibliographyKeys) : judgePlain(thing),
    );
    expect(findings.join("\n")).toBe("");
  });
});

describe("worked numbers", () => {
  const withExamples = files.flatMap(({ path, things }) => {
    const examples = things.flatMap((thing) =>
      takeApart(thing.block ?? "")
        .tags.filter((each) => each.tag === "example")
        .flatMap((each) => readSafely(each.text)),
    );
    return examples.map((example) => [path, example.expression, example] as const);
  });

  it.each(withExamples)("of %s: %s", async (path, _expression, example) => {
    const got = evaluate(example.expression, await importModule(path));
    expect(agrees(got, example), `gave ${JSON.stringify(got)}, should give ${JSON.stringify(example)}`).toBe(true);
  });
});

describe("inside its range a figure is a number", () => {
  const sweeps = files
    .filter((file) => calculations.test(file.path))
    .flatMap(({ path, things }) =>
      things.map(sweepOf).flatMap((sweep) => (sweep === undefined ? [] : [[path, sweep.name, sweep] as const])),
    );

  it.each(sweeps)("in %s: %s", async (path, name, sweep) => {
    const calculate = (await importModule(path))[name] as (...values: number[]) => unknown;
    expect(runSweep(sweep, calculate).join("\n")).toBe("");
  });
});

function importModule(path: string): Promise<Record<string, unknown>> {
  return import(join(root, path));
}

/** Examples of a wrong shape are told by the block's own test. */
function readSafely(text: string) {
  try {
    return readExamples(text);
  } catch {
    return [];
  }
}
