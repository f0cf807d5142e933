import { bibliography } from "./help-sources.ts";

/** Sources with their publications in words: `key place; key place`. */
export function SourceLines({ source }: { source: string }) {
  return (
    <ul className="sources" aria-label="sources">
      {source.split("; ").map((each) => {
        const [key = "", ...place] = each.split(" ");
        const known = bibliography[key];
        return (
          <li key={each}>
            {known === undefined ? (
              each
            ) : (
              <>
                <cite>{known.title}</cite>
                {known.author === "" ? "" : `, ${known.author}`}
                {known.year === null ? "" : `, ${known.year}`}
                {place.length === 0 ? "" : `: ${place.join(" ")}`}
              </>
            )}
          </li>
        );
      })}
    </ul>
  );
}
