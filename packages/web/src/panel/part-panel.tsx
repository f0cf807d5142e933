import { jobFields, sectionKind } from "@oncethrough/engine/job/job";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import { lazy, Suspense, useMemo } from "react";
import { sectionIndex, sectionPath } from "#state/bench-state";
import { type FieldRow, fieldRows, type HeadRow } from "#state/field-rows";
import { sectionFigures, unitFigures } from "#state/figures";
import { type HelpTopic, topicOfKind } from "#state/help-topic";
import { useBench, useRating } from "#view/use-bench";
import { useSheet } from "#view/use-sheet";
import { FieldEditor } from "./field-editor.tsx";
import { FigureList } from "./figure-list.tsx";
import { MindList } from "./mind-list.tsx";
import "./part-panel.css";

/** What prices the machine comes right behind the page. */
const OwnerPriceList = lazy(() => import("./owner-price-list.tsx"));

const LargestFlowList = lazy(() => import("./largest-flow-list.tsx"));
const DriveList = lazy(() => import("./drive-list.tsx"));
const DeclaredTable = lazy(() => import("./declared-table.tsx"));
const DeclaredEntry = lazy(() => import("./declared-entry.tsx"));
const SectionFindings = lazy(() => import("./section-findings.tsx"));

const none: readonly UnitSection[] = [];

/** The part in hand: what is the person's to change, what follows, what to mind. */
export function PartPanel() {
  const picked = useBench((bench) => bench.picked);
  const index = sectionIndex(picked);
  return (
    <aside className="part-panel" aria-label="part in hand">
      <PartChoice />
      {index === undefined ? <WholePart path={picked} /> : <SectionPart index={index} />}
    </aside>
  );
}

/** Duty, cabinet or one of the sections. */
function PartChoice() {
  const sections = useBench((bench) => bench.sound?.job.unit.sections) ?? none;
  const picked = useBench((bench) => bench.picked);
  const { pick } = useBench((bench) => bench.actions);
  return (
    <label className="part-choice">
      <span className="unseen">part in hand</span>
      <select value={picked} onChange={(event) => pick(event.target.value)}>
        <option value="duty">duty</option>
        <option value="unit.casing">cabinet</option>
        <optgroup label="sections in airflow order">
          {sections.map((section, index) => (
            <option key={section.name} value={sectionPath(index)}>
              {section.name}
            </option>
          ))}
        </optgroup>
      </select>
    </label>
  );
}

function SectionPart({ index }: { index: number }) {
  const section = useBench((bench) => bench.sound?.job.unit.sections[index]);
  const unit = useBench((bench) => bench.sound?.job.unit);
  const system = useBench((bench) => bench.system);
  const rating = useRating();
  const figures = useMemo(
    () => (unit === undefined || rating === undefined ? [] : sectionFigures(unit, rating, index, system)),
    [unit, rating, index, system],
  );
  if (section === undefined) return <p className="quiet">no sound job yet</p>;
  return (
    <>
      <h2>{section.name}</h2>
      <p className="quiet meaning">
        {section.behaviour.meaning} <HelpHand topic={topicOfKind(section.kind)} />
      </p>
      <Changeable path={sectionPath(index)} />
      <FigureList figures={figures} kind={section.kind} />
      <Suspense fallback={null}>
        <LargestFlowList index={index} />
      </Suspense>
      <Suspense fallback={null}>
        <DriveList index={index} />
      </Suspense>
      <Suspense fallback={null}>
        <OwnerPriceList owner={section.name} />
      </Suspense>
      <Suspense fallback={null}>
        <DeclaredTable section={section.name} />
      </Suspense>
      <Suspense fallback={null}>
        <DeclaredEntry key={section.name} index={index} />
      </Suspense>
      <Suspense fallback={null}>
        <SectionFindings section={section.name} />
      </Suspense>
      <MindList section={section.name} />
    </>
  );
}

/** What matters here, and which mistakes happen. */
function HelpHand({ topic }: { topic: HelpTopic }) {
  const lay = useSheet((sheets) => sheets.lay);
  return (
    <button type="button" className="help-hand" onClick={() => lay({ name: "help", topic })}>
      what matters
    </button>
  );
}

function WholePart({ path }: { path: string }) {
  const unit = useBench((bench) => bench.sound?.job.unit);
  const system = useBench((bench) => bench.system);
  const rating = useRating();
  const figures = useMemo(
    () => (unit === undefined || rating === undefined ? [] : unitFigures(unit, rating, system)),
    [unit, rating, system],
  );
  const field = path === "duty" ? jobFields.duty : jobFields.unit.fields.casing;
  return (
    <>
      <h2>{path === "duty" ? "duty" : "cabinet"}</h2>
      <p className="quiet meaning">
        {field.meaning} <HelpHand topic={path === "duty" ? "sections/duty" : "sections/cabinet"} />
      </p>
      <Changeable path={path} />
      <FigureList figures={figures} />
      <Suspense fallback={null}>{path === "duty" ? null : <OwnerPriceList owner="unit" />}</Suspense>
      <Suspense fallback={null}>{path === "duty" ? null : <SectionFindings section="unit" />}</Suspense>
      <MindList section="unit" />
    </>
  );
}

/** The fields of the part, edited where they stand. */
function Changeable({ path }: { path: string }) {
  const reading = useBench((bench) => bench.reading);
  const catalogue = useBench((bench) => bench.catalogue);
  const kind = useBench((bench) => {
    const index = sectionIndex(path);
    return index === undefined ? undefined : bench.sound?.job.unit.sections[index]?.kind;
  });
  const rows = useMemo(() => {
    const whole = path === "duty" ? jobFields.duty.fields : jobFields.unit.fields.casing.fields;
    const fields = kind === undefined ? whole : (sectionKind(kind)?.fields ?? {});
    return fieldRows(fields, path, reading, catalogue);
  }, [path, reading, catalogue, kind]);
  const isShort = rows.filter(isTyped).length < 2;
  return (
    <section aria-label="yours to change">
      <h3>Yours to change</h3>
      {kind === undefined ? <Rows rows={rows} /> : <Rows rows={isShort ? rows : rows.filter(isTyped)} />}
      {kind === undefined || isShort ? null : <RestOfRows rows={rows.filter((row) => !isTyped(row))} />}
    </section>
  );
}

type Row = FieldRow | HeadRow;

/** True for what the text gives, or gives wrongly; groups stay with the fields that follow them. */
function isTyped(row: Row): boolean {
  return row.row === "head" ? row.note !== "not given" : row.typed !== undefined || row.problems.length > 0;
}

function Rows({ rows }: { rows: readonly Row[] }) {
  return (
    <div className="rows">
      {rows.map((row) =>
        row.row === "field" ? (
          <FieldEditor key={row.path} row={row} />
        ) : (
          <p key={row.path} className={`row-head depth-${Math.min(row.depth, 2)}`} title={row.meaning}>
            {row.name} {row.note === "" ? null : <span className="quiet">{row.note}</span>}
          </p>
        ),
      )}
    </div>
  );
}

/** What the text leaves to its defaults, and what it does not give. */
function RestOfRows({ rows }: { rows: readonly Row[] }) {
  const fields = rows.filter((row) => row.row === "field");
  if (fields.length === 0) return null;
  const byDefault = fields.filter((row) => row.fallback !== undefined).length;
  const words = [
    ...(byDefault > 0 ? [`${byDefault} by default`] : []),
    ...(byDefault < fields.length ? [`${fields.length - byDefault} not given`] : []),
  ];
  return (
    <details className="rest">
      <summary>{words.join(", ")}</summary>
      <Rows rows={rows} />
    </details>
  );
}
