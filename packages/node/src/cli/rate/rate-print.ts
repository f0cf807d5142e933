import type { QuantityKind, UnitSystem } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber, printQuantity, toDisplay } from "@oncethrough/engine/quantity/print";
import type { Unit, UnitSection } from "@oncethrough/engine/unit/unit";
import { printDeclared } from "../declared-print.ts";
import { figureText } from "../figure-text.ts";
import { glued, separator, type TextInk, wrapped } from "../ink.ts";
import { type Column, printTable } from "../table.ts";
import type { ConditionOutput, SectionOutput } from "./rate-output.ts";

/** How figures are printed: in which system, with which inks, to which width. */
export interface Style {
  readonly system: UnitSystem;
  readonly ink: TextInk;
  readonly columns: number;
  /** All figures of every section, and not the first ones alone. */
  readonly allFigures?: boolean;
}

/** Whole numbers are enough where many conditions stand side by side. */
function whole(value: number, quantity: "power" | "standardAirflow", system: UnitSystem): string {
  const reading = toDisplay(value, quantity, system);
  if (Math.abs(reading) < 100 && system === "si") return printNumber(value, quantity, system);
  return Math.round(reading).toLocaleString("en-US");
}

/** A line for each condition, under a heading for each outdoor state. */
export function printSummary(conditions: readonly ConditionOutput[], style: Style): string {
  const { system, ink } = style;
  const columns: Column[] = [
    { name: "condition", align: "left" },
    { name: "airflow", unit: displayUnit("standardAirflow", system).replace("standard ", ""), align: "right" },
    { name: "outside", unit: "%", align: "right" },
    { name: "supply\nair", unit: displayUnit("temperature", system), align: "right" },
    { name: "dew\npoint", unit: displayUnit("temperature", system), align: "right" },
    { name: "fan\nspeed", unit: "rpm", align: "right" },
    { name: "fan\npower", unit: "kW", align: "right" },
    { name: "cool", unit: displayUnit("power", system), align: "right" },
    { name: "heat", unit: displayUnit("power", system), align: "right" },
    { name: "not\nmet", align: "right" },
  ];
  const rows: string[][] = [];
  let outdoors = "";
  for (const condition of conditions) {
    const heading = outdoorWords(condition, system);
    if (heading !== outdoors) rows.push([ink.quiet(heading)]);
    outdoors = heading;
    rows.push(summaryRow(condition, style));
  }
  return withHeadings(
    printTable(
      columns,
      rows.filter((row) => row.length > 1),
      ink,
    ),
    rows,
  );
}

function outdoorWords({ outdoors }: ConditionOutput, system: UnitSystem): string {
  const print = (value: number) => printQuantity(value, "temperature", system);
  return `outdoors ${print(outdoors.dryBulb)} dry bulb, ${print(outdoors.wetBulb)} wet bulb, ${print(outdoors.dewPoint)} dew point`;
}

/** Puts the one-cell rows back between the lines of the table, over its whole width. */
function withHeadings(table: string, rows: readonly (readonly string[])[]): string {
  const lines = table.split("\n");
  const body = lines.slice(lines.length - rows.filter((row) => row.length > 1).length);
  const head = lines.slice(0, lines.length - body.length);
  return [...head, ...rows.map((row) => (row.length === 1 ? (row[0] ?? "") : (body.shift() ?? "")))].join("\n");
}

function summaryRow(condition: ConditionOutput, { system, ink }: Style): string[] {
  const { key, solved, supply, fan, cooling, heating, shortfalls } = condition;
  if (!solved) return [`  ${key}`, ...Array<string>(8).fill("–"), ink.fail("not solved")];
  const stopped = condition.flow === "fan stopped";
  return [
    `  ${key}`,
    whole(supply.standardAirflow, "standardAirflow", system),
    printNumber(supply.outsideAirShare, "share", system),
    ink.strong(printNumber(supply.dryBulb, "temperature", system)),
    printNumber(supply.dewPoint, "temperature", system),
    stopped ? "–" : printNumber(fan.speed, "rotationalSpeed", system),
    stopped ? "–" : printNumber(fan.electricPower, "electricPower", system),
    cooling < 1 ? "–" : whole(cooling, "power", system),
    heating < 1 ? "–" : whole(heating, "power", system),
    shortfalls.length === 0 ? "" : ink.fail(String(shortfalls.length)),
  ];
}

/** One condition in full: what it is, stations, sections, fan point, what is not met, notes. */
export function printCondition(condition: ConditionOutput, unit: Unit, style: Style): string {
  const parts = [
    printHeader(condition, style),
    printStations(condition, style),
    printSections(condition, unit, style),
    printFanPoint(condition, unit, style),
    printShortfalls(condition, style),
    ...(condition.declared ?? []).map((each) => `${style.ink.quiet(each.section)}\n${printDeclared(each, style)}`),
    printNotes(condition, style),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function printHeader(condition: ConditionOutput, { system, ink, columns }: Style): string {
  const { supply, barometricPressure } = condition;
  const say = (value: number, quantity: QuantityKind) => glued(printQuantity(value, quantity, system));
  const figures = [
    `supply ${say(supply.standardAirflow, "standardAirflow")} (${say(supply.actualAirflow, "actualAirflow")})`,
    `${say(supply.outsideAirShare, "share")} outside air`,
    `barometer ${say(barometricPressure, "absolutePressure")}`,
  ];
  const state = condition.solved ? [] : [ink.fail(wrapped(`not solved: ${condition.reason}`, columns))];
  return [ink.strong(condition.name), wrapped(figures.join(separator), columns), ...state].join("\n");
}

function printStations({ stations }: ConditionOutput, { system, ink }: Style): string {
  const columns: Column[] = [
    { name: "air behind", align: "left" },
    { name: "dry\nbulb", unit: displayUnit("temperature", system), align: "right" },
    { name: "wet\nbulb", unit: displayUnit("temperature", system), align: "right" },
    { name: "dew\npoint", unit: displayUnit("temperature", system), align: "right" },
    { name: "humidity\nratio", unit: displayUnit("humidityRatio", system), align: "right" },
    { name: "enthalpy", unit: displayUnit("enthalpy", system), align: "right" },
    { name: "static", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "total", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "velocity", unit: displayUnit("velocity", system), align: "right" },
    { name: "airflow", unit: displayUnit("actualAirflow", system), align: "right" },
  ];
  const rows = stations.map((station) => [
    cut(station.after, 24),
    ink.strong(printNumber(station.dryBulb, "temperature", system)),
    printNumber(station.wetBulb, "temperature", system),
    printNumber(station.dewPoint, "temperature", system),
    printNumber(station.humidityRatio, "humidityRatio", system),
    printNumber(station.enthalpy, "enthalpy", system),
    ink.strong(printNumber(station.staticPressure, "pressureDifference", system)),
    printNumber(station.totalPressure, "pressureDifference", system),
    station.velocity === 0 ? "–" : printNumber(station.velocity, "velocity", system),
    printNumber(station.airflow, "actualAirflow", system),
  ]);
  return printTable(columns, rows, ink);
}

function cut(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
}

/** So many figures of a section, and of a fan, say what matters; --all gives the rest. */
const mainFigures = 5;
const fanFigures = 12;

function figuresShown(main: number, { allFigures = false }: Style): number {
  return allFigures ? Number.POSITIVE_INFINITY : main;
}

function printSections(condition: ConditionOutput, unit: Unit, style: Style): string {
  const lines = condition.sections.flatMap((section, index) => {
    const described = unit.sections[index];
    // A running fan follows by itself.
    if (described === undefined || isRunningFan(described, condition)) return [];
    return namedLine(
      section.name,
      figureWords(described, section, figuresShown(mainFigures, style), style.system),
      style,
    );
  });
  const head = style.allFigures === true ? "sections" : "sections, main figures; all of them with --all";
  return [style.ink.quiet(head), ...lines].join("\n");
}

function isRunningFan(section: UnitSection, condition: ConditionOutput): boolean {
  return section.behaviour.role === "fan" && condition.flow !== "fan stopped";
}

/** The first figures of a section, most important first, in a line. */
function figureWords(described: UnitSection, section: SectionOutput, most: number, system: UnitSystem): string {
  const words = described.behaviour.figures.slice(0, most).flatMap(({ figure, name, quantity }) => {
    const value = section.figures[figure];
    return value === undefined ? [] : [`${name} ${glued(figureText(value, quantity, system))}`];
  });
  return words.join(separator);
}

const nameWidth = 24;

/** A name on the left, words beside it, further lines moved in under the words. */
function namedLine(name: string, words: string, { columns }: Style): string {
  const body = wrapped(words, Math.max(columns - nameWidth - 2, 40)).replaceAll("\n", `\n${" ".repeat(nameWidth + 2)}`);
  return `${cut(name, nameWidth).padEnd(nameWidth)}  ${body}`.trimEnd();
}

function printFanPoint(condition: ConditionOutput, unit: Unit, style: Style): string {
  const { system, ink } = style;
  const fans = condition.sections.flatMap((section, index) => {
    const described = unit.sections[index];
    if (described === undefined || !isRunningFan(described, condition)) return [];
    return namedLine(section.name, figureWords(described, section, figuresShown(fanFigures, style), system), style);
  });
  if (fans.length === 0) return "";
  const { externalStaticNeeded, externalStaticHeld, electricPower, speed } = condition.fan;
  const say = (value: number, quantity: QuantityKind) => glued(printQuantity(value, quantity, system));
  const duct = [
    `speed ${say(speed, "rotationalSpeed")}`,
    `from the mains ${say(electricPower, "electricPower")}`,
    `external static needed ${say(externalStaticNeeded, "pressureDifference")}`,
    `held ${say(externalStaticHeld, "pressureDifference")}`,
  ];
  return [ink.quiet("fan point"), ...fans, namedLine("fan and duct", duct.join(separator), style)].join("\n");
}

function printShortfalls({ shortfalls, flow }: ConditionOutput, style: Style): string {
  const { system, ink } = style;
  if (shortfalls.length === 0) return flow === "fan stopped" ? "" : "everything asked is met";
  const lines = shortfalls.map(({ section, what, quantity, wanted, got }) => {
    const say = (value: number) => glued(printQuantity(value, quantity, system));
    const figures = `wanted ${say(wanted)}, got ${say(got)}`;
    return namedLine(section, `${what}: ${figures}`, style);
  });
  return [ink.fail("not met"), ...lines].join("\n");
}

function printNotes({ notes }: ConditionOutput, style: Style): string {
  if (notes.length === 0) return "";
  const lines = notes.map(({ section, what, weight, source }) => {
    const mind = weight === "caution" ? "caution: " : "";
    const from = source === undefined ? "" : ` [${source}]`;
    return namedLine(section, `${mind}${what}${from}`, style);
  });
  return [style.ink.quiet("to mind"), ...lines].join("\n");
}
