import { inch } from "./inch.ts";

/** kg/m² in one pound per square foot. */
const perSquareFoot = 4.882_427_6;

/** One gauge of sheet: thickness in m, mass in kg/m², bare, galvanized and stainless. */
export interface SheetGauge {
  readonly gauge: number;
  readonly bareThickness: number;
  readonly bareMass: number;
  readonly galvanizedThickness: number;
  readonly galvanizedMass: number;
  readonly stainlessThickness: number;
  readonly stainlessMass: number;
}

function row(gauge: number, bare: readonly number[], galvanized: readonly number[], stainless: readonly number[]) {
  const [bareInch, bareMass] = bare as [number, number];
  const [galvanizedInch, galvanizedMass] = galvanized as [number, number];
  const [stainlessInch, stainlessMass] = stainless as [number, number];
  return {
    gauge,
    bareThickness: bareInch * inch,
    bareMass: bareMass * perSquareFoot,
    galvanizedThickness: galvanizedInch * inch,
    galvanizedMass: galvanizedMass * perSquareFoot,
    stainlessThickness: stainlessInch * inch,
    stainlessMass: stainlessMass * perSquareFoot,
  };
}

/**
 * Sheet by the manufacturers' standard gauge: inches and pounds per square foot as published. Steel 41.82 lb/ft² for an inch,
 * galvanizing 0.156 lb/ft² and 0.00375 in more: read; gauge 8 and 20 read, the others' thickness and all stainless from memory.
 */
export const sheetGauges = {
  source: "manufacturers-standard-gauge",
  certainty: "partly read, partly from memory",
  rows: [
    row(24, [0.0239, 1.0], [0.0277, 1.156], [0.025, 1.05]),
    row(22, [0.0299, 1.25], [0.0336, 1.406], [0.0312, 1.31]),
    row(20, [0.0359, 1.5], [0.0397, 1.656], [0.0375, 1.575]),
    row(18, [0.0478, 2.0], [0.0515, 2.156], [0.05, 2.1]),
    row(16, [0.0598, 2.5], [0.0635, 2.656], [0.0625, 2.625]),
    row(14, [0.0747, 3.125], [0.0785, 3.281], [0.0781, 3.28]),
    row(12, [0.1046, 4.375], [0.1084, 4.531], [0.1094, 4.595]),
    row(10, [0.1345, 5.625], [0.1383, 5.781], [0.1406, 5.905]),
  ] satisfies readonly SheetGauge[],
} as const;

/** The gauges of the table, thinnest first, as a field's choices. */
export const sheetGaugeNames = ["24", "22", "20", "18", "16", "14", "12", "10"] as const;
/** One of them. */
export type SheetGaugeName = (typeof sheetGaugeNames)[number];
