import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { type Arrangement, arrangeUnit } from "#arrangement/arrange";
import { runUnit, solvedInTurn } from "#arrangement/running";
import { arrangementTask } from "#arrangement/task";
import { readCatalogue } from "#catalogue/read-catalogue";
import { elevation, type SectionPictures } from "#drawing/elevation";
import { spliceEdit } from "#form/splice";
import type { Job } from "./job.ts";
import { readJob } from "./read-job.ts";

const root = fileURLToPath(new URL("../../../..", import.meta.url));
const folder = join(root, "catalogue");
const catalogue = readCatalogue(
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((path) => ({ path, text: readFileSync(join(folder, path), "utf8") })),
);
const first = readFileSync(join(root, "examples", "marine-biology-wing.yaml"), "utf8");

const machineOf = ({ unit, duty, conditions }: Job, before?: Arrangement) =>
  arrangeUnit(unit, arrangementTask(duty), runUnit(unit, solvedInTurn(unit, conditions)), before);

/** Everything but functions, which two arrangements never share. */
const plain = (value: unknown) => JSON.parse(JSON.stringify(value)) as unknown;

describe("a job read anew after an edit", () => {
  const edits = [
    ["unit.sections[6].rows", "10"],
    ["unit.sections[2].length", "40 in"],
    ["unit.casing.width", "130 in"],
    ["unit.casing.panelThickness", "3 in"],
  ] as const;

  it.each(edits)("%s %s: is, with all that follows, what it is when read alone", (path, value) => {
    const before = readJob(first, catalogue).job!;
    const pictures: SectionPictures = { casing: undefined, of: new WeakMap() };
    const arranged = machineOf(before);
    elevation(before.unit, arranged, { pictures });
    const splice = spliceEdit(first, path, value);
    if (!splice.ok) throw new Error(splice.problem);
    const after = readJob(splice.text, catalogue, before).job!;
    const alone = readJob(splice.text, catalogue).job!;
    expect(after).toEqual(alone);
    const [machine, machineAlone] = [machineOf(after, arranged), machineOf(alone)];
    expect(plain(machine)).toEqual(plain(machineAlone));
    const drawn = elevation(after.unit, machine, { pictures });
    expect(drawn).toEqual(elevation(alone.unit, machineAlone));
  });

  it("takes over the sections that did not change, and none where the cabinet did", () => {
    const before = readJob(first, catalogue).job!;
    const same = (text: string) => {
      const { sections } = readJob(text, catalogue, before).job!.base;
      return sections.filter((section) => before.base.sections.includes(section)).length;
    };
    const edited = (path: string, value: string) => {
      const splice = spliceEdit(first, path, value);
      if (!splice.ok) throw new Error(splice.problem);
      return splice.text;
    };
    expect(same(first)).toBe(before.base.sections.length);
    expect(same(edited("duty.tag", "other"))).toBe(before.base.sections.length);
    expect(same(edited("unit.casing.width", "130 in"))).toBe(0);
  });
});
