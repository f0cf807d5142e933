import { useMemo } from "react";
import { assumedOn, comesLater, type Leaf, leafFields, neededOn, type Offer, offers } from "#state/enquiry";
import { type FieldRow, fieldRows, type HeadRow } from "#state/field-rows";
import { useBench } from "#view/use-bench";
import { useEnquiry } from "#view/use-enquiry";
import { DayTable } from "./day-table.tsx";
import { FieldEditor } from "./field-editor.tsx";
import { WeatherDays } from "./weather-days.tsx";

/** A leaf of the guided duty: its questions, what is needed of them marked. */
export function EnquiryLeaf({ leaf, number }: { leaf: Leaf; number: number }) {
  const catalogue = useBench((bench) => bench.catalogue);
  const enquiry = useEnquiry((desk) => desk.enquiry);
  const rows = useMemo(
    () => fieldRows(leafFields(leaf), "duty", enquiry.reading, catalogue),
    [leaf, enquiry.reading, catalogue],
  );
  const hasDays = leaf.names.includes("summer");
  const needed = neededOn(leaf, enquiry).length;
  const assumed = assumedOn(leaf, enquiry);
  return (
    <section className="leaf" aria-label={leaf.title}>
      <h3>
        <span className="leaf-number">{number}</span> {leaf.title}
        <small>{leaf.asks}</small>
        <small className={needed > 0 ? "leaf-needs" : "quiet"}>
          {needed > 0 ? `◇ ${needed} needed` : `${assumed} assumed`}
        </small>
      </h3>
      {hasDays ? (
        <>
          <WeatherDays />
          <DayTable />
        </>
      ) : null}
      <LeafRows rows={rows} />
    </section>
  );
}

type Row = FieldRow | HeadRow;

/** True for what a person has said or must say; what may rest on its default is folded, and what is hardly ever known. */
function isAsked(row: FieldRow): boolean {
  if (row.typed !== undefined || row.problems.length > 0) return true;
  return row.fallback === undefined && !comesLater(row.path);
}

/** Rows with the heads that still have something below them; a group that may be put down keeps its head. */
function withHeads(rows: readonly Row[], takes: (row: FieldRow) => boolean): readonly Row[] {
  const taken = rows.filter((row) => row.row === "field" && takes(row));
  const isHeadOf = (head: HeadRow) => (row: Row) => row.path.startsWith(`${head.path}.`);
  return rows.filter((row) => (row.row === "field" ? takes(row) : taken.some(isHeadOf(row))));
}

function LeafRows({ rows }: { rows: readonly Row[] }) {
  const offered = (row: Row) => row.row === "head" && offers.some(({ path }) => path === row.path);
  const withSaid = withHeads(rows, isAsked);
  const asked = rows.filter((row) => withSaid.includes(row) || offered(row));
  const rest = withHeads(rows, (row) => !isAsked(row));
  const folded = rest.filter((row) => row.row === "field").length;
  return (
    <>
      <div className="leaf-rows">
        {asked.map((row) =>
          row.row === "field" ? <Asked key={row.path} row={row} /> : <Head key={row.path} row={row} />,
        )}
      </div>
      {folded === 0 ? null : (
        <details className="rest">
          <summary>{folded} more, assumed or left open</summary>
          <div className="leaf-rows">
            {rest.map((row) =>
              row.row === "field" ? <Asked key={row.path} row={row} /> : <Head key={row.path} row={row} />,
            )}
          </div>
        </details>
      )}
    </>
  );
}

function Asked({ row }: { row: FieldRow }) {
  const answer = useEnquiry((desk) => desk.answer);
  return (
    <FieldEditor
      row={row}
      onEdit={(path, typed) => answer([{ path, typed: typed.trim() === "" ? undefined : typed.trim() }])}
    />
  );
}

/** The head of a group; where a group need not be there, the hand that puts it down or takes it out. */
function Head({ row }: { row: HeadRow }) {
  const answer = useEnquiry((desk) => desk.answer);
  const offer = offers.find(({ path }) => path === row.path);
  return (
    <p className={`row-head depth-${Math.min(row.depth, 2)}`} title={row.meaning}>
      {row.name}{" "}
      {offer === undefined ? (
        <span className="quiet">{row.note}</span>
      ) : (
        <button type="button" className="offer" onClick={() => answer(handOf(offer, row))}>
          {row.note === "not given" ? `there is ${offer.name}` : `there is no ${offer.name}`}
        </button>
      )}
    </p>
  );
}

function handOf(offer: Offer, row: HeadRow) {
  return row.note === "not given" ? offer.answers : [{ path: offer.path, typed: undefined }];
}
