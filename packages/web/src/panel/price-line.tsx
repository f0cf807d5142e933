import { useId, useState } from "react";
import { printFigure } from "#state/figures";
import { roundMoneyText, signedText } from "#state/money-words";
import { changeBetweenOrders } from "#state/price-change";
import { useBench } from "#view/use-bench";
import { useOrders } from "#view/use-order";
import { PriceDetails } from "./price-details.tsx";

/** The line of the bar, and above it the order in detail. */
export default function PriceLine() {
  const orders = useOrders();
  const system = useBench((bench) => bench.system);
  const problem = useBench((bench) => bench.shop.problems.find(({ severity }) => severity === "error"));
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  if (orders === undefined) {
    return problem === undefined ? (
      <p className="quiet">no sound job to price yet</p>
    ) : (
      <p className="failing">
        <span aria-hidden="true">◆</span> no price: {problem.file} line {problem.line}, {problem.problem}
      </p>
    );
  }
  const { now, before, act } = orders;
  const { price, masses, length } = now.unit;
  const change = before === undefined ? undefined : changeBetweenOrders(now, before);
  const mass = (kilograms: number) => printFigure(kilograms, "mass", system);
  const figures = [
    ["dry", mass(masses.dry), change && signedText(change.dry, mass)],
    ["operating", mass(masses.operating), undefined],
    ["shipping", mass(masses.shipping), undefined],
    ["length", printFigure(length, "length", system), lengthChange(change?.length ?? 0)],
  ] as const;
  function lengthChange(metres: number): string | undefined {
    return Math.abs(metres) < 5e-5 ? undefined : signedText(metres, (size) => printFigure(size, "length", system));
  }
  return (
    <>
      {isOpen ? <PriceDetails id={id} orders={orders} /> : null}
      <div className="price-line">
        <p className="order-price">
          <span className="quiet">price</span> <strong>{roundMoneyText(now.price, price.currency)}</strong>
          {now.missing > 0 ? (
            <span className="failing">
              <span aria-hidden="true">◆</span> not whole, {now.missing} without a price
            </span>
          ) : null}
        </p>
        <p className="last-act" role="status" aria-label="what the last edit changed">
          {change === undefined ? null : (
            <>
              <strong>{signedText(change.price, (size) => roundMoneyText(size, price.currency))}</strong>
              <span className="quiet act">{act}</span>
            </>
          )}
        </p>
        <dl className="masses">
          {figures.map(([name, value, by]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
              {by === undefined ? null : <dd className="by">{by}</dd>}
            </div>
          ))}
        </dl>
        <button type="button" aria-expanded={isOpen} aria-controls={id} onClick={() => setOpen(!isOpen)}>
          {isOpen ? "close" : "by section and option"}
        </button>
      </div>
    </>
  );
}
