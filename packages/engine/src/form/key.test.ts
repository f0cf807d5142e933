import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fieldName, textKey } from "./key.ts";
import { nearestName } from "./nearest-name.ts";
import { itemPath, memberPath, pathSteps } from "./path.ts";

describe("names in a text", () => {
  it("are the words of the field's name", () => {
    expect(textKey("supplyAirflow")).toBe("supply airflow");
    expect(textKey("rows")).toBe("rows");
    expect(fieldName("outside air share")).toBe("outsideAirShare");
  });

  it("lead back to the field", () => {
    const word = fc.stringMatching(/^[a-z][a-z0-9]{0,8}$/);
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 4 }), (parts) => {
        const name = fieldName(parts.join(" "));
        expect(textKey(name)).toBe(parts.join(" "));
      }),
    );
  });
});

describe("paths", () => {
  it("are built and taken apart", () => {
    const path = memberPath(itemPath(memberPath(memberPath("", "unit"), "sections"), 3), "tubeDiameter");
    expect(path).toBe("unit.sections[3].tubeDiameter");
    expect(pathSteps(path)).toEqual(["unit", "sections", 3, "tube diameter"]);
    expect(pathSteps("")).toEqual([]);
    expect(pathSteps("a[0][1].b")).toEqual(["a", 0, 1, "b"]);
  });

  it.each(["a..b", ".a", "a.", "a[", "a[x]", "a]b", "a[1]b"])("are not %s", (path) => {
    expect(pathSteps(path)).toBeUndefined();
  });
});

describe("the nearest name", () => {
  const names = ["supply airflow", "outside air share", "rows", "steam coil", "spray gap"];
  it.each([
    ["suply airflow", "supply airflow"],
    ["supplyAirflow", "supply airflow"],
    ["Supply_Airflow", "supply airflow"],
    ["rwos", "rows"],
    ["row", "rows"],
    ["steam-coil", "steam coil"],
    ["outside air shares", "outside air share"],
  ])("to %s is %s", (typed, name) => {
    expect(nearestName(typed, names)).toBe(name);
  });

  it("is none where nothing is near", () => {
    expect(nearestName("fan wheel", names)).toBeUndefined();
    expect(nearestName("", names)).toBeUndefined();
    expect(nearestName("x".repeat(10_000), names)).toBeUndefined();
  });
});
