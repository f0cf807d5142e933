import { type ChoicePlotList, choicePlot } from "@oncethrough/engine/chart/choice-plot";
import { type KeyboardEvent, useMemo } from "react";
import { axisFigure, type Choice, type Choices, choicePoint } from "#state/choices";
import { PaintedList, placedAt } from "./painted-list.tsx";
import { TakeAway } from "./take-away.tsx";
import { useBench } from "./use-bench.ts";
import { useWidth } from "./use-width.ts";

interface PlotProps {
  readonly choices: Choices;
  readonly inHand: string | undefined;
  readonly onHand: (key: string) => void;
  readonly onTake: (choice: Choice) => void;
}

/** px. */
const tallest = 430;

/** Alternatives by two of their figures; a point is put in hand by a click or by the arrow keys, and taken by Enter. */
export function ChoicePlotView(props: PlotProps) {
  const [frame, width] = useWidth<HTMLElement>();
  const isEmpty = props.choices.list.length === 0 && props.choices.present === undefined;
  return (
    <section ref={frame} className="choice-plot" aria-label="plot of alternatives">
      <TakeAway of="picture" name="plot of alternatives" />
      {width === 0 || isEmpty ? null : <Plot {...props} width={width} />}
      <Named {...props} />
    </section>
  );
}

function Plot({ choices, inHand, onHand, onTake, width }: PlotProps & { readonly width: number }) {
  const system = useBench((bench) => bench.system);
  const height = Math.min(tallest, Math.round(width * 0.8));
  const list = useMemo(
    () =>
      choicePlot({
        title: "Alternatives",
        points: choices.list
          .filter(({ key }) => key !== choices.present?.key)
          .map((each) => choicePoint(choices, each)),
        present: choices.present === undefined ? undefined : choicePoint(choices, choices.present),
        x: axisFigure(choices, choices.plot.x),
        y: axisFigure(choices, choices.plot.y),
        system,
        width,
        height,
      }),
    [choices, system, width, height],
  );
  const take = () => {
    const choice = choices.list.find(({ key }) => key === inHand);
    if (choice !== undefined) onTake(choice);
  };
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: the section around it has the name; a title would pop up under the pointer
    <svg width={width} height={height}>
      <PaintedList list={list} placing={placedAt(list, 1, 0, 0)} />
      <Hands list={list} inHand={inHand} onHand={onHand} onTake={take} />
      <InHand list={list} choices={choices} inHand={inHand} />
    </svg>
  );
}

interface HandsProps {
  readonly list: ChoicePlotList;
  readonly inHand: string | undefined;
  readonly onHand: (key: string) => void;
  readonly onTake: () => void;
}

const steps: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowRight: (at, last) => Math.min(last, at + 1),
  ArrowLeft: (at) => Math.max(0, at - 1),
  Home: () => 0,
  End: (_, last) => last,
};

/** What a hand reaches of the plot: each point, the one in hand ringed and named. */
function Hands({ list, inHand, onHand, onTake }: HandsProps) {
  const { placed } = list;
  const at = placed.findIndex(({ key }) => key === inHand);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === "Enter" && at >= 0) {
      event.preventDefault();
      onTake();
    }
    const step = steps[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const next = placed[step(at, placed.length - 1)];
    if (next !== undefined) onHand(next.key);
  };
  return (
    <g
      className="choice-hands"
      role="listbox"
      aria-label="points of the plot; Enter takes the one in hand"
      aria-activedescendant={at < 0 ? undefined : `choice-${at}`}
      tabIndex={0}
      onKeyDown={onKeyDown}
    >
      {placed.map((point, index) => (
        <circle
          key={point.key}
          id={`choice-${index}`}
          role="option"
          aria-selected={index === at}
          aria-label={point.words}
          cx={point.x}
          cy={point.y}
          r={7}
          onClick={() => onHand(point.key)}
        >
          <title>{point.words}</title>
        </circle>
      ))}
    </g>
  );
}

/** A ring around the one in hand; also where its own point is covered by another. */
function InHand({ list, choices, inHand }: { list: ChoicePlotList } & Pick<PlotProps, "choices" | "inHand">) {
  const choice = choices.list.find(({ key }) => key === inHand);
  if (choice === undefined) return null;
  const { x, y } = list.place(choicePoint(choices, choice));
  return <circle className="choice-in-hand" cx={x} cy={y} r={6} />;
}

/** The one in hand in words, and a hand to take it. */
function Named({ choices, inHand, onTake }: Omit<PlotProps, "onHand">) {
  const choice = choices.list.find(({ key }) => key === inHand);
  return (
    <p className="choice-named">
      {choice === undefined ? (
        <span className="quiet">
          a click on a point finds it in the table; the line joins what nothing beats in both
        </span>
      ) : (
        <>
          <span>{choice.name}</span>
          {choice.key === choices.present?.key ? null : (
            <button type="button" onClick={() => onTake(choice)}>
              take
            </button>
          )}
        </>
      )}
    </p>
  );
}
