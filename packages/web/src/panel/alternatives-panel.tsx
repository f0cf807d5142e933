import { isRatedCoil } from "@oncethrough/engine/design/choosable";
import type { FanSectionRating } from "@oncethrough/engine/section/fan/rate";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import { useMemo, useState } from "react";
import { sectionPath } from "#state/bench-state";
import { type Choice, type Choices, choicesAsTabs, sortedChoices } from "#state/choices";
import { coilChoices } from "#state/coil-choices";
import { fanChoices } from "#state/fan-choices";
import { filterChoices } from "#state/filter-choices";
import { ratedCoilChoices } from "#state/rated-coil-choices";
import { ChoicePlotView } from "#view/choice-plot-view.tsx";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";
import { useWork, type Work } from "#view/use-work";
import type {
  AlternativesTask,
  CoilAlternatives,
  FanAlternatives,
  FilterAlternatives,
  RatedCoilAlternatives,
} from "#work/task";
import "./alternatives.css";
import { ChoiceTable } from "./choice-table.tsx";
import { LimitRows } from "./limit-rows.tsx";
import { WorkWords } from "./work-words.tsx";

type Alternatives = CoilAlternatives | RatedCoilAlternatives | FanAlternatives | FilterAlternatives;

/** Other ways to build the section in hand: limits, table and plot. */
export default function AlternativesPanel({ index }: { index: number }) {
  const sound = useBench((bench) => bench.sound)!;
  const section = sound.job.unit.sections[index]!;
  const kind = kindOf(section);
  const [limits, setLimits] = useState("{}\n");
  const [areSound, setSound] = useState(true);
  const [condition, setCondition] = useState<string | undefined>(undefined);
  const isKnown = sound.job.conditions.some(({ key }) => key === condition);
  const task: AlternativesTask = {
    ...{ kind, text: sound.text, index, limits },
    condition: isKnown ? condition : undefined,
  };
  const work: Work<typeof kind> = useWork(areSound ? task : undefined);
  return (
    <div className="alternatives">
      <div className="alternatives-head">
        <AskedAt condition={condition} onPick={setCondition} />
        <LimitRows
          kind={kind}
          text={limits}
          onEdit={(text, isSound) => {
            setLimits(text);
            setSound(isSound);
          }}
        />
      </div>
      <WorkWords work={work} isStale={work.now?.is !== "done" && work.latest !== undefined} />
      {work.latest === undefined ? null : <Found index={index} result={work.latest} />}
    </div>
  );
}

function kindOf({ kind, behaviour }: UnitSection): AlternativesTask["kind"] {
  if (kind === "filter bank") return "filter alternatives";
  if (behaviour.role === "fan") return "fan alternatives";
  return isRatedCoil(kind) ? "rated coil alternatives" : "coil alternatives";
}

/** The condition at which alternatives are judged. */
function AskedAt({ condition, onPick }: { condition: string | undefined; onPick: (key: string | undefined) => void }) {
  const conditions = useBench((bench) => bench.sound?.job.conditions) ?? [];
  return (
    <label className="asked-at">
      <span>judged at</span>
      <select
        className={condition === undefined ? "typed by-default" : "typed"}
        value={condition ?? ""}
        onChange={(event) => onPick(event.target.value === "" ? undefined : event.target.value)}
      >
        <option value="">the condition that asks most</option>
        {conditions
          .filter(({ flow }) => flow.mode !== "fan stopped")
          .map(({ key, name }) => (
            <option key={key} value={key}>
              {name}
            </option>
          ))}
      </select>
    </label>
  );
}

function useChoices(index: number, result: Alternatives): Choices {
  const sound = useBench((bench) => bench.sound)!;
  const system = useBench((bench) => bench.system);
  return useMemo(() => {
    const section = sound.job.unit.sections[index]!;
    if ("choice" in result) return coilChoices(section, result, system);
    if ("ratedChoice" in result) return ratedCoilChoices(section, result, system);
    if ("filters" in result) return filterChoices(section, result);
    const record = sound.book.rating(result.at.key)?.sections[index];
    return fanChoices(section, result, record as FanSectionRating | undefined);
  }, [sound, system, index, result]);
}

function Found({ index, result }: { index: number; result: Alternatives }) {
  const choices = useChoices(index, result);
  const [sorting, setSorting] = useState({ column: choices.plot.x.column, way: "ascending" } as Parameters<
    typeof sortedChoices
  >[1]);
  const [inHand, setInHand] = useState<string | undefined>(undefined);
  const system = useBench((bench) => bench.system);
  const { editFields } = useBench((bench) => bench.actions);
  const sorted = useMemo(() => sortedChoices(choices.list, sorting), [choices, sorting]);
  const take = (choice: Choice) => {
    const path = sectionPath(index);
    editFields(
      `take ${choice.name}`,
      choice.changes.map(({ field, typed }) => ({ path: `${path}.${field}`, typed })),
    );
  };
  return (
    <>
      <p className="found" role="status">
        {choices.found}
        <TakeAway of="table" name="the alternatives" table={() => choicesAsTabs(choices, sorted, system)} />
      </p>
      <div className="alternatives-body">
        <ChoiceTable
          choices={choices}
          list={sorted}
          sorting={sorting}
          onSort={setSorting}
          inHand={inHand}
          onHand={setInHand}
          onTake={take}
        />
        <ChoicePlotView choices={choices} inHand={inHand} onHand={setInHand} onTake={take} />
      </div>
      <p className="quiet remarks">{choices.remarks.join("; ")}</p>
    </>
  );
}
