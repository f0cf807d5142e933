import { type FormEvent, useId, useState } from "react";
import { type FindingLine, standingOf } from "#state/finding-lines";
import { ownWaiver } from "#state/waiving";
import { useBench } from "#view/use-bench";

/** Lets a rule go by name and reason, written into the job; or says who let it go, and takes that back. */
export function WaiveBlock({ line }: { line: FindingLine }) {
  const [isOpen, setOpen] = useState(false);
  const standing = standingOf(line);
  if (line.waiver !== undefined) return <LetGo line={line} />;
  if (standing !== "fails" && standing !== "advice") return null;
  return isOpen ? (
    <WaiveForm line={line} onClose={() => setOpen(false)} />
  ) : (
    <button type="button" className="act" onClick={() => setOpen(true)}>
      let it go, by name and reason
    </button>
  );
}

function LetGo({ line }: { line: FindingLine }) {
  const isOwn = useBench((bench) => ownWaiver(bench, line) !== undefined);
  const { takeWaiver } = useBench((bench) => bench.actions);
  return (
    <p className="let-go">
      let go by {line.waiver?.by}: {line.waiver?.reason}
      {isOwn ? (
        <button type="button" className="act" onClick={() => takeWaiver(line)}>
          ask it again
        </button>
      ) : (
        <span className="quiet"> (in the owner's profile)</span>
      )}
    </p>
  );
}

function WaiveForm({ line, onClose }: { line: FindingLine; onClose: () => void }) {
  const id = useId();
  const last = useBench((bench) => bench.sound?.job.waivers.at(-1)?.by) ?? "";
  const [by, setBy] = useState(last);
  const [reason, setReason] = useState("");
  const [isHere, setHere] = useState(true);
  const { waive } = useBench((bench) => bench.actions);
  const isWhole = by.trim() !== "" && reason.trim() !== "";
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    if (!isWhole) return;
    waive({ rule: line.rule, section: isHere ? line.section : undefined, by: by.trim(), reason: reason.trim() });
    onClose();
  };
  return (
    <form className="waive-form" onSubmit={onSubmit}>
      <label htmlFor={`${id}-by`}>who answers for it</label>
      <input id={`${id}-by`} value={by} maxLength={120} required onChange={(event) => setBy(event.target.value)} />
      <label htmlFor={`${id}-reason`}>why it may stay so</label>
      <textarea
        id={`${id}-reason`}
        value={reason}
        maxLength={400}
        rows={2}
        required
        onChange={(event) => setReason(event.target.value)}
      />
      {line.index < 0 ? null : (
        <label className="tick">
          <input type="checkbox" checked={isHere} onChange={(event) => setHere(event.target.checked)} /> for{" "}
          {line.section} alone
        </label>
      )}
      <p>
        <button type="submit" className="act" disabled={!isWhole}>
          let it go
        </button>
        <button type="button" className="act" onClick={onClose}>
          keep asking it
        </button>
      </p>
    </form>
  );
}
