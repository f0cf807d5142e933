import type { QuantityKind, UnitSystem } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { type DeclaredComparison, type DeclaredLine, declaredName, misses } from "@oncethrough/engine/section/declared";
import { glued, type TextInk, wrapped } from "./ink.ts";
import { type Column, printTable } from "./table.ts";

interface Style {
  readonly system: UnitSystem;
  readonly ink: TextInk;
  readonly columns: number;
}

/** A supplier's declared rating beside ours, what differs at the condition in hand, and what does not fit. */
export function printDeclared(declared: DeclaredComparison, style: Style): string {
  const { ink, system, columns: width } = style;
  const columns: Column[] = [
    { name: declaredName(declared), align: "left" },
    { name: "declared", align: "right" },
    { name: "ours", align: "right" },
    { name: "difference", align: "right" },
  ];
  const rows = declared.lines.map((line) => {
    const { what, quantity, declared: their, ours } = line;
    const difference = differenceText(line, line.difference, style);
    const beyond = misses(line)
      ? ink.fail(`${difference} beyond ${differenceText(line, line.tolerance ?? 0, style, "")}`)
      : difference;
    return [what, printQuantity(their, quantity, system), printQuantity(ours, quantity, system), beyond];
  });
  const say = (value: number, quantity: QuantityKind) => glued(printQuantity(value, quantity, system));
  const differs = declared.circumstances.map(
    (each) =>
      `${each.what} ${say(each.declared, each.quantity)} there, ${say(each.here, each.quantity)} here${each.asksMore ? ", which asks more" : ""}`,
  );
  const state =
    differs.length === 0 ? "nothing differs at this condition" : `at this condition differ: ${differs.join("; ")}`;
  const remarks = declared.remarks.map((each) => `\n${ink.fail(wrapped(each, width))}`).join("");
  return `${printTable(columns, rows, ink)}\n${ink.quiet(wrapped(`${declared.at}; ${state} [${declared.source}]`, width))}${remarks}`;
}

function differenceText(
  { quantity }: DeclaredLine,
  difference: number,
  { system }: Style,
  sign = difference < 0 ? "−" : "+",
): string {
  const size = Math.abs(difference);
  if (quantity === "temperature") return `${sign}${printQuantity(size, "temperatureDifference", system)}`;
  return `${sign}${(100 * size).toFixed(1)} %`;
}
