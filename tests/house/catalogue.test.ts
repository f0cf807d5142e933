import { describe, expect, it } from "vitest";
import { componentFamilies } from "../../packages/engine/src/catalogue/families.ts";
import { readCatalogue } from "../../packages/engine/src/catalogue/read-catalogue.ts";
import { bibliographyKeys, filesBelow, readText } from "./project.ts";

const files = filesBelow("catalogue")
  .filter((path) => path.endsWith(".yaml"))
  .map((path) => ({ path, text: readText(path) }));
const catalogue = readCatalogue(files);

describe("the shipped catalogue", () => {
  it("has files, and reads without a problem", () => {
    expect(files.length).toBeGreaterThan(0);
    expect(catalogue.problems).toEqual([]);
  });

  it.each(componentFamilies.map((family) => family.name))("holds records of the family %s", (family) => {
    expect(catalogue.names(family).length).toBeGreaterThan(0);
  });

  const records = componentFamilies.flatMap(({ name: family }) =>
    catalogue.names(family).map((name) => [family, name] as const),
  );

  it.each(records)(
    "%s, %s: is marked typical, says where its range lies and names a source that is known",
    (family, name) => {
      const { head } = catalogue.component(family, name) as {
        head: { typical: boolean; source: string; note: string };
      };
      expect(head.typical).toBe(true);
      expect(head.note).not.toBe("");
      expect(bibliographyKeys.has(head.source.split(/[\s,;]/)[0] ?? ""), `source ${head.source}`).toBe(true);
      expect(name).toMatch(/^typical /);
    },
  );
});
