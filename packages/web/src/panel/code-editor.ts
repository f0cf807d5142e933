import { defaultKeymap, indentWithTab } from "@codemirror/commands";
import { yaml } from "@codemirror/lang-yaml";
import { HighlightStyle, indentUnit, syntaxHighlighting } from "@codemirror/language";
import { type Diagnostic, lintGutter, setDiagnostics } from "@codemirror/lint";
import { Annotation, EditorState, type Range, StateEffect, StateField } from "@codemirror/state";
import {
  Decoration,
  type DecorationSet,
  drawSelection,
  EditorView,
  highlightActiveLine,
  keymap,
  lineNumbers,
} from "@codemirror/view";
import { tags } from "@lezer/highlight";
import { changeBetween } from "#state/text-change";

/** What the editor tells the page. */
export interface CodeEditorEvents {
  readonly onText: (text: string) => void;
  /** Offset of the cursor, when a hand moved it. */
  readonly onCursor: (offset: number) => void;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
}

/** A text editor that shows what the page knows; the page's own history does undo and redo. */
export interface CodeEditor {
  readonly setText: (text: string) => void;
  readonly setProblems: (problems: readonly Diagnostic[]) => void;
  /** Marks the lines from one offset to another, and brings them into view unless the person is typing. */
  readonly markLines: (span: { readonly start: number; readonly end: number } | undefined) => void;
  readonly moveTo: (offset: number) => void;
  readonly close: () => void;
}

const fromPage = Annotation.define<boolean>();
const setMark = StateEffect.define<{ readonly start: number; readonly end: number } | undefined>();
const markedLine = Decoration.line({ class: "marked-line" });

const marks = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update: (current, transaction) => {
    for (const effect of transaction.effects) {
      if (effect.is(setMark))
        return effect.value === undefined ? Decoration.none : linesOf(transaction.state, effect.value);
    }
    return current.map(transaction.changes);
  },
  provide: (field) => EditorView.decorations.from(field),
});

function linesOf(state: EditorState, span: { readonly start: number; readonly end: number }): DecorationSet {
  const found: Range<Decoration>[] = [];
  const last = state.doc.lineAt(Math.min(Math.max(span.start, span.end - 1), state.doc.length)).number;
  for (let number = state.doc.lineAt(Math.min(span.start, state.doc.length)).number; number <= last; number += 1) {
    found.push(markedLine.range(state.doc.line(number).from));
  }
  return Decoration.set(found);
}

const colours = HighlightStyle.define([
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: "var(--ink)" },
  { tag: tags.comment, color: "var(--quiet)", fontStyle: "italic" },
  { tag: [tags.string, tags.content, tags.number, tags.bool], color: "var(--choice)" },
  { tag: [tags.separator, tags.punctuation], color: "var(--quiet)" },
]);

const looks = EditorView.theme({
  "&": { height: "100%", fontSize: "12.5px", color: "var(--choice)", backgroundColor: "transparent" },
  "&.cm-focused": { outline: "2px solid var(--choice)", outlineOffset: "-1px" },
  ".cm-scroller": { fontFamily: "var(--mono)", lineHeight: "1.5", overflow: "auto" },
  ".cm-gutters": { backgroundColor: "transparent", color: "var(--quiet)", border: "none" },
  ".cm-activeLine": { backgroundColor: "var(--hover-tint)" },
  ".cm-activeLineGutter": { backgroundColor: "transparent" },
  ".cm-content": { caretColor: "var(--ink)" },
  ".cm-cursor": { borderLeftColor: "var(--ink)" },
  "&.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground, .cm-selectionBackground": {
    backgroundColor: "var(--choice-tint)",
  },
  ".marked-line": { boxShadow: "inset 3px 0 0 var(--choice)", backgroundColor: "var(--choice-tint)" },
  ".cm-tooltip": { backgroundColor: "var(--paper)", color: "var(--ink)", border: "1px solid var(--quiet-line)" },
  ".cm-diagnostic-error": { borderLeft: "3px solid var(--fail)" },
  ".cm-lintRange-error": { backgroundImage: "none", textDecoration: "underline wavy var(--fail) 1px" },
  ".cm-lint-marker-error": { content: "none" },
  ".cm-lint-marker": { width: "0.7em", height: "0.7em", backgroundColor: "var(--fail)", transform: "rotate(45deg)" },
});

/**
 * A YAML editor inside a shadow root: there its styles are adopted sheets, which a strict content policy lets pass.
 */
export function createCodeEditor(root: ShadowRoot, text: string, events: CodeEditorEvents): CodeEditor {
  const state = EditorState.create({ doc: text, extensions: extensionsFor(events) });
  const view = new EditorView({ state, parent: root, root });
  return {
    setText: (next) => {
      const change = changeBetween(view.state.doc.toString(), next);
      if (change === undefined) return;
      const { from, removed, inserted } = change;
      view.dispatch({
        changes: { from, to: from + removed.length, insert: inserted },
        annotations: fromPage.of(true),
      });
    },
    setProblems: (problems) => view.dispatch(setDiagnostics(view.state, within(problems, view.state.doc.length))),
    markLines: (span) => {
      view.dispatch({ effects: setMark.of(span) });
      if (span === undefined || view.hasFocus || span.start > view.state.doc.length) return;
      const { start } = span;
      // Only the editor scrolls: the page stays where the hand is.
      view.requestMeasure({
        read: () => view.lineBlockAt(Math.min(start, view.state.doc.length)).top,
        write: (top) => {
          view.scrollDOM.scrollTop = Math.max(0, top - 24);
        },
      });
    },
    moveTo: (offset) => {
      const anchor = Math.min(offset, view.state.doc.length);
      view.dispatch({ selection: { anchor }, effects: EditorView.scrollIntoView(anchor, { y: "center" }) });
      view.focus();
    },
    close: () => view.destroy(),
  };
}

function extensionsFor(events: CodeEditorEvents) {
  const step = (act: () => void) => () => {
    act();
    return true;
  };
  return [
    lineNumbers(),
    lintGutter(),
    drawSelection(),
    highlightActiveLine(),
    EditorState.tabSize.of(2),
    indentUnit.of("  "),
    yaml(),
    syntaxHighlighting(colours),
    looks,
    marks,
    EditorView.contentAttributes.of({ "aria-label": "job text", "aria-multiline": "true", tabindex: "0" }),
    keymap.of([
      { key: "Mod-z", run: step(events.onUndo), preventDefault: true },
      { key: "Mod-Shift-z", run: step(events.onRedo), preventDefault: true },
      { key: "Mod-y", run: step(events.onRedo), preventDefault: true },
      // Tab leaves the editor after Escape, so that the keyboard is never caught.
      indentWithTab,
      ...defaultKeymap,
    ]),
    EditorView.updateListener.of((update) => {
      const isOwn = update.transactions.some((transaction) => transaction.annotation(fromPage) === true);
      if (update.docChanged && !isOwn) events.onText(update.state.doc.toString());
      if (update.selectionSet && !isOwn && update.view.hasFocus) events.onCursor(update.state.selection.main.head);
    }),
  ];
}

/** Diagnostics must lie inside the text. */
function within(problems: readonly Diagnostic[], length: number): Diagnostic[] {
  return problems.map((problem) => ({
    ...problem,
    from: Math.min(problem.from, length),
    to: Math.min(Math.max(problem.to, problem.from), length),
  }));
}
