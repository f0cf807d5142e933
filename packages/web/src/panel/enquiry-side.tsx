import { type ReactNode, useState } from "react";
import { contradictionsIn, leaves, neededOn, neededWords, questionsOf } from "#state/enquiry";
import { useEnquiry } from "#view/use-enquiry";
import { useWork } from "#view/use-work";
import { SizedUnit } from "./sized-unit.tsx";

/** How the enquiry stands: what is needed, what contradicts, what was assumed; and the unit that comes of it. */
export function EnquirySide({ onUnit }: { onUnit: (name: string, text: string) => void }) {
  const enquiry = useEnquiry((desk) => desk.enquiry);
  const [asked, setAsked] = useState<string | undefined>(undefined);
  const isCurrent = asked === enquiry.text;
  const work = useWork(isCurrent ? { kind: "sizing", text: enquiry.text } : undefined);
  const needed = leaves.flatMap((leaf) => neededOn(leaf, enquiry));
  const contradictions = contradictionsIn(enquiry);
  const isReady = needed.length === 0 && contradictions.length === 0;
  return (
    <aside className="enquiry-side" aria-label="how the enquiry stands">
      {needed.length === 0 ? null : (
        <Side title={`${needed.length} answers needed`}>
          {needed.map((problem) => (
            <li key={problem.path + problem.problem}>
              <button type="button" onClick={() => goToField(problem.path)}>
                {neededWords(problem)}
              </button>
            </li>
          ))}
        </Side>
      )}
      <Contradictions />
      <p className="size-it">
        <button type="button" className="size-button" disabled={!isReady} onClick={() => setAsked(enquiry.text)}>
          size the unit
        </button>
        {isReady ? null : <span className="quiet">once nothing is needed and nothing contradicts</span>}
      </p>
      {isCurrent ? <SizedUnit work={work} onUnit={onUnit} /> : null}
      <Assumed />
    </aside>
  );
}

/** Puts the hand on the first field of a path, in its fold or not. */
function goToField(path: string): void {
  const within = `[data-path="${path}"], [data-path^="${path}."]`;
  const row = document.querySelector<HTMLElement>(`.enquiry :is(${within})`);
  const fold = row?.closest("details");
  if (fold != null) fold.open = true;
  row?.querySelector<HTMLElement>("input, select")?.focus();
}

function Side({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section>
      <h3>{title}</h3>
      <ul>{children}</ul>
    </section>
  );
}

function Contradictions() {
  const enquiry = useEnquiry((desk) => desk.enquiry);
  const answer = useEnquiry((desk) => desk.answer);
  const contradictions = contradictionsIn(enquiry);
  if (contradictions.length === 0) return null;
  return (
    <Side title="What contradicts itself">
      {contradictions.map(({ words, nearest }) => (
        <li key={words}>
          <span className="failing">
            <span aria-hidden="true">◆</span> {words}
          </span>
          {nearest.map((way) => (
            <button key={way.words} type="button" onClick={() => answer([{ path: way.path, typed: way.value }])}>
              {way.words}: {way.value}
            </button>
          ))}
        </li>
      ))}
    </Side>
  );
}

/** How many open questions are shown before the rest is asked for. */
const questionsShown = 6;

function Assumed() {
  const enquiry = useEnquiry((desk) => desk.enquiry);
  const [areAll, setAll] = useState(false);
  const questions = questionsOf(enquiry);
  if (questions.length === 0) return null;
  return (
    <>
      <Side title={`${questions.length} questions open, the weightiest first`}>
        {questions.slice(0, areAll ? undefined : questionsShown).map(({ path, assumed, asks, why }) => (
          <li key={path}>
            <button type="button" onClick={() => goToField(path)}>
              {asks}
            </button>
            <small>
              assumed: <strong>{assumed}</strong>
            </small>
            <small className="quiet">{why}</small>
          </li>
        ))}
      </Side>
      {areAll || questions.length <= questionsShown ? null : (
        <button type="button" onClick={() => setAll(true)}>
          the other {questions.length - questionsShown}
        </button>
      )}
    </>
  );
}
