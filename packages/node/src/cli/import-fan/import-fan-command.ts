import { basename } from "node:path";
import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { readCatalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { fanTestChart } from "@oncethrough/engine/chart/fan-test-chart";
import type { FanWheel } from "@oncethrough/engine/component/fan-wheel";
import { type FanTest, reduceFanTest, type TestedPressure } from "@oncethrough/engine/design/fan-test";
import { svgText } from "@oncethrough/engine/drawing/svg-text";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { parseQuantity } from "@oncethrough/engine/quantity/parse";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import { standardAirDensity } from "@oncethrough/engine/quantity/standard-air";
import { writeNewTextFile, writeTextFile } from "#files/write-text";
import { exitCode, UsageProblem } from "../exit-code.ts";
import { type TextInk, textInk, wrapped } from "../ink.ts";
import { loadCatalogue, readOperand } from "../job-source.ts";
import { type Given, optionFlag, optionText, printJson, type Streams, unitSystem } from "../session.ts";
import { fanRecord } from "./fan-record.ts";
import { readFanTable } from "./fan-table.ts";
import { importedFan, refusedImport } from "./import-fan-output.ts";

/** `oncethrough import-fan`: a shop's own test table becomes a catalogue record. */
export async function importFanCommand(given: Given, streams: Streams): Promise<number> {
  const { name: file, text } = await readOperand(given, streams);
  const ink = textInk(streams.colour);
  const { catalogue } = await loadCatalogue(given);
  const like = likeOf(given, catalogue);
  const diameter = quantityOption(given, "diameter", "length");
  if (diameter === undefined)
    throw new UsageProblem('--diameter is needed: the wheel that was tested, such as "30 in"');
  const density = quantityOption(given, "density", "density") ?? standardAirDensity;
  const table = readFanTable(text, { speed: quantityOption(given, "speed", "rotationalSpeed"), density });
  const reduced = table.ok ? reduceFanTest(table.rows, diameter, pressureOf(table.pressure, like, diameter)) : table;
  if (!table.ok || !reduced.ok) {
    const problems = reduced.ok ? [] : reduced.problems;
    if (optionFlag(given, "json")) printJson(streams, refusedImport(problems));
    for (const { line, problem, needed } of problems) {
      streams.errors(`${ink.quiet(`${file}:${line}:`)} ${problem}; needed: ${needed}\n`);
    }
    return exitCode.found;
  }
  const name = optionText(given, "name") ?? `tested ${basename(file).replace(/\.[^.]*$/, "")}`;
  const date = new Date().toISOString().slice(0, 10);
  const { test } = reduced;
  const record = fanRecord({ test, units: table.units, name, source: basename(file), date, like });
  const wrong = readCatalogue([{ path: name, text: record }]).problems[0];
  if (wrong !== undefined) {
    streams.errors(
      `${file}: the record would not be sound: ${wrong.field}: ${wrong.problem}; allowed: ${wrong.allowed}\n`,
    );
    return exitCode.found;
  }
  await writePlot(given, test, name);
  if (optionFlag(given, "json")) {
    const output = optionText(given, "output");
    if (output !== undefined) await writeNewTextFile(output, record);
    printJson(streams, importedFan(name, record, test));
  } else await writeRecord(given, record, report(test, given, ink, streams.columns), streams);
  return exitCode.fine;
}

const usualLike = "typical airfoil housed single inlet";

function likeOf(given: Given, catalogue: Catalogue): FanWheel {
  const name = optionText(given, "like") ?? usualLike;
  const wheel = catalogue.component("fan wheel", name) as FanWheel | undefined;
  if (wheel === undefined) {
    throw new UsageProblem(
      `--like "${name}" is no fan wheel of the catalogue; allowed: ${catalogue.names("fan wheel").join(", ")}`,
    );
  }
  return wheel;
}

function quantityOption(given: Given, option: string, kind: QuantityKind): number | undefined {
  const typed = optionText(given, option);
  if (typed === undefined) return undefined;
  const parsed = parseQuantity(typed, kind);
  if (!parsed.ok) throw new UsageProblem(`--${option}: ${parsed.problem}; allowed: ${parsed.allowed}`);
  if (!(parsed.value > 0)) throw new UsageProblem(`--${option} "${typed}" is not above 0`);
  return parsed.value;
}

function pressureOf(is: "static" | "total", like: FanWheel, diameter: number): TestedPressure {
  if (is === "static") return { is };
  const outletArea = like.outletWidth * like.outletHeight * diameter ** 2;
  if (outletArea === 0) {
    throw new UsageProblem("a plenum wheel has no outlet of its own: its test needs a column static pressure");
  }
  return { is, outletArea };
}

async function writePlot(given: Given, test: FanTest, name: string): Promise<void> {
  const plot = optionText(given, "plot");
  if (plot === undefined) return;
  const list = fanTestChart({ test, name, system: unitSystem(given), width: 560, height: 560 });
  await writeTextFile(plot, svgText(list));
}

async function writeRecord(given: Given, record: string, words: string, streams: Streams): Promise<void> {
  const output = optionText(given, "output");
  if (output === undefined) {
    streams.output(record);
    streams.errors(words);
    return;
  }
  // A catalogue file may hold other records: nothing that is there is written over.
  await writeNewTextFile(output, record);
  streams.output(`${words}written to ${output}\n`);
}

/** What was found, in words: points, what stands out, how well speeds agree. */
function report(test: FanTest, given: Given, ink: TextInk, columns: number): string {
  const system = unitSystem(given);
  const { curve, tested, points, scatter, stableFrom } = test;
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  const speed = (value: number) => printQuantity(value, "rotationalSpeed", system);
  const lines = [
    `${tested.length} tested points make ${points.length} of a curve at ${speed(test.speed)} and ${printQuantity(test.density, "density", system)}; best static efficiency ${percent(curve.bestEfficiency)}`,
    `smallest steady flow ${percent(test.stableShare)} of that at best efficiency, from the ${stableFrom}`,
    ...scatter.map(
      (each) =>
        `${speed(each.speed)} against ${speed(test.speed)} by the fan laws, ${each.points} points: pressure ${percent(each.pressure)} of peak (farthest ${percent(each.pressureFarthest)}), power ${percent(each.power)} (farthest ${percent(each.powerFarthest)})`,
    ),
    ...tested
      .filter((point) => point.outlier !== "")
      .map((point) => ink.fail(`line ${point.line} stands out and is kept: ${point.outlier}`)),
  ];
  return `${lines.map((line) => wrapped(line, columns)).join("\n")}\n`;
}
