import type { Coil } from "#component/coil/coil";
import { solveCoil } from "#component/coil/march";
import { type CoilInlet, createCoilWork, createPerformance } from "#component/coil/performance";
import { rowFigures } from "#component/coil/row-figures";
import type { TableQuantity, WorkingTable } from "../contract.ts";
import { bandTable, liquidCoilBand } from "./rivals.ts";

type RowColumn = readonly [name: string, quantity: TableQuantity, figure: keyof ReturnType<typeof rowFigures>[number]];

const columns: readonly RowColumn[] = [
  ["row", "count", "row"],
  ["air in\nt", "temperature", "entering"],
  ["air out\nt", "temperature", "leaving"],
  ["moisture\nout W", "humidityRatio", "leavingMoisture"],
  ["liquid\nin", "temperature", "liquidIn"],
  ["liquid\nout", "temperature", "liquidOut"],
  ["wet", "share", "wet"],
  ["air film\nh", "heatTransferCoefficient", "airFilm"],
  ["surface\nη₀", "share", "surfaceEfficiency"],
  ["liquid\nfilm h_i", "heatTransferCoefficient", "liquidFilm"],
  ["b", "factor", "rise"],
  ["UA", "conductance", "conductance"],
  ["NTU", "factor", "transferUnits"],
  ["heat", "power", "heat"],
];

/** One coil row by row at what enters it: states, films, transfer units. */
function rowTable(name: string, coil: Coil, inlet: CoilInlet): WorkingTable | undefined {
  const work = createCoilWork();
  solveCoil(coil, inlet, work, createPerformance());
  const rows = rowFigures(coil, inlet, work);
  if (rows.length === 0) return undefined;
  return {
    name,
    columns: columns.map(([heading, quantity]) => ({ name: heading, quantity })),
    lines: rows.map((each) => columns.map(([, quantity, figure]) => rounded(each[figure], quantity))),
    equations: [
      "NTU = UA/C_a, UA = 1/(1/(h η₀ A) + b (1/(h_i A_i) + R_wall and fouling)), of one row of one coil",
      "wet rows by the potential θ = t + κ W: b is its rise along saturation, per kelvin from liquid to root of the fins; 1 on a dry row",
    ],
    source: "derived-here march by rows; ashrae-hvac-2020-ch23 wet surface",
  };
}

function rounded(value: number, quantity: TableQuantity): number {
  return quantity === "factor" ? Number(value.toPrecision(3)) : value;
}

/** Rows of one coil, and what the published correlations make of it. */
export function liquidCoilTables(name: string, coil: Coil, inlet: CoilInlet): WorkingTable[] {
  const rows = rowTable(name, coil, inlet);
  const band = liquidCoilBand(coil, inlet);
  return [...(rows === undefined ? [] : [rows]), ...(band === undefined ? [] : [bandTable(band)])];
}
