import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import type { SectionKind } from "@oncethrough/engine/section/contract";
import { figureText } from "../figure-text.ts";
import { separator, wrapped } from "../ink.ts";
import type { AirOutput } from "../rate/rate-output.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import { printWorking, printWorkingTables } from "../working-print.ts";
import type { CoilOutput } from "./coil-output.ts";

/** A coil's rating for a person: totals, air before and behind, all figures, notes, arithmetic. */
export function printCoil(output: CoilOutput, kind: SectionKind, style: Style): string {
  const { ink, system, columns } = style;
  const say = (value: number, quantity: QuantityKind) => printQuantity(value, quantity, system);
  const heat = output.totalHeat;
  const totals = [
    `${heat < 0 ? "takes" : "gives"} ${say(Math.abs(heat), "power")}`,
    ...(output.condensate > 0 ? [`condensate ${say(output.condensate, "massFlow")}`] : []),
    `air pressure loss ${say(output.totalPressureLoss, "pressureDifference")}`,
  ];
  const flow = [
    say(output.standardAirflow, "standardAirflow"),
    say(output.actualAirflow, "actualAirflow"),
    `barometer ${say(output.barometricPressure, "absolutePressure")}`,
  ];
  const parts = [
    `${ink.strong(output.kind)}\n${wrapped(totals.join(separator), columns)}\n${ink.quiet(flow.join(" · "))}`,
    printAir(output.entering, output.leaving, style),
    printFigures(output, kind, style),
    ...output.shortfalls.map(({ what, quantity, wanted, got }) =>
      ink.fail(`not met: ${what}: wanted ${say(wanted, quantity)}, got ${say(got, quantity)}`),
    ),
    ...output.notes.map(({ what, weight, source }) => {
      const from = source === undefined ? "" : ` [${source}]`;
      return wrapped(`${weight === "caution" ? "caution: " : ""}${what}${from}`, columns, "  ");
    }),
  ];
  if (output.working !== undefined) {
    parts.push(printWorking("how the figures came about", output.working, system, ink, columns));
    parts.push(...printWorkingTables(output.tables ?? [], system, ink, columns));
  }
  return parts.join("\n\n");
}

const airRows: readonly (readonly [keyof AirOutput, string, QuantityKind])[] = [
  ["dryBulb", "dry bulb", "temperature"],
  ["wetBulb", "wet bulb", "temperature"],
  ["dewPoint", "dew point", "temperature"],
  ["relativeHumidity", "relative humidity", "share"],
  ["humidityRatio", "humidity ratio", "humidityRatio"],
  ["enthalpy", "enthalpy", "enthalpy"],
];

function printAir(entering: AirOutput, leaving: AirOutput, { system, ink }: Style): string {
  const columns: Column[] = [
    { name: "air", align: "left" },
    { name: "entering", align: "right" },
    { name: "leaving", align: "right" },
  ];
  const rows = airRows.map(([key, words, quantity]) => [
    words,
    printQuantity(entering[key], quantity, system),
    ink.strong(printQuantity(leaving[key], quantity, system)),
  ]);
  return printTable(columns, rows, ink);
}

function printFigures(output: CoilOutput, kind: SectionKind, { system, ink }: Style): string {
  const columns: Column[] = [
    { name: "", align: "left" },
    { name: "", align: "right" },
  ];
  const rows = kind.figures.flatMap(({ figure, name, quantity }) => {
    const value = output.figures[figure];
    return value === undefined ? [] : [[name, figureText(value, quantity, system)]];
  });
  return printTable(columns, rows, ink);
}
