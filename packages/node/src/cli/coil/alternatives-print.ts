import type { CoilAlternative } from "@oncethrough/engine/design/coil-alternative";
import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import { csvLine } from "../air/read-csv.ts";
import { wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { AlternativesOutput } from "./alternatives-output.ts";

const sortedWords = { price: "price index", air: "air pressure drop", water: "water pressure drop", rows: "rows" };

/** Alternatives for a person: the present choice first, marked; then the list. */
export function printAlternatives(output: AlternativesOutput, style: Style): string {
  const { ink, system, columns } = style;
  const wanted = printQuantity(output.wantedLeaving, "temperature", system);
  const found = `${output.met} of ${output.looked} ways to build a ${output.kind} leave the air at ${wanted} and keep the limits; least ${sortedWords[output.sortedBy]} first`;
  const refused = Object.entries(output.refused)
    .filter(([, count]) => count > 0)
    .map(([why, count]) => `${why} ${count}`)
    .join(", ");
  const listed = [...output.candidates];
  if (output.present !== undefined && !listed.some((each) => each.present)) listed.unshift(output.present);
  return [
    wrapped(found, columns),
    printTable(
      tableColumns(style),
      listed.map((each) => tableRow(each, style)),
      ink,
    ),
    ...(refused === "" ? [] : [wrapped(ink.quiet(`left out for: ${refused}`), columns)]),
    wrapped(ink.quiet(`● the present coil. Price index: ${output.priceFormula}.`), columns),
  ].join("\n\n");
}

function tableColumns({ system }: Style): Column[] {
  return [
    { name: "", align: "left" },
    { name: "surface", align: "left" },
    { name: "rows", align: "right" },
    { name: "fins", unit: displayUnit("pitch", system), align: "right" },
    { name: "circuits", align: "left" },
    { name: "price", align: "right" },
    { name: "leaving", unit: displayUnit("temperature", system), align: "right" },
    { name: "capacity", unit: displayUnit("power", system), align: "right" },
    { name: "air", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "water", unit: displayUnit("liquidPressureDrop", system), align: "right" },
    { name: "tubes", unit: displayUnit("liquidVelocity", system), align: "right" },
  ];
}

function tableRow(each: CoilAlternative, { system, ink }: Style): string[] {
  return [
    each.present ? ink.strong("●") : "",
    each.surface.replace(/^typical /, "").replace(/ in\b/, "″"),
    String(each.rows),
    printNumber(each.fins, "pitch", system),
    `${String(each.circuits).padStart(3)}${each.turbulators ? " wire" : ""}`,
    each.priceIndex.toFixed(0),
    printNumber(each.leavingDryBulb, "temperature", system),
    printNumber(each.capacity, "power", system),
    printNumber(each.airPressureDrop, "pressureDifference", system),
    printNumber(each.liquidPressureDrop, "liquidPressureDrop", system),
    printNumber(each.tubeVelocity, "liquidVelocity", system),
  ];
}

const csvColumns: readonly (readonly [string, (each: CoilAlternative) => string | number])[] = [
  ["present", (each) => (each.present ? "yes" : "")],
  ["surface", (each) => each.surface],
  ["rows", (each) => each.rows],
  ["fins [1/m]", (each) => each.fins],
  ["circuits", (each) => each.circuits],
  ["turbulators", (each) => (each.turbulators ? "wire" : "none")],
  ["price index", (each) => each.priceIndex],
  ["leaving dry bulb [°C]", (each) => each.leavingDryBulb],
  ["capacity [W]", (each) => each.capacity],
  ["sensible capacity [W]", (each) => each.sensibleCapacity],
  ["face velocity [m/s]", (each) => each.faceVelocity],
  ["air pressure drop [Pa]", (each) => each.airPressureDrop],
  ["water pressure drop [Pa]", (each) => each.liquidPressureDrop],
  ["water flow [kg/s]", (each) => each.liquidMassFlow],
  ["leaving water [°C]", (each) => each.liquidLeaving],
  ["tube velocity [m/s]", (each) => each.tubeVelocity],
  ["depth [m]", (each) => each.depth],
];

/** Alternatives as CSV, in SI. */
export function alternativesCsv({ candidates }: AlternativesOutput): string {
  const lines = candidates.map((each) =>
    csvLine(
      csvColumns.map(([, value]) => {
        const cell = value(each);
        return typeof cell === "number" ? String(Number(cell.toPrecision(6))) : cell;
      }),
    ),
  );
  return csvLine(csvColumns.map(([name]) => name)) + lines.join("");
}
