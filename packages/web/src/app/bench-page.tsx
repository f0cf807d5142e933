import { type DragEvent, lazy, Suspense, useEffect, useMemo, useState } from "react";
import { AlternativesBand } from "#panel/alternatives-band.tsx";
import { ConditionBar } from "#panel/condition-bar.tsx";
import { HeaderBar } from "#panel/header-bar.tsx";
import type { JobStore } from "#panel/job-store";
import { PartPanel } from "#panel/part-panel.tsx";
import { PriceBar } from "#panel/price-bar.tsx";
import { TextPanel } from "#panel/text-panel.tsx";
import { NotesHere, UnmetList } from "#panel/unmet-list.tsx";
import { YearBand } from "#panel/year-band.tsx";
import { isDirty } from "#state/bench-state";
import { AirwayView } from "#view/airway-view.tsx";
import { DrawnOrSaid } from "#view/drawn-or-said.tsx";
import { useBench, useFanInHand } from "#view/use-bench";
import { useSheet } from "#view/use-sheet";
import { ConflictDialog } from "./conflict-dialog.tsx";
import { droppedFile } from "./file-picker.ts";
import type { Conflict, JobDesk } from "./job-desk.ts";
import { actOfKey } from "./page-keys.ts";
import { Sheets } from "./sheets.tsx";
import { toNextTheme, useTheme } from "./theme.ts";
import "./page.css";
import "./print.css";
import { SheetHead } from "./sheet-head.tsx";

/** What judges the machine comes right behind the page. */
const FindingsPanel = lazy(() => import("#panel/findings-panel.tsx"));
/** The chart is drawn below the machine, right behind it. */
const PsychrometricView = lazy(() => import("#view/psychrometric-view.tsx"));
/** Asked for when the fan is first taken in hand. */
const FanCharts = lazy(() => import("#view/fan-charts.tsx"));

/** The whole page: the machine, what it does to the air, and everything a hand can reach. */
export function BenchPage({ desk }: { desk: JobDesk }) {
  const lay = useSheet((sheets) => sheets.lay);
  const [conflict, setConflict] = useState<Conflict | undefined>(undefined);
  const { undo, redo } = useBench((bench) => bench.actions);
  const isLocal = useBench((bench) => desk.server === undefined || bench.file.origin === "disk");
  const store = useMemo<JobStore>(
    () => ({
      save: () => void desk.save().then(setConflict),
      canSaveAgain: isLocal,
    }),
    [desk, isLocal],
  );
  useEffect(() => {
    const acts = {
      save: store.save,
      open: () => lay({ name: "open a job" }),
      search: () => lay({ name: "search and go" }),
      keys: () => lay({ name: "keys" }),
      undo,
      redo,
    };
    const onKeyDown = (event: KeyboardEvent) => {
      const act = actOfKey(event);
      if (act === undefined) return;
      event.preventDefault();
      acts[act]();
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, [store, lay, undo, redo]);
  useTitle();
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    void droppedFile(event.dataTransfer).then((file) => file && desk.openChosen(file));
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping a file is also done by the open dialog
    <div className="page" onDragOver={(event) => event.preventDefault()} onDrop={onDrop}>
      <SheetHead />
      <HeaderBar store={store} />
      <ConditionBar />
      <main>
        <AirwayView />
        <PartPanel />
        <div className="lower">
          <AlternativesBand />
          <YearBand />
          <div className="lower-left">
            <ChartInHand />
            <TextPanel />
          </div>
          <div className="lower-right">
            <UnmetList />
            <DrawnOrSaid what="what is found" attempt={undefined}>
              <Suspense fallback={<p className="quiet">judging …</p>}>
                <FindingsPanel />
              </Suspense>
            </DrawnOrSaid>
            <NotesHere />
          </div>
        </div>
      </main>
      <PageFoot />
      <PriceBar />
      <Sheets desk={desk} save={store.save} />
      {conflict === undefined ? null : (
        <ConflictDialog
          conflict={conflict}
          onSettle={(keep) => void desk.settle(conflict, keep).then(setConflict)}
          onClose={() => setConflict(undefined)}
        />
      )}
    </div>
  );
}

/** The fan's charts while the fan is in hand, else the psychrometric one. */
function ChartInHand() {
  const isFan = useFanInHand();
  return (
    <Suspense fallback={<p className="quiet">one moment</p>}>{isFan ? <FanCharts /> : <PsychrometricView />}</Suspense>
  );
}

/** The window says which unit is on the bench, and whether it is saved. */
function useTitle(): void {
  const tag = useBench((bench) => bench.sound?.job.tag ?? bench.file.name);
  const dirty = useBench(isDirty);
  useEffect(() => {
    document.title = `${dirty ? "● " : ""}${tag} · Oncethrough`;
  }, [tag, dirty]);
}

function PageFoot() {
  const notice = useBench((bench) => bench.notice);
  const theme = useTheme();
  const lay = useSheet((sheets) => sheets.lay);
  return (
    <footer className="page-foot">
      <p role="status" className={notice?.weight ?? ""}>
        {notice?.text}
      </p>
      <p className="quiet">
        component data is generic, marked <em>typical</em>: not a maker's rating
      </p>
      <button type="button" onClick={() => lay({ name: "search and go" })}>
        search and go <span className="quiet">Ctrl K</span>
      </button>
      <button type="button" onClick={() => lay({ name: "keys" })}>
        keys
      </button>
      <button type="button" onClick={() => lay({ name: "tour" })}>
        tour
      </button>
      <button type="button" onClick={() => lay({ name: "help", topic: "sections/duty" })}>
        help
      </button>
      <button type="button" onClick={toNextTheme}>
        {theme === "system" ? "light and dark as the system" : theme}
      </button>
    </footer>
  );
}
