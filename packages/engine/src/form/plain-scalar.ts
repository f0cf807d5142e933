import { isMap, isSeq, type YAMLMap, type YAMLSeq } from "yaml";
import { scalarText, type Written } from "./reading.ts";
import { takeApart } from "./source.ts";
import { entriesOf } from "./tree.ts";

/** How a value is written: in the quotes it had, plain where that says the same, otherwise in quotes. */
export function writtenScalar(value: string, inBraces: boolean, oldType: string | undefined): string {
  const single = `'${value.replace(/'/g, "''")}'`;
  const oneLine = !/[\n\r\t]/.test(value);
  if (oldType === "QUOTE_DOUBLE") return JSON.stringify(value);
  if (oldType === "QUOTE_SINGLE" && oneLine) return single;
  if (value !== "" && oneLine && saysTheSame(value, inBraces)) return value;
  return oneLine && !/\p{C}/u.test(value) ? single : JSON.stringify(value);
}

/** True when the characters, written without quotes, are read as the very same value. */
function saysTheSame(value: string, inBraces: boolean): boolean {
  const { document, problems } = takeApart(inBraces ? `[${value}]` : `name: ${value}\nnext: 1\n`);
  const root = document?.contents;
  if (problems.length > 0) return false;
  if (isSeq(root)) return root.items.length === 1 && scalarText((root as YAMLSeq.Parsed).items[0] as Written) === value;
  if (!isMap(root)) return false;
  const entries = entriesOf(root as YAMLMap.Parsed);
  return entries.length === 2 && scalarText(entries[0]?.value ?? null) === value;
}
