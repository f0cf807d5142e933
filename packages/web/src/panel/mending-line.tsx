import type { FindingLine } from "#state/finding-lines";
import { useMending } from "#view/use-mending";

/** How the search for smallest fixes stands, with a hand on it. `lines` once they are of the text in hand. */
export function MendingLine({ lines }: { lines: readonly FindingLine[] | undefined }) {
  const { wanted, done, share, isHalted, halt, goOn } = useMending(lines);
  if (lines === undefined || wanted === 0 || done === wanted) return null;
  return (
    <p className="mending-line">
      <progress aria-label="looking for smallest fixes" max={wanted} value={done + (share ?? 0)} />
      <span>
        smallest fixes: {done} of {wanted}
      </span>
      <button type="button" className="act" onClick={isHalted ? goOn : halt}>
        {isHalted ? "go on" : "stop"}
      </button>
    </p>
  );
}
