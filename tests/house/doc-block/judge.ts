import { type DocBlock, readExamples, readParameter, readReturn, takeApart } from "./block.ts";
import type { ExportedThing } from "./exports.ts";

/** Unit words of parameters that are no numbers; they need no range. */
const words = new Set(["text", "choice", "record", "flag", "function", "list", "number", "type"]);

/** What is wrong with the plain block of an exported thing: it has to be there and say something; constants may share one. */
export function judgePlain(thing: ExportedThing): string[] {
  if (thing.kind === "constant" && thing.isToldByGroup) return [];
  if (thing.block === undefined) return [say(thing, "has no doc block")];
  return takeApart(thing.block).words === "" ? [say(thing, "has a doc block without a sentence")] : [];
}

/** What is wrong with the full block of an exported calculation. Types and constants need a plain one. */
export function judgeFull(thing: ExportedThing, bibliography: ReadonlySet<string>): string[] {
  const plain = judgePlain(thing);
  if (plain.length > 0 || thing.block === undefined || thing.kind !== "function") return plain;
  const block = takeApart(thing.block);
  return [
    ...judgeParameters(thing, block),
    ...judgeResult(thing, block),
    ...judgeExamples(block),
    ...judgeSources(block, bibliography),
  ].map((finding) => say(thing, finding));
}

function say(thing: ExportedThing, finding: string): string {
  return `line ${thing.line}, ${thing.name}: ${finding}`;
}

function judgeParameters(thing: ExportedThing, block: DocBlock): string[] {
  const texts = block.tags.filter((each) => each.tag === "param").map((each) => each.text);
  if (texts.length !== thing.parameters.length)
    return [`${thing.parameters.length} parameters, ${texts.length} of them described`];
  let bounded = false;
  const findings = thing.parameters.flatMap((parameter, place) => {
    const told = readParameter(texts[place] ?? "");
    if (told === undefined) return [`@param ${texts[place]} is not of the shape "name unit, range: words"`];
    if (parameter.name !== undefined && parameter.name !== told.name)
      return [`parameter ${place + 1} is ${parameter.name}, described is ${told.name}`];
    if (told.range !== undefined && told.range !== "any") bounded = true;
    if (told.range !== undefined) return judgeRange(told.name, told.range);
    return words.has(told.unit) && !parameter.isNumber ? [] : [`${told.name} is a number without a range`];
  });
  if (bounded && !block.tags.some((each) => each.tag === "outside" && each.text !== ""))
    findings.push("has a range, but no @outside that says what happens beyond it");
  return findings;
}

/** A range written with an ellipsis has to run upwards. */
function judgeRange(name: string, range: string): string[] {
  const ends = rangeEnds(range);
  return ends !== undefined && !(ends[0] < ends[1]) ? [`${name}: the range ${range} does not run upwards`] : [];
}

/** Both ends of `-60…90`; undefined for a range in words. */
export function rangeEnds(range: string): [number, number] | undefined {
  const [, low, high] = /^([−-]?[\d.e_-]+)\s*…\s*([−-]?[\d.e_-]+)$/.exec(range) ?? [];
  if (low === undefined || high === undefined) return undefined;
  const ends = [low, high].map((end) => Number(end.replace("−", "-").replaceAll("_", "")));
  return [ends[0] ?? Number.NaN, ends[1] ?? Number.NaN];
}

function judgeResult(thing: ExportedThing, block: DocBlock): string[] {
  const findings: string[] = [];
  const told = block.tags.filter((each) => each.tag === "returns");
  if (thing.returns !== "nothing") {
    if (told.length !== 1) findings.push(`${told.length} @returns`);
    else if (readReturn(told[0]?.text ?? "") === undefined) findings.push('@returns is not of the shape "unit: words"');
  }
  if (thing.throws && !block.tags.some((each) => each.tag === "throws")) findings.push("throws, but has no @throws");
  return findings;
}

function judgeExamples(block: DocBlock): string[] {
  const texts = block.tags.filter((each) => each.tag === "example").map((each) => each.text);
  if (texts.length === 0) return ["no @example"];
  return texts.flatMap((text) => {
    try {
      readExamples(text);
      return [];
    } catch (error) {
      return [(error as Error).message];
    }
  });
}

function judgeSources(block: DocBlock, bibliography: ReadonlySet<string>): string[] {
  const texts = block.tags.filter((each) => each.tag === "source").map((each) => each.text);
  if (texts.length === 0) return ["no @source"];
  return texts.flatMap((text) => {
    const key = text.split(/[\s,;]/)[0] ?? "";
    return bibliography.has(key) ? [] : [`@source ${key} is not in reference/bibliography.json`];
  });
}
