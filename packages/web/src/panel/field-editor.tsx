import { type KeyboardEvent, useId, useRef, useState } from "react";
import type { FieldRow } from "#state/field-rows";
import { useBench } from "#view/use-bench";

/** One field, edited where it stands, as typed; an empty field takes its default. `onEdit` for fields outside of the job. */
export function FieldEditor({ row, onEdit }: { row: FieldRow; onEdit?: (path: string, typed: string) => void }) {
  const { editField } = useBench((bench) => bench.actions);
  const edit = onEdit ?? editField;
  const id = useId();
  const problem = row.problems.find((each) => each.severity === "error") ?? row.problems[0];
  const describedBy = problem === undefined ? undefined : `${id}-problem`;
  return (
    <div className={`field${problem === undefined ? "" : " field-failing"}`} data-path={row.path}>
      <label htmlFor={id} title={row.allowed === "" ? row.meaning : `${row.meaning}; ${row.allowed}`}>
        {row.name}
      </label>
      {row.control === "choice" ? (
        <ChoiceInput row={row} id={id} describedBy={describedBy} edit={edit} />
      ) : (
        <LineInput row={row} id={id} describedBy={describedBy} edit={edit} />
      )}
      <FieldHint row={row} edit={edit} />
      {problem === undefined ? null : (
        <p id={describedBy} className="field-problem">
          <span aria-hidden="true">◆</span> {problem.problem}
          {problem.allowed === "" ? null : <span className="quiet">; allowed: {problem.allowed}</span>}
        </p>
      )}
    </div>
  );
}

/** While a field is in hand: what it is, its range, what stands where nothing is typed, and the way back to that. */
function FieldHint({ row, edit }: Pick<InputProps, "row" | "edit">) {
  const { meaning, allowed, fallback, typed, canOmit } = row;
  const words = [
    meaning,
    ...(allowed === "" ? [] : [allowed]),
    ...(fallback === undefined ? [] : [`by default ${fallback}`]),
  ];
  return (
    <p className="field-hint">
      {words.join("; ")}
      {typed === undefined || !canOmit ? null : (
        <button type="button" className="act" onClick={() => edit(row.path, "")}>
          {fallback === undefined ? "leave it out" : `back to ${fallback}`}
        </button>
      )}
    </p>
  );
}

interface InputProps {
  readonly row: FieldRow;
  readonly id: string;
  readonly describedBy: string | undefined;
  readonly edit: (path: string, typed: string) => void;
}

/** A line of text that is taken over by Enter or on leaving; Escape gives it back as it was. */
function LineInput({ row, id, describedBy, edit }: InputProps) {
  const [typed, setTyped] = useState<string | undefined>(undefined);
  const isGivenUp = useRef(false);
  const shown = row.typed ?? "";
  const value = typed ?? shown;
  const take = () => {
    if (!isGivenUp.current && typed !== undefined && typed.trim() !== shown) edit(row.path, typed);
    isGivenUp.current = false;
    setTyped(undefined);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === "Enter") take();
    if (event.key === "Escape") {
      isGivenUp.current = true;
      event.currentTarget.blur();
    }
  };
  return (
    <input
      id={id}
      className="typed"
      value={value}
      placeholder={row.fallback ?? "not given"}
      size={Math.max(4, Math.min(28, (value === "" ? (row.fallback ?? "not given") : value).length))}
      spellCheck={false}
      autoComplete="off"
      aria-invalid={describedBy !== undefined}
      aria-describedby={describedBy}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={take}
      onKeyDown={onKeyDown}
    />
  );
}

/** One of the words that the field takes. */
function ChoiceInput({ row, id, describedBy, edit }: InputProps) {
  const isUnknown = row.typed !== undefined && !row.choices.includes(row.typed);
  return (
    <select
      id={id}
      className={row.typed === undefined ? "typed by-default" : "typed"}
      value={row.typed ?? ""}
      aria-invalid={describedBy !== undefined}
      aria-describedby={describedBy}
      onChange={(event) => edit(row.path, event.target.value)}
    >
      <option value="">{row.fallback === undefined ? "not given" : `${row.fallback} (default)`}</option>
      {isUnknown ? <option value={row.typed}>{row.typed}</option> : null}
      {row.choices.map((choice) => (
        <option key={choice} value={choice}>
          {choice}
        </option>
      ))}
    </select>
  );
}
