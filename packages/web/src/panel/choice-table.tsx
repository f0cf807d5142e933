import { useEffect, useRef, useState } from "react";
import {
  type Choice,
  type ChoiceColumn,
  type ChoiceSorting,
  type Choices,
  choiceText,
  choiceUnit,
} from "#state/choices";
import { useBench } from "#view/use-bench";

interface ChoiceTableProps {
  readonly choices: Choices;
  /** Sorted. */
  readonly list: readonly Choice[];
  readonly sorting: ChoiceSorting;
  readonly onSort: (sorting: ChoiceSorting) => void;
  readonly inHand: string | undefined;
  readonly onHand: (key: string) => void;
  readonly onTake: (choice: Choice) => void;
}

/** Rows that are shown at first, and more at a time. */
const atOnce = 100;

/** Alternatives as a table: the present one on top, every other one click away. */
export function ChoiceTable(props: ChoiceTableProps) {
  const { choices, list, inHand } = props;
  const [shown, setShown] = useState(atOnce);
  const others = list.filter((choice) => choice.key !== choices.present?.key);
  const place = others.findIndex((choice) => choice.key === inHand);
  const most = Math.max(shown, place + 1);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reached by the keyboard
    <section className="choice-table" aria-label="table of alternatives" tabIndex={0}>
      <table>
        <ChoiceHead {...props} />
        <tbody>
          {others.slice(0, most).map((choice) => (
            <ChoiceRow key={choice.key} {...props} choice={choice} isPresent={false} />
          ))}
        </tbody>
      </table>
      {others.length > most ? (
        <button type="button" className="more" onClick={() => setShown(most + atOnce)}>
          {Math.min(atOnce, others.length - most)} more of {(others.length - most).toLocaleString("en-US")}
        </button>
      ) : null}
    </section>
  );
}

/** Names, units and the present choice, which stay while the others scroll. */
function ChoiceHead(props: ChoiceTableProps) {
  const { choices, sorting, onSort } = props;
  const system = useBench((bench) => bench.system);
  const turn = ({ key }: ChoiceColumn) => {
    const isAgain = sorting.column === key && sorting.way === "ascending";
    onSort({ column: key, way: isAgain ? "descending" : "ascending" });
  };
  return (
    <thead>
      <tr>
        <th scope="col">
          <span className="unseen">take</span>
        </th>
        {choices.columns.map((column) => (
          <th
            key={column.key}
            scope="col"
            className={column.quantity === "words" ? "" : "number"}
            aria-sort={sorting.column === column.key ? sorting.way : "none"}
          >
            <button type="button" title={column.meaning} onClick={() => turn(column)}>
              {column.name}
              <span aria-hidden="true">
                {sorting.column === column.key ? (sorting.way === "ascending" ? " ↑" : " ↓") : ""}
              </span>
            </button>
            <small>{choiceUnit(column, system)}</small>
          </th>
        ))}
      </tr>
      {choices.present === undefined ? null : <ChoiceRow {...props} choice={choices.present} isPresent />}
    </thead>
  );
}

interface ChoiceRowProps extends ChoiceTableProps {
  readonly choice: Choice;
  readonly isPresent: boolean;
}

function ChoiceRow({ choices, choice, isPresent, inHand, onHand, onTake }: ChoiceRowProps) {
  const system = useBench((bench) => bench.system);
  const row = useRef<HTMLTableRowElement>(null);
  const isInHand = choice.key === inHand;
  useEffect(() => {
    if (isInHand) row.current?.scrollIntoView({ block: "nearest" });
  }, [isInHand]);
  return (
    <tr
      ref={row}
      className={`${isPresent ? "present" : ""}${isInHand ? " in-hand" : ""}`}
      aria-current={isInHand}
      onFocus={() => onHand(choice.key)}
    >
      <td>
        {isPresent ? (
          <span className="mark">
            <span aria-hidden="true">●</span> present
          </span>
        ) : (
          <button type="button" aria-label={`take ${choice.name}`} onClick={() => onTake(choice)}>
            take
          </button>
        )}
      </td>
      {choices.columns.map((column) => (
        <td key={column.key} className={column.quantity === "words" ? "" : "number"}>
          {choiceText(choice, column, system)}
        </td>
      ))}
    </tr>
  );
}
