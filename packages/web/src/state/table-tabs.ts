/** A cell as shown, taken apart for a spreadsheet: a number without separators, and its unit. */
interface Cell {
  readonly value: string;
  /** Empty for bare numbers and words. */
  readonly unit: string;
}

const amount = /^([+\-−±]?)(\p{Sc}?)(\d[\d,]*(?:\.\d+)?|\.\d+)(?:\s*(\S.*))?$/u;
/** Longer ones are words that begin with a number. */
const longestUnit = 18;

function cellOf(text: string): Cell {
  const words = text.replaceAll(/\s+/g, " ").trim();
  const [, sign = "", currency = "", digits = "", unit = ""] = amount.exec(words) ?? [];
  if (digits === "" || unit.length > longestUnit) return { value: words, unit: "" };
  const value = `${sign.replace("−", "-").replace("+", "")}${digits.replaceAll(",", "")}`;
  return { value, unit: unit === "" ? currency : unit };
}

/**
 * A table as shown, for a spreadsheet: a line each, cells apart by tabs, numbers without separators. A column whose
 * numbers carry units becomes two, so that the numbers can be reckoned with. The first row is the head.
 */
export function tableTabs(rows: readonly (readonly string[])[]): string {
  const [head = [], ...body] = rows;
  const cells = body.map((row) => row.map(cellOf));
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const hasUnit = Array.from({ length: columns }, (_, index) => cells.some((row) => (row[index]?.unit ?? "") !== ""));
  const headLine = hasUnit.flatMap((split, index) => (split ? [plain(head[index]), "unit"] : [plain(head[index])]));
  const lines = cells.map((row) =>
    hasUnit.flatMap((split, index) => {
      const { value, unit } = row[index] ?? { value: "", unit: "" };
      return split ? [value, unit] : [value];
    }),
  );
  return `${[headLine, ...lines].map((line) => line.join("\t")).join("\n")}\n`;
}

function plain(text: string | undefined): string {
  return (text ?? "").replaceAll(/\s+/g, " ").trim();
}
