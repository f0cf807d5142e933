import { useMemo } from "react";
import { driveFigures } from "#state/drive-figures";
import { useBench, useRating } from "#view/use-bench";

/** Drive and electrical connection of a fan section, with the caution who decides; nothing for other sections. */
export default function DriveList({ index }: { index: number }) {
  const sound = useBench((bench) => bench.sound);
  const system = useBench((bench) => bench.system);
  const solved = useBench((bench) => bench.solved);
  const key = useRating()?.condition.key;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the book grows in place; `solved` says when
  const drive = useMemo(
    () => (sound === undefined || key === undefined ? undefined : driveFigures(sound, index, key, system)),
    [sound, index, key, system, solved],
  );
  if (drive === undefined) return null;
  return (
    <section aria-label="drive and connection">
      <h3>Drive and connection</h3>
      <div className="rows">
        {drive.rows.map(([name, value]) => (
          <div key={name} className="figure">
            <span>{name}</span>
            <strong>{value}</strong>
          </div>
        ))}
      </div>
      {drive.cautions.map((caution) => (
        <p key={caution} className="quiet">
          {caution}
        </p>
      ))}
    </section>
  );
}
