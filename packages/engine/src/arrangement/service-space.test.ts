import { describe, expect, it } from "vitest";
import { exampleJob, exampleNames, handWorkedText, jobOf } from "./weigh.test-data.ts";
import { arrangeRunning, weighUnit } from "./weigh.ts";

const inch = 25.4;

function arranged(text: string) {
  const { unit, duty, conditions } = jobOf(text);
  return { unit, arrangement: arrangeRunning(unit, duty, conditions) };
}

describe("room that service asks for", () => {
  it("is deep before the disconnect as the published table says: 42 in at 460 V, 36 in at 208 V, a grounded wall opposite", () => {
    const depth = (text: string) =>
      arranged(text).arrangement.spaces.find(({ use }) => use === "electrical working space")!.size;
    expect(depth(handWorkedText).y).toBeCloseTo(42 * inch, 6);
    expect(depth(handWorkedText).x).toBeCloseTo(30 * inch, 6);
    expect(depth(handWorkedText).z).toBeGreaterThanOrEqual(78 * inch - 1e-6);
    expect(depth(handWorkedText.replace("460 V", "208 V")).y).toBeCloseTo(36 * inch, 6);
  });

  it("takes a coil with tube sheets and headers out at the hand of its pipes, longer than its fins", () => {
    for (const hand of ["right", "left"] as const) {
      const text = handWorkedText.replace("rail height", `connection hand: ${hand}, rail height`);
      const { unit, arrangement } = arranged(text);
      const pull = arrangement.spaces.find(({ use }) => use === "coil pull")!;
      expect(pull.side).toBe(hand);
      // Fins 51 in between walls 60 in apart, both tube sheets 1.5 in, headers, and a foot for the hands.
      expect(pull.size.y).toBeGreaterThan((51 + 3 + 12) * inch);
      expect(pull.size.y).toBeLessThan((60 + 12) * inch);
      const outside =
        hand === "right" ? -1000 * unit.casing.panelThickness : 1000 * (unit.frame.width + unit.casing.panelThickness);
      expect(hand === "right" ? pull.place.y + pull.size.y : pull.place.y).toBeCloseTo(outside, 6);
    }
  });

  it("opens doors outwards before the fan and inwards behind it, and says which are pushed open", () => {
    const { arrangement } = arranged(handWorkedText);
    const opens = Object.fromEntries(arrangement.swings.map(({ part, opens: way }) => [part, way]));
    expect(opens["intake/door"]).toBe("outward");
    expect(opens["fan/door behind"]).toBe("inward");
    const wrong = handWorkedText.replace("door height: 54 in }", "door height: 54 in, swing: inward }");
    const { unit, duty, conditions } = jobOf(wrong.replace("name: intake", "name: entrance"));
    const notices = weighUnit(unit, duty, conditions)
      .arrangement.notices.map(({ what }) => what)
      .join();
    expect(notices).not.toMatch(/undefined|NaN/);
  });
});

describe.each(exampleNames)("the example %s in service", (name) => {
  const { unit, duty, conditions } = exampleJob(name);
  const { arrangement } = weighUnit(unit, duty, conditions);

  it("has a door swing for every door, none that strikes, and windows that show every wheel", () => {
    expect(arrangement.swings.length).toBeGreaterThan(0);
    expect(arrangement.swings.filter(({ strikes }) => strikes !== undefined)).toEqual([]);
    expect(arrangement.sights.filter(({ blockedBy }) => blockedBy !== undefined)).toEqual([]);
  });
});
