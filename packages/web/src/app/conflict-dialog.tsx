import { useEffect, useRef } from "react";
import type { Conflict } from "./job-desk.ts";

interface ConflictProps {
  readonly conflict: Conflict;
  readonly onSettle: (keep: "mine" | "theirs") => void;
  readonly onClose: () => void;
}

/** The file has changed on the disk since it was read: the person says which text stays. */
export function ConflictDialog({ conflict, onSettle, onClose }: ConflictProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="dialog" aria-label="the file has changed" onClose={onClose}>
      <h2>{conflict.name} has changed on the disk</h2>
      <p>Nothing has been written. Which text is to stay?</p>
      <p className="dialog-foot">
        <button type="button" onClick={() => onSettle("mine")}>
          mine, over the one on the disk
        </button>
        <button type="button" onClick={() => onSettle("theirs")}>
          the one on the disk
        </button>
        <button type="button" onClick={onClose}>
          decide later
        </button>
      </p>
    </dialog>
  );
}
