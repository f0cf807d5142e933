import { describe, expect, it } from "vitest";
import { agrees, evaluate, readExamples } from "./block.ts";
import { readExports } from "./exports.ts";
import { judgeFull, judgePlain } from "./judge.ts";
import { runSweep, sweepOf } from "./sweep.ts";

const keys = new Set(["definition", "some-handbook"]);

const sound = `
/**
 * Heat in a stream of air.
 *
 * @param flow kg/s, 0…100: dry-air flow
 * @param rise K, any: temperature rise
 * @param way choice: which way it is counted
 * @returns W: heat given to the air
 * @outside still answers
 * @throws RangeError when the flow is negative
 * @example heat(2, 10, "up") // 20120 ± 1
 * @source some-handbook eq. 3
 */
export function heat(flow: number, rise: number, way: "up" | "down"): number {
  if (flow < 0) throw new RangeError("flow");
  return 1006 * flow * rise * (way === "up" ? 1 : -1);
}`;

function judge(text: string): string {
  return readExports(text, "module.ts")
    .flatMap((thing) => judgeFull(thing, keys))
    .join("\n");
}

/** Each planted fault: what is changed in the sound block, and what the finding has to say. */
const faults: [name: string, from: string | RegExp, to: string, finding: string][] = [
  ["no block at all", /\/\*\*[\s\S]*?\*\//, "", "has no doc block"],
  ["no sentence", "Heat in a stream of air.", "", "without a sentence"],
  ["a parameter left out", / \* @param rise.*\n/, "", "3 parameters, 2 of them described"],
  ["parameters in another order", "heat(flow: number, rise", "heat(rise: number, flow", "parameter 1 is rise"],
  ["a number without a range", "kg/s, 0…100:", "kg/s:", "flow is a number without a range"],
  ["a number that is called a choice", "kg/s, 0…100:", "choice:", "flow is a number without a range"],
  ["a parameter without words", "any: temperature rise", "any", "is not of the shape"],
  ["a range that runs downwards", "0…100", "100…0", "does not run upwards"],
  ["nothing said about the outside", / \* @outside.*\n/, "", "no @outside"],
  ["no return", / \* @returns.*\n/, "", "0 @returns"],
  ["a return without unit", "W: heat given to the air", "heat given to the air", "@returns is not of the shape"],
  ["a throw that is not said", / \* @throws.*\n/, "", "no @throws"],
  ["no example", / \* @example.*\n/, "", "no @example"],
  ["an example without its result", " // 20120 ± 1", "", "an example needs"],
  ["an example with words for a result", "20120 ± 1", "about twenty", "no value to compare with"],
  ["an example with a tolerance of nothing", "± 1", "± 0", "no tolerance of a number"],
  ["no source", / \* @source.*\n/, "", "no @source"],
  ["an unknown source", "some-handbook", "other-handbook", "@source other-handbook is not in"],
];

describe("the doc-block check", () => {
  it("passes a sound block", () => {
    expect(judge(sound)).toBe("");
  });

  it.each(faults)("finds %s", (_name, from, to, finding) => {
    const planted = sound.replace(from, to);
    expect(planted).not.toBe(sound);
    expect(judge(planted)).toContain(finding);
  });

  it("reads functions kept in constants, and asks plain words of types and constants", () => {
    expect(judge("/** Twice. */ export const twice = (value: number): number => 2 * value;")).toContain("no @example");
    const things = readExports(
      "export type Flow = number;\nexport interface Air {}\nexport const pi = 3;",
      "module.ts",
    );
    expect(things.flatMap(judgePlain)).toEqual([
      "line 1, Flow: has no doc block",
      "line 2, Air: has no doc block",
      "line 3, pi: has no doc block",
    ]);
  });

  it("takes words above a group of constants, beside one, or at the head of the file", () => {
    const judgeConstants = (text: string) => readExports(text, "module.ts").flatMap(judgePlain);
    expect(judgeConstants("/** Heats. */\nexport const air = 1006;\nexport const vapour = 1860;")).toEqual([]);
    expect(judgeConstants("export const air = 1006; // J/kgK\n\nexport const vapour = 1860;\n")).toEqual([
      "line 3, vapour: has no doc block",
    ]);
    expect(judgeConstants("/** Heats. */\n\nexport const air = 1006;\n\nexport const vapour = 1860;")).toEqual([]);
    expect(judgeConstants("/** Heats. */\n\nexport type Heat = number;")).toEqual([]);
  });

  it("runs examples and refuses a wrong number", () => {
    const heat = (flow: number, rise: number) => 1006 * flow * rise;
    const examples = readExamples(
      "heat(2, 10) // 20120 ± 1\nheat(\n  1, 1) // 1006\nheat(1, 1) > 0 // true\nheat(1, 2) // 1.9e3 ± 5 %",
    );
    expect(examples.map(({ expression }) => evaluate(expression, { heat }))).toEqual([20120, 1006, true, 2012]);
    const [first, second, third, fourth] = examples;
    expect(agrees(20121, first!)).toBe(true);
    expect(agrees(20121.1, first!)).toBe(false);
    expect(agrees(Number.NaN, first!)).toBe(false);
    expect(agrees(1006.001, second!)).toBe(false);
    expect(agrees(1, third!)).toBe(false);
    expect(agrees(1806, fourth!)).toBe(true);
    expect(agrees(1804, fourth!)).toBe(false);
  });

  it("sweeps the ends and the middle of every range and refuses what is no number there", () => {
    const text = `
/**
 * Root.
 *
 * @param square m², -1…3: area
 * @param count number, above 0: how many
 * @returns m: side
 */
export function side(square: number, count: number): number {
  return Math.sqrt(square) * count;
}`;
    const [thing] = readExports(text, "module.ts");
    const sweep = sweepOf(thing!);
    expect(sweep?.values).toEqual([
      [-1, 1, 3],
      [1e-6, 10],
    ]);
    expect(runSweep(sweep!, (square = 0, count = 0) => Math.sqrt(square) * count)).toEqual([
      "side(-1, 0.000001) gives NaN",
      "side(-1, 10) gives NaN",
    ]);
    expect(runSweep(sweep!, () => 1)).toEqual([]);
    const refuse = () => {
      throw new RangeError("no");
    };
    expect(runSweep(sweep!, refuse)).toHaveLength(6);
    expect(runSweep({ ...sweep!, mayThrow: true }, refuse)).toEqual([]);
  });
});
