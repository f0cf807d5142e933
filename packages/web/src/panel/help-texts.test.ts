import { sectionKinds } from "@oncethrough/engine/section/kinds";
import { describe, expect, it } from "vitest";
import { methodOfKind, topicOfKind } from "#state/help-topic";
import { helpPage, topicsUnder } from "./help-texts.ts";

describe("help", () => {
  it.each(["duty", "cabinet", ...sectionKinds.map(({ name }) => name)])(
    "has a page for %s: what matters, which mistakes happen, how it is calculated",
    (kind) => {
      const page = helpPage(topicOfKind(kind));
      expect(page?.title.toLowerCase()).toBe(kind);
      for (const head of ["What matters", "Mistakes that happen", "How it is calculated", "How it is judged"]) {
        expect(page?.html).toContain(`<h2>${head}</h2>`);
      }
      expect(page?.html).toContain('href="#rules/');
    },
  );

  it("leads only to pages that there are", () => {
    for (const { topic } of [...topicsUnder("sections"), ...topicsUnder("methods"), ...topicsUnder("rules")]) {
      const html = helpPage(topic)?.html ?? "";
      for (const [, aim] of html.matchAll(/href="([^"]+)"/g)) {
        expect(aim, topic).toMatch(/^#(sections|methods|rules|sources)\//);
        expect(helpPage(aim!.slice(1) as typeof topic), `${topic} to ${aim}`).toBeDefined();
      }
    }
  });

  it.each(sectionKinds.map(({ name }) => name).filter((name) => name !== "special"))(
    "leads from a figure of %s to its method",
    (kind) => {
      const topic = methodOfKind(kind);
      expect(topic).toBeDefined();
      expect(helpPage(topic!)?.html).toContain("<h2>");
    },
  );

  it("leads from a limit to the publication that it comes from, and from there back to all that rests on it", () => {
    expect(helpPage("rules/siting")?.html).toContain('<a href="#sources/ufc-4-171-05">ufc-4-171-05</a>');
    const page = helpPage("sources/ufc-4-171-05");
    expect(page?.html).toContain('<a href="#rules/siting">Siting</a>');
    expect(page?.title).not.toBe("");
    expect(helpPage("methods/moist-air")?.html).toContain('href="#sources/');
    expect(helpPage("sources/common-practice")).toBeUndefined();
  });

  it("does not answer what nobody wrote", () => {
    expect(helpPage("sections/time-machine")).toBeUndefined();
  });
});
