import { describe, expect, it } from "vitest";
import { valuesOfText } from "../shipped.test-data.ts";
import { type FanDesign, prepareFan } from "./design.ts";
import { fanFields } from "./fields.ts";

const frame = { width: 3, height: 2.6, hand: "right" } as const;

function designOf(text: string): FanDesign {
  return prepareFan(valuesOfText(fanFields, text), frame);
}

describe("a fan that cannot be built", () => {
  it.each([
    ["diameter: 80 in\nmotor power: 25 hp", "diameter", /no size/],
    ["diameter: 60 in\nmotor power: 25 hp", "diameter", /do not fit/],
    ["diameter: 33 in\nmotor power: 25 hp\nclass: VII", "class", /no class/],
    ["diameter: 33 in\nmotor power: 25 hp\ndrive: direct", "drive", /inlets/],
    ["diameter: 33 in\nmotor power: 25 hp\nfixed speed: 900 rpm", "fixedSpeed", /no fixed speed/],
    ["wheel: typical airfoil plenum wheel\ndiameter: 40.25 in\ncount: 6\nmotor power: 10 hp", "diameter", /do not fit/],
    ["wheel: typical airfoil plenum wheel\ndiameter: 20 in\ncount: 6\nrows: 4\nmotor power: 10 hp", "rows", /evenly/],
  ])("is refused: %s", (text, field, message) => {
    let caught: unknown;
    try {
      designOf(text);
    } catch (error) {
      caught = error;
    }
    expect(caught).toMatchObject({ field, message: expect.stringMatching(message) });
  });

  it("is told a diameter that does fit", () => {
    try {
      designOf("diameter: 60 in\nmotor power: 25 hp");
    } catch (error) {
      const allowed = /at most ([\d.]+) in/.exec((error as { allowed: string }).allowed)![1]!;
      expect(() => designOf(`diameter: ${Number(allowed) - 0.1} in\nmotor power: 25 hp`)).not.toThrow();
      return;
    }
    throw new Error("a 60 in fan fits");
  });
});
