import type { QuantityKind, UnitSystem } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber, printQuantity, toDisplay } from "@oncethrough/engine/quantity/print";
import type { LossSpan } from "@oncethrough/engine/section/loss";
import type { FilterState } from "@oncethrough/engine/unit/filter-states";
import type { LedgerLine, PressureLedger } from "@oncethrough/engine/unit/ledger";
import { glued, wrapped } from "../ink.ts";
import { type Column, printTable } from "../table.ts";
import type { Style } from "./rate-print.ts";

/** Every loss in airflow order under its section's name, the sums, and the sources by number. */
export function printLedger(ledger: PressureLedger, style: Style): string {
  const sources = [...new Set(ledger.lines.map((line) => line.source))];
  const parts = [
    `${style.ink.quiet("pressure ledger: total pressure, each loss at its own density")}\n${lossTable(ledger, sources, style)}`,
    sumTable(ledger, style),
    sourceList(sources, style),
  ];
  return parts.join("\n\n");
}

function lossTable({ lines }: PressureLedger, sources: readonly string[], style: Style): string {
  const { system, ink } = style;
  const unit = (quantity: QuantityKind) => displayUnit(quantity, system);
  const columns: Column[] = [
    { name: "", align: "left" },
    { name: "loss", unit: unit("pressureDifference"), align: "right" },
    { name: "total\nbehind", unit: unit("pressureDifference"), align: "right" },
    { name: "on velocity\nin", align: "left" },
    { name: "area", unit: unit("area"), align: "right" },
    { name: "velocity", unit: unit("velocity"), align: "right" },
    { name: "density", unit: unit("density"), align: "right" },
    { name: "Δp/\n½ρV²", align: "right" },
    { name: "[ ]", align: "right" },
  ];
  let section = "";
  const rows = lines.flatMap((line) => {
    const heading = line.section === section ? [] : [[ink.strong(line.section), ...Array<string>(8).fill("")]];
    section = line.section;
    const span = line.span === undefined || line.span.most === line.span.least ? [] : [spanRow(line.span, style)];
    return [...heading, lossRow(line, sources.indexOf(line.source) + 1, style), ...span];
  });
  const table = printTable(columns, rows, ink);
  const beside = lines.some((line) => line.isBeside)
    ? "\n( ) on a path beside that of the supply air: not in the sum"
    : "";
  return table + ink.quiet(beside);
}

function lossRow(line: LedgerLine, source: number, { system, ink }: Style): string[] {
  const pressure = pressureText(line.pressure, system);
  const number = (value: number, quantity: QuantityKind) => printNumber(value, quantity, system);
  return [
    `  ${partWords(line, system)}`,
    line.isBeside ? `(${pressure})` : ink.strong(pressure),
    line.isBeside ? "" : pressureText(line.behind, system),
    line.plane,
    line.area > 0 ? number(line.area, "area") : "–",
    number(line.velocity, "velocity"),
    number(line.density, "density"),
    line.velocity === 0 ? "–" : coefficientText(line.coefficient),
    String(source),
  ];
}

/** Three figures are as many as any loss is known to. */
function coefficientText(value: number): string {
  return value >= 1000 ? Math.round(value).toLocaleString("en-US") : String(Number(value.toPrecision(3)));
}

/** A figure finer than elsewhere: the sum has to be seen to close. */
function pressureText(value: number, system: UnitSystem): string {
  const text = toDisplay(value, "pressureDifference", system).toFixed(system === "ip" ? 3 : 1);
  return Number(text) === 0 ? text.replace("-", "") : text;
}

function partWords({ part, bladeAngle, span }: LedgerLine, system: UnitSystem): string {
  if (bladeAngle !== undefined) return `${part}, ${printQuantity(bladeAngle, "angle", system)}`;
  return span?.of === "filter" ? `${part}, ${Math.round(100 * span.share)} %` : part;
}

/** Between which figures the loss lies, quiet under it. */
function spanRow({ of, least, most }: LossSpan, { system, ink }: Style): string[] {
  const [low, high] = of === "fins" ? ["dry", "wet"] : ["clean", "at change-out"];
  const words = `    ${pressureText(least, system)} ${low}, ${pressureText(most, system)} ${high}`;
  return [ink.quiet(words), ...Array<string>(8).fill("")];
}

function sumTable(ledger: PressureLedger, { system, ink }: Style): string {
  const say = (value: number, quantity: QuantityKind) => printQuantity(value, quantity, system);
  const end = `${say(ledger.endVelocity, "velocity")} in ${say(ledger.endArea, "area")} at ${say(ledger.endDensity, "density")}`;
  const lines: readonly (readonly [string, number, string])[] = [
    ["losses from intake to discharge", ledger.losses, ""],
    ["duct system, static", ledger.ductSystem, ""],
    ["reserve", ledger.reserve, ""],
    ["velocity pressure at the end", ledger.velocityPressure, end],
    ...(ledger.intake === 0 ? [] : [["wind at the intake", -ledger.intake, ""] as const]),
    ["fan total pressure", ledger.fanTotal, ""],
    ...(ledger.fanOutletVelocityPressure === 0
      ? []
      : [["velocity pressure in its outlet", -ledger.fanOutletVelocityPressure, ""] as const]),
    ["fan static pressure", ledger.fanStatic, ""],
  ];
  const columns: Column[] = [
    { name: "", align: "left" },
    { name: "", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "", align: "left" },
  ];
  const rows = lines.map(([name, value, note]) => {
    const figure = pressureText(value, system);
    return name.startsWith("fan ") ? [ink.strong(name), ink.strong(figure), note] : [name, figure, ink.quiet(note)];
  });
  return printTable(columns, rows, ink);
}

function sourceList(sources: readonly string[], { ink, columns }: Style): string {
  const words = sources.map((source, index) => `[${index + 1}]${glued(" ")}${source}`).join("; ");
  return ink.quiet(wrapped(`sources: ${words}`, columns, "  "));
}

/** Filters clean, half loaded and at change-out side by side: what each section takes, and what it asks of the fan. */
export function printFilterStates(states: readonly FilterState[], { system, ink }: Style): string {
  const heads = ["clean", "half\nloaded", "at\nchange-out"];
  const columns: Column[] = [
    { name: "filters", align: "left" },
    { name: "", align: "left" },
    ...heads.map((name): Column => ({ name, align: "right" })),
  ];
  const row = (name: string, unit: string, figure: (state: FilterState) => string) => [
    name,
    ink.quiet(unit),
    ...states.map((state) => (state.solved ? figure(state) : ink.fail("not solved"))),
  ];
  const pressure = displayUnit("pressureDifference", system);
  const sections = (states[0]?.sections ?? []).map(({ section }, index) =>
    row(`  ${section}`, pressure, (state) => pressureText(state.sections[index]?.loss ?? 0, system)),
  );
  const figures: readonly (readonly [string, QuantityKind, (state: FilterState) => number])[] = [
    ["fan speed", "rotationalSpeed", (state) => state.fanSpeed],
    ["power from the mains", "electricPower", (state) => state.electricPower],
    ["airflow", "standardAirflow", (state) => state.standardAirflow],
  ];
  const rows = [
    ...sections,
    row("losses from intake to discharge", pressure, (state) => pressureText(state.losses, system)),
    row("fan total pressure", pressure, (state) => ink.strong(pressureText(state.fanTotal, system))),
    row("fan static pressure", pressure, (state) => ink.strong(pressureText(state.fanStatic, system))),
    ...figures.map(([name, quantity, of]) =>
      row(name, displayUnit(quantity, system), (state) => printNumber(of(state), quantity, system)),
    ),
  ];
  return printTable(columns, rows, ink);
}
