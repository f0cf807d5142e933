import { notRun, type Row } from "./row.ts";

/** Errors of one quantity over the cases of a file, in its unit and, where that says something, relative. */
export interface Statistics {
  readonly quantity: string;
  readonly unit: string;
  readonly count: number;
  readonly mean: number;
  readonly rms: number;
  readonly worst: Row;
  /** Relative errors of the cases whose figure is not 0; null for values whose zero is arbitrary. */
  readonly relative: RelativeErrors | null;
  /** Cases that state an uncertainty, and those of them whose error is no larger. */
  readonly stated: number;
  readonly within: number;
}

/** Errors as shares of what was expected. */
export interface RelativeErrors {
  readonly mean: number;
  /** Mean of absolute errors. */
  readonly meanSize: number;
  readonly rms: number;
  readonly largest: number;
}

/** Whether a share of the value says anything: the zero of a Celsius scale or of the enthalpy of air is arbitrary. */
export function relativeError(row: Row): number | null {
  if (row.error === null || row.expected === null || row.expected === 0) return null;
  if (row.unit === "°C" || row.unit.endsWith("J/kg dry air")) return null;
  return row.error / Math.abs(row.expected);
}

/** Statistics of every quantity, in the order in which they first appear. */
export function statisticsOf(rows: readonly Row[]): Statistics[] {
  const groups = new Map<string, Row[]>();
  for (const row of rows) {
    if (row.error === null || row.quantity === notRun) continue;
    const key = `${row.quantity}\n${row.unit}`;
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return [...groups.values()].map(groupStatistics);
}

function groupStatistics(rows: readonly Row[]): Statistics {
  const errors = rows.map((row) => row.error!);
  const shares = rows.map(relativeError).filter((share) => share !== null);
  const size = (row: Row) => Math.abs(row.error!);
  const sizes = shares.map((share) => Math.abs(share));
  return {
    quantity: rows[0]!.quantity,
    unit: rows[0]!.unit,
    count: rows.length,
    mean: mean(errors),
    rms: rms(errors),
    worst: rows.reduce((worst, row) => (size(row) > size(worst) ? row : worst)),
    relative:
      shares.length === 0
        ? null
        : { mean: mean(shares), meanSize: mean(sizes), rms: rms(shares), largest: Math.max(...sizes) },
    stated: rows.filter((row) => row.uncertainty !== null).length,
    within: rows.filter((row) => row.within === true).length,
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function rms(values: readonly number[]): number {
  return Math.sqrt(mean(values.map((value) => value * value)));
}
