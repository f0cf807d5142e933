import type { JobOption } from "@oncethrough/engine/job/option";
import { printFigure } from "#state/figures";
import { moneyText } from "#state/money-words";
import { useBench } from "#view/use-bench";
import { useOrders } from "#view/use-order";

const none: readonly JobOption[] = [];

/** What one section costs and weighs, or what belongs to the unit as a whole. */
export default function OwnerPriceList({ owner }: { owner: string }) {
  const orders = useOrders();
  const system = useBench((bench) => bench.system);
  const options = useBench((bench) => bench.sound?.job.options) ?? none;
  const unit = orders?.now.unit;
  const price = unit?.price.owners.find((each) => each.owner === owner);
  if (unit === undefined || price === undefined) return null;
  const money = (cents: number) => moneyText(cents, unit.price.currency);
  const figures = [
    ["price", money(price.price)],
    ["of it material", money(price.material)],
    ["bought parts", money(price.bought)],
    [`labour, ${price.hours.toFixed(1)} h`, money(price.labour)],
    ["overhead", money(price.overhead)],
    ["margin", money(price.price - price.cost)],
    ["mass, dry", printFigure(unit.masses.owners.get(owner) ?? 0, "mass", system)],
  ] as const;
  const part = owner === "unit" ? "cabinet" : owner;
  const taken = options.filter((option) => option.taken && option.changes.some((change) => change.part === part));
  return (
    <section aria-label="price and mass of the part">
      <h3>Price and mass</h3>
      <div className="rows">
        {figures.map(([name, value]) => (
          <div key={name} className="figure">
            <span>{name}</span>
            <strong>{value}</strong>
          </div>
        ))}
      </div>
      {taken.map(({ name, changes }) => (
        <p key={name} className="quiet">
          option taken, {name}:{" "}
          {changes
            .filter((change) => change.part === part)
            .map(({ field, value }) => `${field} ${value}`)
            .join(", ")}
        </p>
      ))}
    </section>
  );
}
