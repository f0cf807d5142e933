import { displayUnit, printNumber } from "@oncethrough/engine/quantity/print";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { PartOutput } from "./weigh-output.ts";

/** Every part of the tree in a line, what belongs to an assembly moved in under it. */
export function printParts(parts: readonly PartOutput[], { system, ink }: Style): string {
  const length = displayUnit("length", system);
  const columns: Column[] = [
    { name: "part", align: "left" },
    { name: "material", align: "left" },
    { name: "count", align: "right" },
    ...["x", "y", "z", "long", "wide", "high"].map((name) => ({ name, unit: length, align: "right" as const })),
    { name: "mass", unit: displayUnit("mass", system), align: "right" },
  ];
  const rows = parts.map((part) => {
    const depth = part.key.split("/").length - 1;
    const name = `${"  ".repeat(depth)}${part.name}`;
    const say = (value: number) => printNumber(value, "length", system);
    return [
      depth === 0 ? ink.strong(name) : name,
      part.material ?? "",
      part.count > 1 ? String(part.count) : "",
      ...[part.place, part.size].flatMap(({ x, y, z }) => [say(x), say(y), say(z)]),
      printNumber(part.mass, "mass", system),
    ];
  });
  return printTable(columns, rows, ink);
}
