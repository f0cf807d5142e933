import { buildCoil } from "@oncethrough/engine/component/coil/coil";
import type { CoilInlet } from "@oncethrough/engine/component/coil/performance";
import type { FinnedSurface } from "@oncethrough/engine/component/finned-surface/family";
import type { SurfaceTestPoint } from "@oncethrough/engine/design/surface-fit";
import { standardPressure } from "@oncethrough/engine/fluid/atmosphere";
import { liquidDensity, liquidSpecificHeat } from "@oncethrough/engine/fluid/liquid";
import { moistAirSpecificHeat, specificVolume } from "@oncethrough/engine/fluid/moist-air";
import { steamSaturationTemperature } from "@oncethrough/engine/fluid/steam";
import { humidityRatioFromWetBulb } from "@oncethrough/engine/fluid/wet-bulb";
import { nearestName } from "@oncethrough/engine/form/nearest-name";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { allowedText, parseQuantity, unitOf } from "@oncethrough/engine/quantity/parse";
import { standardAirDensity } from "@oncethrough/engine/quantity/standard-air";
import { type CsvRow, readCsv } from "../air/read-csv.ts";

/** What a column of test points may hold. */
export const surfaceColumns = {
  rows: "count",
  "tubes per row": "count",
  circuits: "count",
  "finned length": "length",
  fins: "pitch",
  "entering dry bulb": "temperature",
  "entering wet bulb": "temperature",
  "humidity ratio": "humidityRatio",
  airflow: "actualAirflow",
  "standard airflow": "standardAirflow",
  "dry air": "massFlow",
  "barometric pressure": "absolutePressure",
  "entering water": "temperature",
  "leaving water": "temperature",
  "water flow": "liquidFlow",
  "water mass flow": "massFlow",
  "steam pressure": "gaugePressure",
  "steam temperature": "temperature",
  "leaving dry bulb": "temperature",
  capacity: "power",
  "air pressure drop": "pressureDifference",
} as const satisfies Readonly<Record<string, QuantityKind | "count">>;

type ColumnName = keyof typeof surfaceColumns;

/** A problem of the table, by line and column. */
export interface SurfaceTableProblem {
  readonly line: number;
  readonly column: string;
  readonly problem: string;
  readonly needed: string;
}

/** The points of a table, or what is wrong with it. */
export type SurfaceTable =
  | { readonly ok: true; readonly points: readonly SurfaceTestPoint[]; readonly lines: readonly number[] }
  | { readonly ok: false; readonly problems: readonly SurfaceTableProblem[] };

const water = { substance: "water", massFraction: 0 } as const;
/** Columns of which one of each line is needed, with water in the tubes and with steam. */
const always: readonly (readonly ColumnName[])[] = [
  ["rows"],
  ["tubes per row"],
  ["finned length"],
  ["fins"],
  ["entering dry bulb"],
  ["airflow", "standard airflow", "dry air"],
];
const onWater: readonly (readonly ColumnName[])[] = [
  ["circuits"],
  ["entering wet bulb", "humidity ratio"],
  ["entering water"],
  ["water flow", "water mass flow"],
  ["capacity", "leaving water"],
];
const onSteam: readonly (readonly ColumnName[])[] = [["capacity", "leaving dry bulb"]];
const steamColumns: readonly ColumnName[] = ["steam pressure", "steam temperature"];

interface Column {
  readonly name: ColumnName;
  readonly unit: string | undefined;
}

/** Reads test points; `same` holds `name=value` pairs that stand for every row. */
export function readSurfaceTable(text: string, same: readonly string[], surface: FinnedSurface): SurfaceTable {
  const csv = readCsv(text);
  const problems: SurfaceTableProblem[] = [];
  const say = (line: number, column: string, problem: string, needed: string) => {
    problems.push({ line, column, problem, needed });
  };
  if (!csv.ok)
    return {
      ok: false,
      problems: [{ line: csv.line, column: "", problem: csv.problem, needed: "quotes around a whole cell" }],
    };
  const [header = { line: 1, cells: [] }, ...body] = csv.rows;
  const pairs = same.map((each) => each.split(/[=:](.*)/s).map((part) => part.trim()));
  const cells = [...header.cells, ...pairs.map(([name = ""]) => name)];
  const columns = cells.map((cell) => readHeader(cell, header.line, say));
  const names = columns.flatMap((column) => (column === undefined ? [] : [column.name]));
  const hasSteam = steamColumns.some((name) => names.includes(name));
  for (const choice of [...always, ...(hasSteam ? onSteam : onWater)]) {
    const given = choice.filter((name) => names.includes(name)).length;
    if (given === 0)
      say(header.line, choice[0]!, "is missing", `a column ${choice.join(" or ")}, or --same "${choice[0]}=…"`);
  }
  const mixed = hasSteam ? names.find((name) => /water|circuits/.test(name)) : undefined;
  if (mixed !== undefined) say(header.line, mixed, "stands beside steam", "points on water, or points on steam");
  const twice = names.find((name, index) => names.indexOf(name) !== index);
  if (twice !== undefined) say(header.line, twice, "stands twice", "each column once");
  if (body.length === 0) say(header.line, "", "no row follows the header", "a row for each tested point");
  if (problems.length > 0) return { ok: false, problems };
  const points = body.flatMap((row) => readRow(row, columns, pairs, header.cells.length, surface, say));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, points, lines: body.map(({ line }) => line) };
}

type Say = (line: number, column: string, problem: string, needed: string) => void;

function readHeader(cell: string, line: number, say: Say): Column | undefined {
  const [, before = "", square, round] = /^(.*?)\s*(?:\[([^\]]*)\]|\((.*)\))?$/s.exec(cell) ?? [];
  const unit = square ?? round;
  const words = before
    .replace(/[\s_-]+/g, " ")
    .trim()
    .toLowerCase();
  if (!Object.hasOwn(surfaceColumns, words)) {
    const nearest = nearestName(words, Object.keys(surfaceColumns));
    const meant = nearest === undefined ? "" : `; did you mean "${nearest}"?`;
    say(line, cell, `is not known${meant}`, Object.keys(surfaceColumns).join(", "));
    return undefined;
  }
  const name = words as ColumnName;
  const kind = surfaceColumns[name];
  if (unit !== undefined && (kind === "count" || unitOf(unit, kind) === undefined)) {
    say(line, name, `"${unit}" is no unit of it`, kind === "count" ? "a number without unit" : allowedText(kind));
  }
  return { name, unit };
}

function readRow(
  row: CsvRow,
  columns: readonly (Column | undefined)[],
  pairs: readonly (readonly string[])[],
  own: number,
  surface: FinnedSurface,
  say: Say,
): readonly SurfaceTestPoint[] {
  if (row.cells.length !== own) {
    say(row.line, "", `${row.cells.length} cells stand under ${own} column names`, "as many cells as columns");
    return [];
  }
  const values = new Map<ColumnName, number>();
  let isWhole = true;
  columns.forEach((column, index) => {
    if (column === undefined) return;
    const cell = row.cells[index] ?? pairs[index - own]?.[1] ?? "";
    if (column.name === "air pressure drop" && cell.trim() === "") return;
    const value = readCell(cell, column, row.line, say);
    if (value === undefined) isWhole = false;
    else values.set(column.name, value);
  });
  if (!isWhole) return [];
  try {
    return [pointOf(values, surface)];
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    say(row.line, "", error.message, "a point that can be");
    return [];
  }
}

/** A bare number takes the header's unit; a cell with a unit of its own keeps it. */
function readCell(cell: string, { name, unit }: Column, line: number, say: Say): number | undefined {
  const kind = surfaceColumns[name];
  if (kind === "count") {
    const value = Number(cell);
    if (Number.isInteger(value) && value >= 1 && value <= 2000) return value;
    say(line, name, `"${cell}" is no such number`, "a whole number from 1 to 2000");
    return undefined;
  }
  const isBare = /^[-+]?[\d.,]+(?:e[-+]?\d+)?$/i.test(cell);
  const parsed = parseQuantity(isBare && unit !== undefined ? `${cell} ${unit}` : cell, kind);
  if (!parsed.ok) {
    say(line, name, parsed.problem, `${parsed.allowed}; or its unit in the header's brackets`);
    return undefined;
  }
  if (!(parsed.value > 0) && kind !== "temperature" && kind !== "humidityRatio" && kind !== "gaugePressure") {
    say(line, name, `"${cell}" is not above 0`, "a number above 0");
    return undefined;
  }
  return parsed.value;
}

function pointOf(values: ReadonlyMap<ColumnName, number>, surface: FinnedSurface): SurfaceTestPoint {
  const get = (name: ColumnName) => values.get(name) ?? Number.NaN;
  const pressure = values.get("barometric pressure") ?? standardPressure(0);
  const dryBulb = get("entering dry bulb");
  const isSteam = steamColumns.some((name) => values.has(name));
  const humidityRatio = values.has("entering wet bulb")
    ? humidityRatioFromWetBulb(dryBulb, get("entering wet bulb"), pressure)
    : (values.get("humidity ratio") ?? (isSteam ? 0 : Number.NaN));
  if (!(humidityRatio >= 0)) throw new RangeError("no air has this dry bulb and wet bulb");
  const standard = (get("standard airflow") * standardAirDensity) / (1 + humidityRatio);
  const byVolume = get("airflow") / specificVolume(dryBulb, humidityRatio, pressure);
  const dryAirFlow = values.get("dry air") ?? (values.has("standard airflow") ? standard : byVolume);
  const air = { dryAirFlow, dryBulb, humidityRatio, pressure, coldestFilament: dryBulb };
  const point = isSteam ? steamPoint(values, air) : waterPoint(values, air);
  const make = {
    rows: get("rows"),
    tubesPerRow: get("tubes per row"),
    circuits: isSteam ? get("rows") * get("tubes per row") : get("circuits"),
    finnedLength: get("finned length"),
    finsPerLength: get("fins"),
    finThickness: surface.finThickness,
    finMaterial: surface.finMaterial,
    tubeWall: surface.tubeWall,
    tubeMaterial: surface.tubeMaterial,
    flow: "counter",
    turbulators: false,
    // A laboratory's coils are clean.
    foulingInside: 0,
    foulingOutside: 0,
  } as const;
  buildCoil({ ...make, surface });
  return { make, ...point, airPressureDrop: values.get("air pressure drop") };
}

type EnteringAir = Omit<CoilInlet, "liquid" | "liquidFlow" | "liquidTemperature">;
type PointOfUse = Omit<SurfaceTestPoint, "make">;

function waterPoint(values: ReadonlyMap<ColumnName, number>, air: EnteringAir): PointOfUse {
  const get = (name: ColumnName) => values.get(name) ?? Number.NaN;
  const liquidTemperature = get("entering water");
  const liquidFlow = values.get("water mass flow") ?? get("water flow") * liquidDensity(water, liquidTemperature);
  const leaving = get("leaving water");
  const rise = leaving - liquidTemperature;
  const byWater = liquidFlow * liquidSpecificHeat(water, (leaving + liquidTemperature) / 2) * rise;
  const towards = Math.sign(air.dryBulb - liquidTemperature);
  const heat = values.has("capacity") ? towards * get("capacity") : byWater;
  if (!(heat * towards > 0)) throw new RangeError("heat flows from the colder to the warmer side");
  return { inlet: { ...air, liquid: water, liquidFlow, liquidTemperature }, heat };
}

/** The heat that steam gives is negative, as that of warm water. */
function steamPoint(values: ReadonlyMap<ColumnName, number>, air: EnteringAir): PointOfUse {
  const get = (name: ColumnName) => values.get(name) ?? Number.NaN;
  const pressure = air.pressure + get("steam pressure");
  if (!values.has("steam temperature") && !(pressure > 1000 && pressure < 1.6e6)) {
    throw new RangeError("steam coils work below 16 bar absolute, and above a vacuum");
  }
  const steamTemperature = values.get("steam temperature") ?? steamSaturationTemperature(pressure);
  if (!(steamTemperature > air.dryBulb)) throw new RangeError("the steam is no warmer than the air");
  const rise = get("leaving dry bulb") - air.dryBulb;
  const heat = values.get("capacity") ?? air.dryAirFlow * moistAirSpecificHeat(air.humidityRatio) * rise;
  if (!(heat > 0)) throw new RangeError("the air leaves no warmer than it came");
  if (get("leaving dry bulb") >= steamTemperature)
    throw new RangeError("the air leaves as warm as the steam, or warmer");
  return {
    inlet: { ...air, liquid: water, liquidFlow: 0, liquidTemperature: steamTemperature },
    steamTemperature,
    heat: -heat,
  };
}
