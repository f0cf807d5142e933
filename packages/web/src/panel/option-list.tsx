import type { JobOption } from "@oncethrough/engine/job/option";
import type { Adder } from "@oncethrough/engine/takeoff/offer";
import { useMemo } from "react";
import { printFigure } from "#state/figures";
import { moneyText, signedText } from "#state/money-words";
import { offerIn } from "#state/unit-pricing";
import { useArrangement } from "#view/use-arrangement";
import { useBench } from "#view/use-bench";

/** The options of the offer, each with what it adds to the base price; taking one is an edit of the job. */
export function OptionList() {
  const sound = useBench((bench) => bench.sound);
  const books = useBench((bench) => bench.shop.books);
  const arrangement = useArrangement();
  const offer = useMemo(
    () => (sound === undefined || books === undefined || arrangement === undefined ? undefined : offerIn(sound, books)),
    [sound, books, arrangement],
  );
  if (sound === undefined || offer === undefined) return null;
  const { options } = sound.job;
  const { currency } = offer.base.price;
  if (options.length === 0) {
    return (
      <>
        <h3>Options</h3>
        <p className="quiet">
          none; write them under <code>options:</code> in the text
        </p>
      </>
    );
  }
  return (
    <>
      <h3>
        Options<small>beside a base price of {moneyText(offer.base.price.price, currency)}</small>
      </h3>
      <ul className="options">
        {options.map((option, index) => (
          <OptionRow key={option.name} option={option} adder={offer.adders[index]!} index={index} currency={currency} />
        ))}
      </ul>
      {offer.together === 0 ? null : (
        <p className="quiet">
          taken together {signedText(offer.together, (size) => moneyText(size, currency))} against the sum of the
          options taken
        </p>
      )}
      {offer.enteredMass > 0 ? <EnteredMass mass={offer.enteredMass} /> : null}
    </>
  );
}

interface RowProps {
  readonly option: JobOption;
  readonly adder: Adder;
  readonly index: number;
  readonly currency: string;
}

function OptionRow({ option, adder, index, currency }: RowProps) {
  const system = useBench((bench) => bench.system);
  const { editField } = useBench((bench) => bench.actions);
  const mass = (kilograms: number) => printFigure(kilograms, "mass", system);
  const changes = option.changes.map(({ part, field, value }) => `${part}: ${field} ${value}`);
  return (
    <li>
      <label>
        <input
          type="checkbox"
          checked={option.taken}
          onChange={(event) => editField(`options[${index}].taken`, event.target.checked ? "yes" : "no")}
        />
        <span>{option.name}</span>
        <strong>{signedText(adder.cents, (size) => moneyText(size, currency))}</strong>
        <span className="by">{adder.mass === 0 ? "" : signedText(adder.mass, mass)}</span>
      </label>
      <small className="quiet">{[...changes, option.note].filter((words) => words !== "").join("; ")}</small>
      {adder.missing.length === 0 ? null : (
        <small className="failing">
          <span aria-hidden="true">◆</span> without a price: {adder.missing.map(({ what }) => what).join(", ")}
        </small>
      )}
    </li>
  );
}

function EnteredMass({ mass }: { mass: number }) {
  const system = useBench((bench) => bench.system);
  return (
    <p className="quiet">
      {printFigure(mass, "mass", system)} entered with options have no place in the machine and are in no other mass
    </p>
  );
}
