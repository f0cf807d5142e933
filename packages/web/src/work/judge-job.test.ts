import { describe, expect, it } from "vitest";
import { countStandings, type Judgement, sectionFlags, standingOf, toMend } from "#state/finding-lines";
import { fixStep } from "#state/fix-words";
import { catalogue, catalogueFiles, profileFiles, sampleBench, shopFiles } from "#state/sample-job.test-data";
import * as transition from "#state/transitions";
import { ruleWaived, waiverTaken } from "#state/waiving";
import { BookShelf } from "./book-shelf.ts";
import { perform } from "./perform.ts";
import type { FoundFix, Task } from "./task.ts";

const shelf = new BookShelf({ records: catalogueFiles, profiles: profileFiles, shop: shopFiles });

function done(task: Task): { readonly result: unknown; readonly shares: readonly number[] } {
  const steps = perform(task, shelf);
  const shares: number[] = [];
  let step = steps.next();
  for (; step.done !== true; step = steps.next()) shares.push(step.value);
  return { result: step.value, shares };
}

const judged = (text: string) => done({ kind: "findings", text }).result as Judgement;

describe("a job judged for the page", () => {
  const bench = sampleBench();
  const { lines, profile, profiles } = judged(bench.text);

  it("by the profile that it names, every finding with its place, limit and source", () => {
    expect(profile).toBe("common practice");
    expect(profiles).toContain("strict once-through");
    expect(lines.length).toBeGreaterThan(20);
    const sections = bench.sound!.job.unit.sections.map(({ name }) => name);
    for (const line of lines) {
      expect(line.index < 0 ? "unit" : sections[line.index]).toBe(line.section);
      expect(line.source).not.toBe("");
      if (line.outcome !== "cannot tell") expect(Number.isFinite(line.margin), line.key).toBe(true);
    }
    expect(structuredClone(lines)).toEqual(lines);
  });

  it("with a smallest fix, found by steps that never go back, which as an edit mends the finding; undo gives the text back", () => {
    let mended = 0;
    for (const line of toMend(lines)) {
      const task = { kind: "smallest fix", text: bench.text, section: line.section, rule: line.rule } as const;
      const { result, shares } = done(task);
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
      expect(shares.at(-1)).toBeLessThanOrEqual(1);
      const { fix } = result as FoundFix;
      if (fix === undefined) continue;
      const { step, changes } = fixStep(line, fix);
      const after = transition.fieldsEdited(bench, step, changes, catalogue);
      const again = judged(after.text).lines.find(({ key }) => key === line.key);
      expect(again === undefined || again.outcome === "pass", line.key).toBe(true);
      expect(transition.stepBack(after, catalogue).text).toBe(bench.text);
      mended += 1;
    }
    expect(mended).toBeGreaterThan(0);
  });

  it("waived by name and reason stands as let go and raises no flag; taken back it stands as before", () => {
    const line =
      lines.find((each) => standingOf(each) === "fails") ?? lines.find((each) => standingOf(each) === "advice")!;
    const waiver = {
      rule: line.rule,
      section: undefined,
      by: "the owner's engineer: A. B.",
      reason: "# it is 'known'",
    };
    const waived = ruleWaived(bench, waiver, catalogue);
    const after = judged(waived.text).lines.find(({ key }) => key === line.key)!;
    expect(standingOf(after)).toBe("let go");
    expect(after.waiver).toEqual({ by: waiver.by, reason: waiver.reason });
    expect(sectionFlags(judged(waived.text).lines).flatMap((flag) => flag.lines.map(({ key }) => key))).not.toContain(
      line.key,
    );
    const back = waiverTaken(waived, after, catalogue);
    expect(standingOf(judged(back.text).lines.find(({ key }) => key === line.key)!)).toBe(standingOf(line));
    expect(countStandings(judged(back.text).lines)).toEqual(countStandings(lines));
    expect(transition.stepBack(transition.stepBack(back, catalogue), catalogue).text).toBe(bench.text);
  });
});
