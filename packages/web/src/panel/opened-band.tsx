import { type ReactNode, Suspense, useId, useState } from "react";
import { DrawnOrSaid } from "#view/drawn-or-said.tsx";
import "./opened-band.css";

interface BandProps {
  /** Name for who hears the page, and class of its own. */
  readonly label: string;
  readonly className: string;
  /** What stands on the hand that opens it, and beside it. */
  readonly title: string;
  readonly note: string;
  /** What could not be drawn, and what makes another try worth it. */
  readonly what: string;
  readonly attempt: string;
  readonly children: ReactNode;
}

/** A band across the page that is closed until somebody opens it; what is in it is asked for only then. */
export function OpenedBand({ label, className, title, note, what, attempt, children }: BandProps) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  return (
    <section className={`part opened-band ${className}`} aria-label={label}>
      <h2>
        <button
          type="button"
          className="band-opener"
          aria-expanded={isOpen}
          aria-controls={id}
          onClick={() => setOpen(!isOpen)}
        >
          <span aria-hidden="true">{isOpen ? "▾" : "▸"}</span> {title}
        </button>
        <small>{note}</small>
      </h2>
      <div id={id}>
        {isOpen ? (
          <DrawnOrSaid what={what} attempt={attempt}>
            <Suspense fallback={<p className="quiet">one moment</p>}>{children}</Suspense>
          </DrawnOrSaid>
        ) : null}
      </div>
    </section>
  );
}
