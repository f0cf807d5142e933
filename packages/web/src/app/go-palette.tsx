import { type KeyboardEvent, useContext, useEffect, useMemo, useRef, useState } from "react";
import { foundEntries, type GoEntry, goEntries } from "#state/go-entries";
import { BenchContext } from "#view/use-bench";
import { useFindingLines } from "#view/use-findings";
import "./go-palette.css";
import { type GoHands, useGoHands } from "./go-hands.ts";

/** Entries that are shown at once. */
const most = 40;

interface PaletteProps {
  readonly hands: Pick<GoHands, "save">;
  readonly onClose: () => void;
}

/** Search and go: sections, findings, figures, fields, conditions and what the page can do, by a few letters. */
export default function GoPalette({ hands, onClose }: PaletteProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const bench = useContext(BenchContext)!;
  const findings = useFindingLines();
  const entries = useMemo(() => goEntries(bench.getState(), bench.getState().catalogue, findings), [bench, findings]);
  const [typed, setTyped] = useState("");
  const [place, setPlace] = useState(0);
  const go = useGoHands(hands);
  const found = useMemo(() => foundEntries(entries, typed, most), [entries, typed]);
  useEffect(() => dialog.current?.showModal(), []);
  useEffect(() => {
    document.getElementById(`go-${place}`)?.scrollIntoView({ block: "nearest" });
  }, [place]);
  const choose = (entry: GoEntry | undefined) => {
    if (entry === undefined) return;
    dialog.current?.close();
    // The browser tells of the closing later; who types on at once may ask for the palette again before that.
    onClose();
    go(entry.way);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (event.key === "Enter") choose(found[place]);
    if (by === 0) return;
    event.preventDefault();
    setPlace((now) => (now + by + found.length) % Math.max(1, found.length));
  };
  return (
    <dialog ref={dialog} className="dialog go-palette" aria-label="search and go" onClose={onClose}>
      <input
        role="combobox"
        aria-label="search and go"
        aria-expanded={found.length > 0}
        aria-controls="go-list"
        aria-activedescendant={found[place] === undefined ? undefined : `go-${place}`}
        aria-autocomplete="list"
        placeholder="a section, a figure, a finding, something to do …"
        autoComplete="off"
        spellCheck={false}
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value);
          setPlace(0);
        }}
        onKeyDown={onKeyDown}
      />
      <div id="go-list" role="listbox" aria-label="what was found">
        {found.map((entry, index) => (
          <GoLine key={entry.key} entry={entry} index={index} isOn={index === place} onGo={() => choose(entry)} />
        ))}
      </div>
      {found.length === 0 ? <p className="quiet">nothing of that name in this job</p> : null}
    </dialog>
  );
}

interface GoLineProps {
  readonly entry: GoEntry;
  readonly index: number;
  readonly isOn: boolean;
  readonly onGo: () => void;
}

function GoLine({ entry, index, isOn, onGo }: GoLineProps) {
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the search line's, which names this as active
    // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the search line
    <div id={`go-${index}`} role="option" aria-selected={isOn} className="go-line" onClick={onGo}>
      <span className="go-kind">{entry.kind}</span>
      <span className="go-name">{entry.name}</span>
      <span className="go-detail">{entry.detail}</span>
    </div>
  );
}
