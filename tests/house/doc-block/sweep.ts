import { readParameter, takeApart } from "./block.ts";
import type { ExportedThing } from "./exports.ts";
import { rangeEnds } from "./judge.ts";

/** A function of numbers that gives a number, with the values of each parameter to try: ends and middle of its range. */
export interface Sweep {
  readonly name: string;
  readonly values: readonly (readonly number[])[];
  readonly mayThrow: boolean;
}

/** The sweep that a block allows; undefined where a parameter is no number or its range stands in words. */
export function sweepOf(thing: ExportedThing): Sweep | undefined {
  if (thing.kind !== "function" || thing.returns !== "number" || thing.block === undefined) return undefined;
  if (thing.parameters.length === 0 || thing.parameters.some((parameter) => !parameter.isNumber)) return undefined;
  const { tags } = takeApart(thing.block);
  const told = tags.filter((each) => each.tag === "param").map((each) => readParameter(each.text)?.range);
  const values = told.map((range) => (range === undefined ? undefined : samplesOf(range)));
  if (values.length !== thing.parameters.length || values.includes(undefined)) return undefined;
  return {
    name: thing.name,
    values: values.filter((each) => each !== undefined),
    mayThrow: tags.some((each) => each.tag === "throws"),
  };
}

function samplesOf(range: string): number[] | undefined {
  const ends = rangeEnds(range);
  if (ends !== undefined) return [ends[0], (ends[0] + ends[1]) / 2, ends[1]];
  if (range === "any") return [-10, 0, 10];
  const [, word, number] = /^(at least|above) ([−-]?[\d.e-]+)$/.exec(range) ?? [];
  if (number === undefined) return undefined;
  const low = Number(number.replace("−", "-"));
  return word === "above" ? [low + 1e-6, low + 10] : [low, low + 10];
}

/** Calls the function at every combination; tells those that give no number, or throw though nothing is said of it. */
export function runSweep(sweep: Sweep, calculate: (...values: number[]) => unknown): string[] {
  const combinations = sweep.values.reduce<number[][]>(
    (begun, values) => begun.flatMap((start) => values.map((value) => [...start, value])),
    [[]],
  );
  return combinations.flatMap((values) => {
    const call = `${sweep.name}(${values.join(", ")})`;
    try {
      const result = calculate(...values);
      return typeof result === "number" && !Number.isNaN(result) ? [] : [`${call} gives ${result}`];
    } catch (error) {
      return sweep.mayThrow && error instanceof RangeError ? [] : [`${call} throws ${error}`];
    }
  });
}
