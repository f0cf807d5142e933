import { type FindingFilter, type FindingLine, firstFilter, type Standing, standings } from "#state/finding-lines";

const severities: readonly FindingFilter["severity"][] = ["hazard", "damage", "shortfall", "nuisance"];
const certainties: readonly FindingFilter["certainty"][] = [
  "read",
  "second-hand",
  "derived here",
  "common practice",
  "from memory",
];

interface FiltersProps {
  readonly lines: readonly FindingLine[];
  readonly filter: FindingFilter;
  readonly onFilter: (filter: FindingFilter) => void;
}

/** Which findings are shown: how they stand, what is at stake, of which section, how sure the limit is. */
export function FindingFilters({ lines, filter, onFilter }: FiltersProps) {
  const sections = [...new Set(lines.toSorted((a, b) => a.index - b.index).map(({ section }) => section))];
  const isFirst = Object.entries(firstFilter).every(([name, value]) => filter[name as keyof FindingFilter] === value);
  return (
    <fieldset className="finding-filters">
      <legend className="unseen">which findings are shown</legend>
      <Choice
        label="standing"
        value={filter.standing}
        first="all that stand anyhow"
        choices={["to mind", ...standings] satisfies readonly ("to mind" | Standing)[]}
        onPick={(standing) => onFilter({ ...filter, standing })}
      />
      <Choice
        label="severity"
        value={filter.severity}
        first="any severity"
        choices={severities}
        onPick={(severity) => onFilter({ ...filter, severity })}
      />
      <Choice
        label="section"
        value={filter.section}
        first="any section"
        choices={sections}
        onPick={(section) => onFilter({ ...filter, section })}
      />
      <Choice
        label="certainty of the source"
        value={filter.certainty}
        first="any certainty"
        choices={certainties}
        onPick={(certainty) => onFilter({ ...filter, certainty })}
      />
      {isFirst ? null : (
        <button type="button" className="act" onClick={() => onFilter(firstFilter)}>
          as at first
        </button>
      )}
    </fieldset>
  );
}

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  /** The words of no choice. */
  readonly first: string;
  readonly choices: readonly Value[];
  readonly onPick: (value: Value) => void;
}

function Choice<Value extends string>({ label, value, first, choices, onPick }: ChoiceProps<Value>) {
  return (
    <label>
      <span className="unseen">{label}</span>
      <select
        className={value === "" ? "typed by-default" : "typed"}
        value={value}
        onChange={(event) => onPick(event.target.value as Value)}
      >
        <option value="">{first}</option>
        {choices.map((choice) => (
          <option key={choice} value={choice}>
            {choice}
          </option>
        ))}
      </select>
    </label>
  );
}
