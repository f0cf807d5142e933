import { notRun, type Row } from "./row.ts";
import { relativeError, type Statistics, statisticsOf } from "./statistics.ts";

/** The rows of a file and its statistics as text: a line per case and figure, then a line per quantity. */
export function printRows(file: string, rows: readonly Row[]): string {
  const caseWidth = Math.max(...rows.map((row) => row.case.length));
  const quantityWidth = Math.max(...rows.map((row) => row.quantity.length));
  const lines = rows.map((row) => printRow(row, caseWidth, quantityWidth));
  return `${[file, ...lines, ...printStatistics(rows)].join("\n")}\n`;
}

function printRow(row: Row, caseWidth: number, quantityWidth: number): string {
  const name = `  ${row.case.padEnd(caseWidth)}  `;
  if (row.reason !== undefined) {
    const quantity = row.quantity === notRun ? "" : `${row.quantity}: `;
    return `${name}${quantity}${notRun}: ${row.reason}${noteOf(row)}`;
  }
  const share = relativeError(row);
  const parts = [
    row.quantity.padEnd(quantityWidth),
    `expected ${figure(row.expected!).padStart(11)}`,
    `got ${figure(row.got!).padStart(11)}`,
    `error ${signed(row.error!).padStart(11)} ${row.unit}`,
  ];
  if (share !== null) parts.push(`(${percent(share)})`);
  if (row.uncertainty !== null) parts.push(`${row.within ? "within" : "outside"} ±${figure(row.uncertainty)}`);
  return name + parts.join("  ") + noteOf(row);
}

function noteOf(row: Row): string {
  return row.note === undefined ? "" : `; ${row.note}`;
}

function printStatistics(rows: readonly Row[]): string[] {
  const figures = rows.filter((row) => row.error !== null);
  const cases = new Set(rows.map((row) => row.case)).size;
  const missed = rows.length - figures.length;
  const stated = figures.filter((row) => row.uncertainty !== null);
  const within = stated.filter((row) => row.within === true);
  const total = [
    `${count(cases, "case")}, ${count(figures.length, "figure")}`,
    `${missed} not run`,
    stated.length > 0 ? `${within.length} of ${stated.length} within the stated uncertainty` : "no uncertainty stated",
  ];
  return [`  ${total.join("; ")}`, ...statisticsOf(rows).map(printQuantity)];
}

function printQuantity(s: Statistics): string {
  const parts = [
    `  ${s.quantity} (${s.unit}): ${count(s.count, "figure")}`,
    `mean error ${signed(s.mean)}`,
    `rms ${figure(s.rms)}`,
    `worst ${signed(s.worst.error!)} at ${s.worst.case}`,
  ];
  if (s.relative) {
    const { mean, meanSize, rms, largest } = s.relative;
    const [size, root, most] = [meanSize, rms, largest].map((share) => percent(share).replace("+", ""));
    parts.push(`relative: mean ${percent(mean)}, mean of absolute errors ${size}, rms ${root}, largest ${most}`);
  }
  if (s.stated > 0) parts.push(`${s.within} of ${s.stated} within the stated uncertainty`);
  return parts.join("; ");
}

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? "" : "s"}`;
}

function figure(value: number): string {
  return String(Number(value.toPrecision(6)));
}

function signed(value: number): string {
  const text = String(Number(value.toPrecision(3)));
  return value > 0 ? `+${text}` : text;
}

function percent(share: number): string {
  const value = 100 * share;
  return `${value > 0 ? "+" : ""}${Math.abs(value) < 1e-9 ? "0" : Number(value.toPrecision(2))} %`;
}
