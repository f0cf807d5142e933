import { basename } from "node:path";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { surfaceFitChart } from "@oncethrough/engine/chart/surface-fit-chart";
import type { FinnedSurface } from "@oncethrough/engine/component/finned-surface/family";
import type { FitErrors } from "@oncethrough/engine/design/fit-confidence";
import {
  type FittedPoint,
  fitSurface,
  type SurfaceFactor,
  type SurfaceFit,
  surfaceFactors,
} from "@oncethrough/engine/design/surface-fit";
import { svgText } from "@oncethrough/engine/drawing/svg-text";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { displayUnit, printNumber } from "@oncethrough/engine/quantity/print";
import { writeNewTextFile, writeTextFile } from "#files/write-text";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { type TextInk, textInk, wrapped } from "../ink.ts";
import { loadCatalogue, readOperand } from "../job-source.ts";
import { type Given, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { type Column, printTable } from "../table.ts";
import { fittedSurfaceJson } from "./fit-surface-schema.ts";
import { surfaceRecord } from "./surface-record.ts";
import { readSurfaceTable } from "./surface-table.ts";

/** `oncethrough fit-surface`: multipliers of a finned surface from a shop's own test points. */
export async function fitSurfaceCommand(given: Given, streams: Streams): Promise<number> {
  const { name: file, text } = await readOperand(given, streams);
  const ink = textInk(streams.colour);
  const start = await surfaceOf(given);
  const factors = factorsOf(given);
  const same = (optionText(given, "same") ?? "").split(";").filter((each) => each.trim() !== "");
  const table = readSurfaceTable(text, same, start);
  if (!table.ok) {
    for (const { line, column, problem, needed } of table.problems) {
      streams.errors(
        `${ink.quiet(`${file}:${line}:`)} ${column === "" ? "" : `${column}: `}${problem}; needed: ${needed}\n`,
      );
    }
    return exitCode.found;
  }
  const fit = fitSurface(start, table.points, factors);
  if (!fit.ok) {
    streams.errors(`${file}: ${fit.problem}; needed: ${fit.needed}\n`);
    return exitCode.found;
  }
  const name = optionText(given, "name") ?? `${start.head.name}, fitted to ${basename(file).replace(/\.[^.]*$/, "")}`;
  const date = new Date().toISOString().slice(0, 10);
  const record = surfaceRecord({ fit, name, source: basename(file), date });
  const wrong = readCatalogue([{ path: name, text: record }]).problems[0];
  if (wrong !== undefined) {
    streams.errors(
      `${file}: the record would not be sound: ${wrong.field}: ${wrong.problem}; allowed: ${wrong.allowed}\n`,
    );
    return exitCode.found;
  }
  const plot = optionText(given, "plot");
  if (plot !== undefined) {
    await writeTextFile(
      plot,
      svgText(surfaceFitChart({ points: fit.points, name, system: unitSystem(given), size: 420 })),
    );
  }
  if (given.options.json === true) {
    const output = optionText(given, "output");
    if (output !== undefined) await writeNewTextFile(output, record);
    printJson(streams, fittedSurfaceJson({ fit, lines: table.lines, name, startedFrom: start.head.name, record }));
    return exitCode.fine;
  }
  await writeRecord(given, record, `${report(fit, table.lines, given, ink, streams.columns)}\n`, streams);
  return exitCode.fine;
}

async function writeRecord(given: Given, record: string, words: string, streams: Streams): Promise<void> {
  const output = optionText(given, "output");
  if (output === undefined) {
    streams.output(record);
    streams.errors(words);
    return;
  }
  await writeNewTextFile(output, record);
  streams.output(`${words}written to ${output}\n`);
}

async function surfaceOf(given: Given): Promise<FinnedSurface> {
  const { catalogue } = await loadCatalogue(given);
  const name = optionText(given, "surface");
  const surface = name === undefined ? undefined : catalogue.component("finned surface", name);
  if (surface === undefined) {
    const names = catalogue.names("finned surface").join("; ");
    throw new UsageProblem(
      `--surface ${name === undefined ? "is needed" : `"${name}" is no finned surface of the catalogue`}; allowed: ${names}`,
    );
  }
  return surface as FinnedSurface;
}

function factorsOf(given: Given): SurfaceFactor[] {
  const typed = (optionText(given, "fit") ?? "air")
    .split(",")
    .map((each) => each.trim())
    .filter((each) => each !== "");
  const known = surfaceFactors.filter((each) => typed.includes(each));
  if (known.length === 0 || known.length !== typed.length) {
    throw new UsageProblem(
      `--fit "${typed.join(",")}" is not understood; allowed: ${surfaceFactors.join(", ")}, one or several with commas`,
    );
  }
  return known;
}

/** What was found, in words and by point. */
function report(
  fit: Extract<SurfaceFit, { ok: true }>,
  lines: readonly number[],
  given: Given,
  ink: TextInk,
  columns: number,
): string {
  const system = unitSystem(given);
  const unit = displayUnit("power", system);
  const heads: Column[] = [
    { name: "line", align: "right" },
    { name: "measured", unit, align: "right" },
    { name: "before", unit: "%", align: "right" },
    { name: "fitted", unit: "%", align: "right" },
    { name: "wet", unit: "% of rows", align: "right" },
    { name: "outside range", unit: "%", align: "right" },
    ...(fit.lossErrors === undefined ? [] : lossHeads(system)),
  ];
  const rows = fit.points.map((each, index) => [
    String(lines[index] ?? ""),
    printNumber(Math.abs(each.measured), "power", system),
    signedPercent(each.before / each.measured - 1),
    ink.strong(signedPercent(each.fitted / each.measured - 1)),
    (100 * each.wetShare).toFixed(0),
    (100 * each.rangeDistance).toFixed(0),
    ...(fit.lossErrors === undefined ? [] : lossCells(each, system, ink)),
  ]);
  const factors = fit.factors.map(
    ({ factor, value, low, high }) =>
      `${factor} multiplier ${ink.strong(value.toFixed(3))}, with 95 % confidence ${low.toFixed(3)} to ${high.toFixed(3)}`,
  );
  const left = errorLine("heat", fit.heatErrors);
  const lost = fit.lossErrors === undefined ? [] : [errorLine("air pressure loss", fit.lossErrors)];
  return [printTable(heads, rows, ink), ...[...factors, left, ...lost].map((each) => wrapped(each, columns))].join(
    "\n",
  );
}

function errorLine(of: string, { meanSize, scatter, largest }: FitErrors): string {
  return `errors of ${of} after the fit: ${(100 * meanSize).toFixed(1)} % in the mean of sizes, ${(100 * scatter).toFixed(1)} % root mean square, ${(100 * largest).toFixed(1)} % at most`;
}

function lossHeads(system: UnitSystem): Column[] {
  return [
    { name: "air loss", unit: displayUnit("pressureDifference", system), align: "right" },
    { name: "before", unit: "%", align: "right" },
    { name: "fitted", unit: "%", align: "right" },
  ];
}

function lossCells({ loss }: FittedPoint, system: UnitSystem, ink: TextInk): string[] {
  if (loss === undefined) return ["", "", ""];
  return [
    printNumber(loss.measured, "pressureDifference", system),
    signedPercent(loss.before / loss.measured - 1),
    ink.strong(signedPercent(loss.fitted / loss.measured - 1)),
  ];
}

function signedPercent(value: number): string {
  return `${value < 0 ? "−" : "+"}${Math.abs(100 * value).toFixed(1)}`;
}
