import { type Arrangement, sectionMasses } from "#arrangement/arrange";
import { looseMass, piecesOf } from "#arrangement/lifting";
import { massIn } from "#arrangement/mass";
import { arrangeRunning } from "#arrangement/weigh";
import type { Condition } from "#duty/condition";
import type { Duty } from "#duty/duty";
import type { Unit } from "#unit/unit";
import { wholeUnit } from "./owner.ts";
import { type MissingPrice, priceUnit, type UnitPrice } from "./price.ts";
import type { ShopBooks } from "./shop-book.ts";
import { sheetsOf } from "./takeoff.ts";

/** kg of the whole, and dry by owner. */
export interface UnitMasses {
  readonly dry: number;
  readonly operating: number;
  /** Of all pieces as they are shipped, hoods and the like that go loose included. */
  readonly shipping: number;
  readonly owners: ReadonlyMap<string, number>;
}

/** A unit in millimetres, kilograms and money. */
export interface PricedUnit {
  readonly arrangement: Arrangement;
  readonly masses: UnitMasses;
  /** m of the clear cabinet. */
  readonly length: number;
  readonly price: UnitPrice;
}

/** Weighs and prices a unit that is arranged. */
export function pricedUnit(unit: Unit, arrangement: Arrangement, books: ShopBooks): PricedUnit {
  const pieces = piecesOf(unit, arrangement).map(({ shippingMass }) => shippingMass);
  const loose = arrangement.sections.filter(({ section }) => section.layout.outside > 0).map(({ part }) => part.mass);
  const price = priceUnit(unit, arrangement, sheetsOf(arrangement, books.stock), [...pieces, ...loose], books);
  const dry = massIn(arrangement.whole, "dry");
  const owners = new Map(sectionMasses(arrangement, "dry"));
  owners.set(wholeUnit, dry - [...owners.values()].reduce((sum, mass) => sum + mass, 0));
  const shipping = pieces.reduce((sum, mass) => sum + mass, looseMass(arrangement));
  const operating = massIn(arrangement.whole, "operating");
  return { arrangement, masses: { dry, operating, shipping, owners }, length: unit.length, price };
}

/** An option as an offer needs it: the base unit with it alone, what was entered with it. */
export interface OfferedOption {
  readonly name: string;
  readonly note: string;
  readonly taken: boolean;
  readonly unit: Unit;
  /** Cents. */
  readonly price: number | undefined;
  /** kg. */
  readonly mass: number;
}

/** What an option adds to the base price, alone. */
export interface Adder {
  readonly name: string;
  readonly note: string;
  readonly taken: boolean;
  /** Cents that its changes come to, freight included, and cents entered with it; below zero a credit. */
  readonly changes: number;
  readonly entered: number;
  readonly cents: number;
  /** kg dry that it adds, what was entered included. */
  readonly mass: number;
  /** m that the cabinet grows. */
  readonly length: number;
  /** What it brings that has no price; then the adder is not whole. */
  readonly missing: readonly MissingPrice[];
}

/** Base price, options beside it, and what the order comes to. */
export interface Offer {
  readonly base: PricedUnit;
  readonly adders: readonly Adder[];
  /** The unit with the options that are taken, without what was entered with them. */
  readonly ordered: PricedUnit;
  /** Cents that options taken together differ by from the sum of their adders: shared work, sheets, freight. */
  readonly together: number;
  /** kg entered with options taken: in no mass of the unit, because they have no place in it. */
  readonly enteredMass: number;
  /** Cents of the order: base, adders taken, and `together`. */
  readonly total: number;
}

/** The machine of a job and its options, as an offer prices them. */
export interface Offered {
  readonly duty: Duty;
  readonly conditions: readonly Condition[];
  readonly unit: Unit;
  readonly base: Unit;
  readonly options: readonly OfferedOption[];
}

/** Prices the base unit, each option beside it, and the order; `ordered` is the unit ordered, where it is priced already. */
export function offerOf(offered: Offered, books: ShopBooks, ordered?: PricedUnit): Offer {
  const { duty, conditions, options } = offered;
  const known = new Map<Unit, PricedUnit>(ordered === undefined ? [] : [[offered.unit, ordered]]);
  const priced = (unit: Unit): PricedUnit => {
    const found = known.get(unit) ?? pricedUnit(unit, arrangeRunning(unit, duty, conditions), books);
    known.set(unit, found);
    return found;
  };
  const [base, order] = [priced(offered.base), priced(offered.unit)];
  const adders = options.map((option) => adderOf(option, base, priced(option.unit)));
  const taken = adders.filter((adder) => adder.taken);
  const entered = taken.reduce((sum, adder) => sum + adder.entered, 0);
  const alone = taken.reduce((sum, adder) => sum + adder.changes, 0);
  return {
    base,
    adders,
    ordered: order,
    together: order.price.price - base.price.price - alone,
    enteredMass: options.reduce((sum, option) => sum + (option.taken ? option.mass : 0), 0),
    total: order.price.price + entered,
  };
}

function adderOf(option: OfferedOption, base: PricedUnit, alone: PricedUnit): Adder {
  const { name, note, taken } = option;
  const changes = alone.price.price - base.price.price;
  const entered = option.price ?? 0;
  const known = new Set(base.price.missing.map((each) => `${each.owner}\n${each.what}`));
  return {
    name,
    note,
    taken,
    changes,
    entered,
    cents: changes + entered,
    mass: alone.masses.dry - base.masses.dry + option.mass,
    length: alone.length - base.length,
    missing: alone.price.missing.filter((each) => !known.has(`${each.owner}\n${each.what}`)),
  };
}
