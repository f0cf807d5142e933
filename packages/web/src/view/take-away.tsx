import { tableTabs } from "#state/table-tabs";
import "./take-away.css";
import { useBench } from "./use-bench.ts";

interface TakeAwayProps {
  /** What is taken: a table for a spreadsheet, or a picture as SVG. */
  readonly of: "table" | "picture";
  /** What it is called: the words of a notice, the name of a file. */
  readonly name: string;
  /** The table's text, or its rows with the head first; the table in the part around when left out. */
  readonly table?: () => string | readonly (readonly string[])[];
}

/**
 * Takes a table or a picture along: stands in the heading of the part that shows it, and finds it there. One and the same
 * for every view.
 */
export function TakeAway({ of, name, table }: TakeAwayProps) {
  const { notice } = useBench((bench) => bench.actions);
  const say = (done: Promise<unknown>, words: string) =>
    void done
      .then(() => notice({ text: words, weight: "information" }))
      .catch((error: unknown) => notice({ text: `not copied: ${String(error)}`, weight: "caution" }));
  const copyTable = (hand: Element) =>
    say(copyText(tabsOf(table?.() ?? shownRows(hand))), `copied ${name} for a spreadsheet`);
  const copyPicture = (hand: Element) => say(pictureBeside(hand, name).then(copyText), `copied ${name} as SVG`);
  const savePicture = (hand: Element) =>
    say(
      pictureBeside(hand, name).then((text) => saveText(`${name.replaceAll(/[^\w.-]+/g, "-")}.svg`, text)),
      `saved ${name} as SVG`,
    );
  return (
    <span className="take-away" data-hand="">
      {of === "table" ? (
        <button type="button" aria-label={`copy table: ${name}`} onClick={(event) => copyTable(event.currentTarget)}>
          copy table
        </button>
      ) : (
        <>
          <button type="button" aria-label={`copy svg: ${name}`} onClick={(event) => copyPicture(event.currentTarget)}>
            copy svg
          </button>
          <button type="button" aria-label={`svg file: ${name}`} onClick={(event) => savePicture(event.currentTarget)}>
            svg file
          </button>
        </>
      )}
    </span>
  );
}

function copyText(text: string): Promise<void> {
  return navigator.clipboard.writeText(text);
}

function tabsOf(table: string | readonly (readonly string[])[]): string {
  return typeof table === "string" ? table : tableTabs(table);
}

/** The rows of the table in the part around a hand, as they are read: words for the eye alone and hands are left out. */
function shownRows(hand: Element): readonly (readonly string[])[] {
  const rows = partAround(hand)?.querySelectorAll("tr") ?? [];
  return [...rows].map((row) => [...row.children].map(cellText));
}

function cellText(cell: Element): string {
  const copy = cell.cloneNode(true) as Element;
  for (const each of [...copy.querySelectorAll("[aria-hidden], .unseen, [data-hand]")]) each.remove();
  return copy.textContent ?? "";
}

async function pictureBeside(hand: Element, name: string): Promise<string> {
  const svg = partAround(hand)?.querySelector("svg");
  if (svg === null || svg === undefined) throw new Error("there is no picture");
  const { pictureFile } = await import("./take-picture.ts");
  return pictureFile(svg, name);
}

function partAround(hand: Element): Element | null {
  return hand.closest("section, figure, [data-part]");
}

function saveText(name: string, text: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}
