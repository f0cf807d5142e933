import { describe, expect, it } from "vitest";
import type { Fields } from "#form/field";
import { access } from "./access/kind.ts";
import type { SectionKind, SectionRating } from "./contract.ts";
import type { DisplayItem } from "./display.ts";
import { filterBank } from "./filter-bank/kind.ts";
import { intakeHood } from "./intake-hood/kind.ts";
import { louver } from "./louver/kind.ts";
import { mixingBox } from "./mixing-box/kind.ts";
import { moistureEliminator } from "./moisture-eliminator/kind.ts";
import { sampleFrame } from "./sample.test-data.ts";
import { valuesOfText } from "./shipped.test-data.ts";
import { shutOffDamper } from "./shut-off-damper/kind.ts";
import { special } from "./special/kind.ts";
import { sprayGap } from "./spray-gap/kind.ts";
import { steamHumidifier } from "./steam-humidifier/kind.ts";

function drawn<F extends Fields, Design, Rating extends SectionRating>(
  kind: SectionKind<string, F, Design, Rating>,
  text: string,
) {
  const design = kind.prepare(valuesOfText(kind.fields, text), sampleFrame);
  return { layout: kind.layout(design, sampleFrame), items: kind.picture(design, sampleFrame, "here") };
}

const damper = "damper: typical airfoil opposed class 1A\n";
const pictures = [
  ["intake hood", drawn(intakeHood, "projection: 36 in")],
  ["open hood", drawn(intakeHood, "opening: vertical\nthroat height: 1.6 m")],
  ["louver", drawn(louver, "louver: typical drainable 6 in\nscreen: typical bird screen 1/2 in")],
  [
    "mixing box",
    drawn(
      mixingBox,
      `outside air:\n  ${damper}  width: 2 m\n  height: 1.8 m\nreturn air:\n  ${damper}  width: 1.5 m\n  height: 0.6 m\n`,
    ),
  ],
  [
    "mixing box with side return",
    drawn(
      mixingBox,
      `outside air:\n  ${damper}  width: 2 m\n  height: 1.8 m\nreturn air:\n  ${damper}  width: 0.9 m\n  height: 1 m\n  place: side\n`,
    ),
  ],
  ["shut-off damper", drawn(shutOffDamper, `${damper}width: 2 m\nheight: 2 m\nblade angle: 0 deg`)],
  ["flat filters", drawn(filterBank, "medium: typical MERV 14 rigid 12 in\nprefilter: typical MERV 8 pleated 2 in")],
  ["angled filters", drawn(filterBank, "medium: typical MERV 8 pleated 4 in\nrack: angled")],
  ["spray gap", drawn(sprayGap, "length: 12 in")],
  ["access", drawn(access, "length: 30 in\nhinges: downstream")],
  ["moisture eliminator", drawn(moistureEliminator, "eliminator: typical two-bend 6 in")],
  ["steam humidifier", drawn(steamHumidifier, "dispersion: typical tube panel 6 in")],
  [
    "special",
    drawn(
      special,
      "what: attenuator\nlength: 5 ft\nmass: 1 lb\nsource: a letter\ncurve:\n  - airflow: 8 m³/s\n    pressure loss: 20 Pa",
    ),
  ],
] as const;

describe.each(pictures)("picture of %s", (_, { layout, items }) => {
  it("has items, each under a key of its own that names section and part", () => {
    expect(items.length).toBeGreaterThan(0);
    expect(new Set(items.map((item) => item.key)).size).toBe(items.length);
    for (const item of items) {
      expect(item.reference.section).toBe("here");
      expect(item.key).toMatch(/^here\//);
    }
  });

  it("lies within the section, but for hinges, drains and the roof of a hood", () => {
    const spare = 120;
    for (const [x, y] of items.flatMap(corners)) {
      expect(x).toBeGreaterThan(-spare);
      expect(x).toBeLessThan((layout.length + layout.outside) * 1000 + spare);
      expect(y).toBeGreaterThan(-spare);
      expect(y).toBeLessThan(sampleFrame.height * 1000 + spare);
    }
  });
});

describe("pictures", () => {
  it("turn the blades with their angle: closed blades stand across the flow, open ones along it", () => {
    const spread = (angle: number, across: 0 | 1) => {
      const { items } = drawn(shutOffDamper, `${damper}width: 2 m\nheight: 2 m\nblade angle: ${angle} deg`);
      const blade = items.find((item) => item.ink === "choice");
      const values = corners(blade!).map((point) => point[across]);
      return Math.max(...values) - Math.min(...values);
    };
    expect(spread(0, 1)).toBeGreaterThan(5 * spread(0, 0));
    expect(spread(90, 0)).toBeGreaterThan(5 * spread(90, 1));
  });

  it("keep their keys when a measure changes", () => {
    const keys = (text: string) =>
      drawn(intakeHood, text)
        .items.slice(0, 3)
        .map((item) => item.key);
    expect(keys("projection: 36 in")).toEqual(keys("projection: 40 in"));
  });
});

function corners(item: DisplayItem): [number, number][] {
  if (item.shape === "text") return [[item.x, item.y]];
  if (item.shape === "circle")
    return [
      [item.x - item.radius, item.y - item.radius],
      [item.x + item.radius, item.y + item.radius],
    ];
  return Array.from({ length: item.points.length / 2 }, (_, index) => [
    item.points[2 * index]!,
    item.points[2 * index + 1]!,
  ]);
}
