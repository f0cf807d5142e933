import { useEffect, useRef, useState } from "react";
import { leaves } from "#state/enquiry";
import { createEnquiryStore, type EnquiryStore } from "#state/enquiry-store";
import { useBench } from "#view/use-bench";
import { EnquiryContext, useEnquiry } from "#view/use-enquiry";
import "./enquiry.css";
import { EnquiryLeaf } from "./enquiry-leaf.tsx";
import { EnquirySide } from "./enquiry-side.tsx";

interface SheetProps {
  readonly onClose: () => void;
  /** A unit has been sized: its job text, to be put on the bench. */
  readonly onUnit: (name: string, text: string) => void;
}

/** A duty from nothing to a unit, asked leaf by leaf; beside it what is still needed, what is assumed, what contradicts. */
export default function EnquirySheet({ onClose, onUnit }: SheetProps) {
  const catalogue = useBench((bench) => bench.catalogue);
  const [store] = useState<EnquiryStore>(() => createEnquiryStore(catalogue, localStorage));
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <EnquiryContext value={store}>
      <dialog ref={dialog} className="dialog enquiry" aria-labelledby="enquiry-title" onClose={onClose}>
        <SheetHead onClose={onClose} />
        <div className="enquiry-body">
          <div className="leaves">
            {leaves.map((leaf, index) => (
              <EnquiryLeaf key={leaf.title} leaf={leaf} number={index + 1} />
            ))}
          </div>
          <EnquirySide
            onUnit={(name, text) => {
              store.getState().finish();
              onUnit(name, text);
            }}
          />
        </div>
      </dialog>
    </EnquiryContext>
  );
}

function SheetHead({ onClose }: { onClose: () => void }) {
  const { undo, clear } = useEnquiry((desk) => desk);
  const hasPast = useEnquiry((desk) => desk.past.length > 0);
  const refused = useEnquiry((desk) => desk.enquiry.refused);
  return (
    <header className="enquiry-head">
      <h2 id="enquiry-title">A new unit</h2>
      <p className="quiet">
        say what is known; what nobody says is assumed and listed. Every answer is kept on this computer.
      </p>
      <p className="failing" role="status">
        {refused === undefined ? "" : `not written: ${refused}`}
      </p>
      <p className="steps">
        <button type="button" disabled={!hasPast} onClick={undo}>
          undo
        </button>
        <button type="button" onClick={clear}>
          blank
        </button>
        <button type="button" onClick={onClose}>
          close
        </button>
      </p>
    </header>
  );
}
