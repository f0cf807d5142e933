import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { octaveBands } from "@oncethrough/engine/standard/fan-sound";
import { uncountedFlowNoise } from "@oncethrough/engine/standard/sound-path";
import { uncountedAddition } from "@oncethrough/engine/unit/sound";
import { glued, type TextInk, wrapped } from "../ink.ts";
import { type Column, printTable } from "../table.ts";
import type { OutletOutput, SoundOutput, StepOutput } from "./sound-output.ts";

/** How the tables are printed. */
interface Style {
  readonly ink: TextInk;
  readonly columns: number;
  readonly system: UnitSystem;
}

/** Where sound leaves the unit, at every condition in a line; the way it takes through the sections at one. */
export function printSound(output: SoundOutput, style: Style): string {
  const { tag, condition, conditions, fan, caution } = output;
  const { ink, columns } = style;
  const blades = `blades pass at ${fan.tone?.toFixed(0) ?? "–"} Hz; ${fan.certainty} [${fan.source}]`;
  return [
    ink.strong(`${tag} · sound power, dB re 1 pW`),
    printConditions(conditions, style),
    `${ink.quiet(`at ${condition}`)}\n${printOutlets(output.outlets, ink)}\n${ink.quiet(wrapped(blades, columns))}`,
    ...printLimits(output.outlets, ink),
    printSteps(output, ink),
    ...printUncounted(output, style),
    ink.quiet(wrapped(caution, columns)),
  ].join("\n\n");
}

/** What is not among the sums, and what the trade holds of it. */
function printUncounted({ uncounted }: SoundOutput, { columns, system }: Style): readonly string[] {
  if (uncounted.length === 0) return [];
  const say = (value: number) => glued(printQuantity(value, "velocity", system));
  const { velocity, below, source } = uncountedFlowNoise;
  const named = uncounted.map((each) => `${each.section} at ${say(each.velocity)}`).join(", ");
  const beyond = uncounted.filter(({ isBounded }) => !isBounded).map(({ section }) => section);
  const words = [
    `not counted, as no open method was found: flow noise of ${named}`,
    `the trade holds that up to ${say(velocity)} it stays ${below} dB below the fan in every band: at most ${uncountedAddition.toFixed(1)} dB more [${source}, from memory]`,
    ...(beyond.length === 0 ? [] : [`${beyond.join(", ")}: faster than that holds for`]),
  ];
  return [wrapped(words.join("; "), columns)];
}

function printConditions(conditions: SoundOutput["conditions"], { ink }: Style): string {
  const names = Object.keys(conditions[0]?.weighted ?? {}) as (keyof SoundOutput["conditions"][number]["weighted"])[];
  const columns: Column[] = [
    { name: "condition", align: "left" },
    ...names.map((name): Column => ({ name: name.replace(" ", "\n"), unit: "dB(A)", align: "right" })),
  ];
  const rows = conditions.map(({ condition, weighted }) => [
    condition,
    ...names.map((name) => weighted[name]?.toFixed(0) ?? "–"),
  ]);
  return printTable(columns, rows, ink);
}

const bandColumns = octaveBands.map((band): Column => ({ name: String(band), unit: "Hz", align: "right" }));

function printOutlets(outlets: readonly OutletOutput[], ink: TextInk): string {
  const columns: Column[] = [
    { name: "leaves by", align: "left" },
    ...bandColumns,
    { name: "A", unit: "dB(A)", align: "right" },
    { name: "±", unit: "dB", align: "right" },
  ];
  const rows = outlets.map(({ name, levels, weighted, uncertainty }) => [
    name,
    ...levels.map((level) => level.toFixed(0)),
    ink.strong(weighted.toFixed(0)),
    uncertainty.toFixed(0),
  ]);
  return printTable(columns, rows, ink);
}

function printLimits(outlets: readonly OutletOutput[], ink: TextInk): readonly string[] {
  const lines = outlets.flatMap(({ name, weighted, uncertainty, limit, outcome }) => {
    if (limit === undefined || outcome === undefined) return [];
    const figures = `${weighted.toFixed(0)} ±${uncertainty.toFixed(0)} against ${limit.toFixed(0)} dB(A)`;
    const words = outcome === "exceeded" ? ink.fail(outcome) : outcome;
    return [`limit at the ${name}: ${figures}: ${words}`];
  });
  return lines.length === 0 ? [] : [lines.join("\n")];
}

/** What each section takes off on the way of the sound, and how loud its walls are; the fan between both ways. */
function printSteps({ steps, endReflection }: SoundOutput, ink: TextInk): string {
  const columns: Column[] = [{ name: "on its way, dB", align: "left" }, ...bandColumns, { name: "", align: "left" }];
  const figures = (levels: readonly number[]) => levels.map((level) => level.toFixed(0));
  const rows = [
    ["end reflection", ...figures(endReflection), "vdi-2081"],
    ...steps.flatMap((step) => stepRows(step, figures)),
  ];
  return printTable(columns, rows, ink);
}

function stepRows(step: StepOutput, figures: (levels: readonly number[]) => string[]): readonly string[][] {
  const { section, direction, inside, loss, made, certainty } = step;
  if (direction === "at the fan") return [[`inside ${section}`, ...figures(inside), ""]];
  const rows = [[`${section} takes`, ...figures(loss), certainty]];
  if (made === undefined) return rows;
  const sent = direction === "against the air" ? made.upstream : made.downstream;
  return [...rows, [`${section} makes`, ...figures(sent), `±${made.uncertainty} dB, ${made.source.split(" ")[0]}`]];
}
