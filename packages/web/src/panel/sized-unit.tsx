import { jobFileName } from "#state/enquiry";
import { useEnquiry } from "#view/use-enquiry";
import type { Work } from "#view/use-work";
import type { SizingResult } from "#work/task";
import { WorkWords } from "./work-words.tsx";

/** What sizing came to: the unit with every choice and its limit, or what stands in the way. */
export function SizedUnit({ work, onUnit }: { work: Work<"sizing">; onUnit: (name: string, text: string) => void }) {
  const tag = useEnquiry((desk) => desk.enquiry.reading.duty?.tag) ?? "";
  const { now } = work;
  if (now?.is !== "done") return <WorkWords work={work} isStale={false} />;
  const { result } = now;
  if (result.outcome !== "unit") return <Obstacles result={result} />;
  return (
    <section className="sized" aria-label="the unit found">
      <p className="size-it">
        <button type="button" className="size-button" onClick={() => onUnit(jobFileName(tag), result.text)}>
          put it on the bench
        </button>
        <span className="quiet">{result.choices.length} choices made, every rule of the owner kept</span>
      </p>
      <details className="rest">
        <summary>why it is as it is</summary>
        <dl className="choices-made">
          {result.choices.map(({ of, chosen, because }) => (
            <div key={of + chosen}>
              <dt>
                {of}: <strong>{chosen}</strong>
              </dt>
              <dd className="quiet">{because}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

function Obstacles({ result }: { result: SizingResult }) {
  return (
    <section className="sized" aria-label="why no unit was found">
      <h3 className="failing">◆ no unit holds this duty</h3>
      <ul>
        {result.contradictions.map(({ words, nearest, why }) => (
          <li key={words}>
            {words}
            {nearest.map((way) => (
              <p key={way.path + way.value} className="quiet">
                {way.words}:{" "}
                <code>{[way, ...(way.also ?? [])].map(({ path, value }) => `${path}: ${value}`).join(", ")}</code>
              </p>
            ))}
            {why !== undefined && <p className="quiet">{why}</p>}
          </li>
        ))}
      </ul>
    </section>
  );
}
