import { useEffect, useRef, useState } from "react";
import { tourSteps } from "#state/tour-steps";
import "./tour.css";

/** A short walk over the page: a frame around what is spoken of, a few words beside. */
export default function Tour({ onClose }: { onClose: () => void }) {
  const [at, setAt] = useState(0);
  const dialog = useRef<HTMLDialogElement>(null);
  const next = useRef<HTMLButtonElement>(null);
  const step = tourSteps[at];
  useEffect(() => {
    dialog.current?.show();
    next.current?.focus();
  }, []);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === "Escape") onClose();
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, [onClose]);
  if (step === undefined) return null;
  const isLast = at === tourSteps.length - 1;
  return (
    <>
      <Frame place={step.place} />
      <dialog ref={dialog} className="tour" aria-label="tour of the page">
        <div aria-live="polite">
          <h2>{step.title}</h2>
          <p>{step.words}</p>
        </div>
        <p className="tour-hands">
          <span className="quiet">
            {at + 1} of {tourSteps.length}
          </span>
          <button type="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
            back
          </button>
          <button ref={next} type="button" onClick={() => (isLast ? onClose() : setAt(at + 1))}>
            {isLast ? "to work" : "next"}
          </button>
          <button type="button" onClick={onClose}>
            leave
          </button>
        </p>
      </dialog>
    </>
  );
}

/** A frame around a place of the page, that follows it when the page moves. */
function Frame({ place }: { place: string }) {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const aim = document.querySelector(place);
    aim?.scrollIntoView({ block: "nearest" });
    const follow = () => {
      if (aim === null || frame.current === null) return;
      const { left, top, width, height } = aim.getBoundingClientRect();
      Object.assign(frame.current.style, {
        left: `${left}px`,
        top: `${top}px`,
        width: `${width}px`,
        height: `${height}px`,
      });
    };
    follow();
    window.addEventListener("scroll", follow, true);
    window.addEventListener("resize", follow);
    return () => {
      window.removeEventListener("scroll", follow, true);
      window.removeEventListener("resize", follow);
    };
  }, [place]);
  return <div ref={frame} className="tour-frame" aria-hidden="true" />;
}
