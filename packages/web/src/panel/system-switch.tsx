import { useBench } from "#view/use-bench";

const systems = [
  { system: "ip", words: "IP", name: "inch-pound units" },
  { system: "si", words: "SI", name: "international units" },
] as const;

/** Inch-pound or international units, for everything that is read; what is typed keeps its own units. */
export function SystemSwitch() {
  const current = useBench((bench) => bench.system);
  const { setSystem } = useBench((bench) => bench.actions);
  return (
    <fieldset className="system-switch">
      <legend className="unseen">units of measure</legend>
      {systems.map(({ system, words, name }) => (
        <label key={system} title={name}>
          <input
            type="radio"
            name="system"
            className="unseen"
            checked={current === system}
            onChange={() => setSystem(system)}
          />
          <span>{words}</span>
        </label>
      ))}
    </fieldset>
  );
}
