import { useBench } from "#view/use-bench";

/** Head of the printed sheets: whose unit, at which condition; the screen says it elsewhere. */
export function SheetHead() {
  const duty = useBench((bench) => bench.sound?.job.duty);
  const file = useBench((bench) => bench.file.name);
  const condition = useBench((bench) => bench.sound?.job.conditions.find(({ key }) => key === bench.condition)?.name);
  if (duty === undefined) return null;
  return (
    <div className="sheet-head">
      <p>
        <strong>{duty.tag}</strong>
        <span>{[duty.customer, duty.service].filter(Boolean).join(", ")}</span>
        <span className="sheet-condition">{condition}</span>
        <span className="quiet">{file.split("/").at(-1)}</span>
      </p>
    </div>
  );
}
