import type { Diagnostic } from "@codemirror/lint";
import { problemText } from "@oncethrough/engine/form/problem";
import { useContext, useEffect, useRef } from "react";
import { sectionIndex, sectionPath } from "#state/bench-state";
import type { Bench } from "#state/bench-store";
import { BenchContext } from "#view/use-bench";
import { type CodeEditor, createCodeEditor } from "./code-editor.ts";
import { problemSpan } from "./problem-place.ts";

/** The job text in its editor, kept in step with the bench both ways. */
export default function CodeField({ onReady }: { onReady: (editor: CodeEditor | undefined) => void }) {
  const host = useRef<HTMLDivElement>(null);
  const store = useContext(BenchContext);
  useEffect(() => {
    if (host.current === null || store === undefined) return;
    const root = host.current.shadowRoot ?? host.current.attachShadow({ mode: "open" });
    const bench = store.getState();
    const { actions } = bench;
    const editor = createCodeEditor(root, bench.text, {
      onText: actions.typeText,
      onCursor: (offset) => pickAt(store.getState(), offset),
      onUndo: actions.undo,
      onRedo: actions.redo,
    });
    show(editor, bench, undefined);
    onReady(editor);
    const stop = store.subscribe((now, before) => show(editor, now, before));
    return () => {
      stop();
      onReady(undefined);
      editor.close();
    };
  }, [store, onReady]);
  return <div className="code-field" ref={host} />;
}

function show(editor: CodeEditor, now: Bench, before: Bench | undefined): void {
  if (now.text !== before?.text) editor.setText(now.text);
  if (now.reading !== before?.reading) editor.setProblems(diagnosticsOf(now));
  if (now.picked !== before?.picked || now.reading !== before?.reading) {
    const place = now.reading.places(now.picked);
    editor.markLines(place);
  }
}

function diagnosticsOf({ text, reading }: Bench): readonly Diagnostic[] {
  return reading.problems.map((problem) => {
    const { from, to } = problemSpan(text, problem);
    return { from, to, severity: problem.severity, message: problemText(problem) };
  });
}

/** Picks the part in which the cursor stands. */
function pickAt(bench: Bench, offset: number): void {
  const sections = bench.sound?.job.unit.sections ?? [];
  const paths = ["duty", "unit.casing", ...sections.map((_, index) => sectionPath(index))];
  const path = paths.find((each) => {
    const place = bench.reading.places(each);
    return place !== undefined && place.start <= offset && offset <= place.end;
  });
  if (path !== undefined && (path !== bench.picked || sectionIndex(path) === undefined)) bench.actions.pick(path);
}
