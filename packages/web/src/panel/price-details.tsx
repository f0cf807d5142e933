import type { UnitSection } from "@oncethrough/engine/unit/unit";
import { sectionPath } from "#state/bench-state";
import { printFigure } from "#state/figures";
import { moneyText, signedText } from "#state/money-words";
import { type OwnerRow, ownerRows } from "#state/price-change";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";
import type { OrdersInHand } from "#view/use-order";
import { OptionList } from "./option-list.tsx";

const none: readonly UnitSection[] = [];

/** The order section by section with what the last act changed, the options beside it, and what it rests on. */
export function PriceDetails({ id, orders }: { id: string; orders: OrdersInHand }) {
  const { now, before, act } = orders;
  const { currency } = now.unit.price;
  const rows = ownerRows(now, before);
  return (
    <div id={id} className="price-details">
      <div data-part="">
        <TakeAway of="table" name="price and mass by section" />
        <table>
          <caption className="unseen">price and mass by section</caption>
          <thead>
            <tr>
              <th scope="col">section</th>
              <th scope="col">price</th>
              <th scope="col">{before === undefined ? "" : `by “${act}”`}</th>
              <th scope="col">mass, dry</th>
              <th scope="col" aria-label="change of mass" />
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <PriceRow key={row.owner} row={row} currency={currency} />
            ))}
          </tbody>
          <TotalRow orders={orders} />
        </table>
      </div>
      <div>
        <OptionList />
        <MissingList orders={orders} />
        <Basis orders={orders} />
      </div>
    </div>
  );
}

function PriceRow({ row, currency }: { row: OwnerRow; currency: string }) {
  const system = useBench((bench) => bench.system);
  const sections = useBench((bench) => bench.sound?.job.unit.sections) ?? none;
  const { pick } = useBench((bench) => bench.actions);
  const index = sections.findIndex(({ name }) => name === row.owner);
  const mass = (kilograms: number) => printFigure(kilograms, "mass", system);
  const name = row.fate === "stays" ? row.words : `${row.words}, ${row.fate}`;
  return (
    <tr className={row.fate}>
      <th scope="row">
        {index < 0 ? (
          name
        ) : (
          <button type="button" onClick={() => pick(sectionPath(index))}>
            {name}
          </button>
        )}
      </th>
      <td>{moneyText(row.price, currency)}</td>
      <td className="by">{changeText(row.priceChange, (size) => moneyText(size, currency))}</td>
      <td>{row.mass === undefined ? "" : mass(row.mass)}</td>
      <td className="by">{changeText(row.massChange, mass)}</td>
    </tr>
  );
}

function TotalRow({ orders: { now, before } }: { orders: OrdersInHand }) {
  const system = useBench((bench) => bench.system);
  const { currency } = now.unit.price;
  const mass = (kilograms: number) => printFigure(kilograms, "mass", system);
  const { dry } = now.unit.masses;
  return (
    <tfoot>
      <tr>
        <th scope="row">order</th>
        <td>{moneyText(now.price, currency)}</td>
        <td className="by">{changeText(before && now.price - before.price, (size) => moneyText(size, currency))}</td>
        <td>{mass(dry)}</td>
        <td className="by">{changeText(before && dry - before.unit.masses.dry, mass)}</td>
      </tr>
    </tfoot>
  );
}

/** A difference worth saying; differences that round to nothing are left out. */
function changeText(value: number | undefined, words: (size: number) => string): string {
  if (value === undefined) return "";
  const text = signedText(value, words);
  return /^[+−]/.test(text) ? text : "";
}

function MissingList({ orders }: { orders: OrdersInHand }) {
  const { missing } = orders.now.unit.price;
  if (missing.length === 0) return null;
  return (
    <>
      <h3 className="failing">
        <span aria-hidden="true">◆</span> Without a price, in no sum
      </h3>
      <ul>
        {missing.map(({ owner, what, amount, unit }) => (
          <li key={`${owner} ${what}`}>
            {owner}: {what}, {unit === "each" ? `${amount} of it` : `${amount.toFixed(1)} ${unit}`}
          </li>
        ))}
      </ul>
    </>
  );
}

/** What the figures rest on, and how they are rounded. */
function Basis({ orders }: { orders: OrdersInHand }) {
  const { basis, margin, overhead } = orders.now.unit.price;
  return (
    <p className="quiet basis">
      Prices: <em>{basis.prices}</em>. Hours and rates: <em>{basis.rates}</em>. Stock: {basis.stock}. Overhead{" "}
      {Math.round(100 * overhead)} % of labour and a margin of {Math.round(100 * margin)} % of the price are in every
      line. Each line of cost is rounded to a cent, halves upwards; sums are of rounded lines.
    </p>
  );
}
