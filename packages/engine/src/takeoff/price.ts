import type { Arrangement } from "#arrangement/arrange";
import { type Part, visitLeaves } from "#arrangement/part";
import { sheetMass } from "#component/sheet-metal";
import { type MaterialName, materials } from "#standard/material";
import type { Unit } from "#unit/unit";
import { boughtSets } from "./bought-set.ts";
import { ownerOf, wholeUnit } from "./owner.ts";
import type { PriceBook, RateBook, ShopBooks } from "./shop-book.ts";
import type { SheetNeed } from "./takeoff.ts";
import { addWork, noWork, type WorkAmounts } from "./work-measure.ts";

/** Money is whole cents. Every line is rounded to the nearest cent by itself, halves upwards; sums are of rounded lines. */
export function wholeCents(amount: number): number {
  return Math.floor(amount + 0.5);
}

/** A line of cost. */
export interface CostLine {
  readonly owner: string;
  readonly sort: "material" | "bought" | "labour";
  readonly what: string;
  /** Amount of it, and in what: `kg`, `each`, `m²`, `h`. */
  readonly amount: number;
  readonly unit: "kg" | "each" | "m²" | "h" | "entered";
  /** Cents for one. */
  readonly rate: number;
  readonly cents: number;
}

/** Something that has no price in the books. It is not in any sum. */
export interface MissingPrice {
  readonly owner: string;
  readonly what: string;
  readonly amount: number;
  readonly unit: "kg" | "each" | "m²";
}

/** The price of a section, or of what belongs to the whole unit. */
export interface OwnerPrice {
  readonly owner: string;
  readonly material: number;
  readonly bought: number;
  readonly labour: number;
  readonly hours: number;
  readonly overhead: number;
  readonly cost: number;
  /** Cost over one less the margin. */
  readonly price: number;
}

/** What the unit costs, and what it is sold for. All amounts in cents. */
export interface UnitPrice {
  readonly currency: string;
  /** What each book's figures rest on. */
  readonly basis: { readonly prices: string; readonly rates: string; readonly stock: string };
  readonly lines: readonly CostLine[];
  readonly missing: readonly MissingPrice[];
  readonly owners: readonly OwnerPrice[];
  readonly cost: number;
  readonly freight: number;
  /** With overhead, margin and freight. */
  readonly price: number;
  readonly margin: number;
  readonly overhead: number;
}

/** Prices an arrangement by the shop's books; `pieces` are kg as shipped. */
export function priceUnit(
  unit: Unit,
  arrangement: Arrangement,
  sheets: readonly SheetNeed[],
  pieces: readonly number[],
  books: ShopBooks,
): UnitPrice {
  const missing: MissingPrice[] = [];
  const take = new Taking(books.prices, yields(sheets), missing);
  visitLeaves(arrangement.whole, (leaf) => take.part(leaf));
  for (const { owner, item, count, mass, isPriced } of boughtSets(arrangement.whole)) {
    if (!isPriced) take.item(owner, item, count, mass);
  }
  take.coat(unit);
  const lines = [...take.lines(), ...labour(unit, arrangement, books.rates)];
  const owners = [...unit.sections.map(({ name }) => name), wholeUnit].map((owner) =>
    ownerPrice(owner, lines, books.rates),
  );
  const { freightPerKg, freightPerPiece, margin, overhead } = books.rates;
  const freight = wholeCents(pieces.reduce((sum, mass) => sum + mass * freightPerKg + freightPerPiece, 0));
  const sum = (of: (each: OwnerPrice) => number) => owners.reduce((all, each) => all + of(each), 0);
  return {
    currency: books.prices.currency,
    basis: { prices: books.prices.basis, rates: books.rates.basis, stock: books.stock.basis },
    lines,
    missing,
    owners,
    cost: sum((each) => each.cost),
    freight,
    price: sum((each) => each.price) + freight,
    margin,
    overhead,
  };
}

/** Blank mass over mass of the sheets that have to be bought for it, by metal and gauge; 1 where none is in stock. */
function yields(sheets: readonly SheetNeed[]): ReadonlyMap<string, number> {
  return new Map(
    sheets.map(({ metal, gauge, area, shelves, sheet }) => [
      `${metal} ${gauge}`,
      sheet === undefined || shelves === 0 ? 1 : area / (shelves * sheet.length * sheet.width),
    ]),
  );
}

type Item = PriceBook["items"][number];

/** A line whose amount still grows. */
interface Counted extends Omit<CostLine, "cents" | "amount"> {
  amount: number;
}

/** Takes the cost of parts line by line. */
class Taking {
  private readonly prices: PriceBook;
  private readonly yields: ReadonlyMap<string, number>;
  private readonly missing: MissingPrice[];
  private readonly entered: CostLine[] = [];
  /** By owner, then by what it is. */
  private readonly amounts = new Map<string, Map<string, Counted>>();
  /** Cents for a kilogram. */
  private readonly rates: ReadonlyMap<string, number>;
  private readonly found = new Map<string, Item | undefined>();

  constructor(prices: PriceBook, share: ReadonlyMap<string, number>, missing: MissingPrice[]) {
    this.prices = prices;
    this.rates = new Map(prices.materials.map(({ material, perKg }) => [material, perKg]));
    this.yields = share;
    this.missing = missing;
  }

  part(leaf: Part): void {
    const owner = ownerOf(leaf);
    if (leaf.price !== undefined) {
      const { price } = leaf;
      this.entered.push({
        owner,
        sort: "bought",
        what: leaf.name,
        amount: 1,
        unit: "entered",
        rate: price,
        cents: price,
      });
    } else if (leaf.bought !== undefined) return;
    else if (leaf.sheets.length > 0) this.sheets(owner, leaf);
    else if (leaf.material !== undefined) this.material(owner, leaf.material, leaf.mass);
  }

  /** Blanks at the mass of the sheet that they use up, and what fills them. */
  private sheets(owner: string, leaf: Part): void {
    for (const { metal, gauge, blanks } of leaf.sheets) {
      const area = blanks.reduce((sum, each) => sum + each.count * each.length * each.width, 0) / 1e6;
      this.material(owner, metal, (area * sheetMass(metal, gauge)) / (this.yields.get(`${metal} ${gauge}`) ?? 1));
    }
    const { filling } = leaf;
    if (filling !== undefined)
      this.material(owner, filling.material, filling.volume * materials[filling.material].density);
  }

  private material(owner: string, material: MaterialName, mass: number): void {
    const rate = this.rates.get(material);
    if (rate === undefined) this.miss({ owner, what: material, amount: mass, unit: "kg" });
    else this.add("material", owner, material, mass, "kg", rate);
  }

  item(owner: string, item: string, count: number, mass: number): void {
    const found = this.find(item);
    if (found?.each !== undefined) this.add("bought", owner, item, count, "each", found.each);
    else if (found?.perKg !== undefined) this.add("bought", owner, item, mass, "kg", found.perKg);
    else this.miss({ owner, what: item, amount: count, unit: "each" });
  }

  /** The coat of the outside, by area. */
  coat(unit: Unit): void {
    const { finish, panelThickness } = unit.casing;
    if (finish === "mill") return;
    const [long, wide, high] = [unit.length, unit.frame.width, unit.frame.height].map(
      (side) => side + 2 * panelThickness,
    );
    const area = 2 * (wide! * high! + long! * high!) + long! * wide!;
    const what = `coat, ${finish}`;
    const found = this.find(what);
    const rate = found?.perSquareMetre;
    if (rate === undefined) this.miss({ owner: wholeUnit, what, amount: area, unit: "m²" });
    else this.add("bought", wholeUnit, what, area, "m²", rate);
  }

  /** The item whose name begins the thing's name; of several the longest. */
  private find(item: string): Item | undefined {
    if (this.found.has(item)) return this.found.get(item);
    let best: Item | undefined;
    for (const each of this.prices.items) {
      if (item.startsWith(each.item) && each.item.length >= (best?.item.length ?? 0)) best = each;
    }
    this.found.set(item, best);
    return best;
  }

  /** Adds to the owner's amount of the same thing, so that each line is rounded once. */
  private add(
    sort: CostLine["sort"],
    owner: string,
    what: string,
    amount: number,
    unit: CostLine["unit"],
    rate: number,
  ): void {
    let own = this.amounts.get(owner);
    if (own === undefined) {
      own = new Map();
      this.amounts.set(owner, own);
    }
    const before = own.get(what);
    if (before === undefined) own.set(what, { owner, sort, what, amount, unit, rate });
    else before.amount += amount;
  }

  /** The lines, each rounded to a cent. */
  lines(): readonly CostLine[] {
    const counted = [...this.amounts.values()].flatMap((own) =>
      [...own.values()].map((line) => ({ ...line, cents: wholeCents(line.amount * line.rate) })),
    );
    return [...this.entered, ...counted];
  }

  private miss(line: MissingPrice): void {
    const at = this.missing.findIndex((each) => each.owner === line.owner && each.what === line.what);
    if (at < 0) this.missing.push(line);
    else this.missing[at] = { ...line, amount: line.amount + this.missing[at]!.amount };
  }
}

/** Hours of every operation on every section, and on the unit as a whole. */
function labour(unit: Unit, arrangement: Arrangement, rates: RateBook): readonly CostLine[] {
  const amounts = new Map<string, WorkAmounts>();
  const of = (owner: string): WorkAmounts => {
    const found = amounts.get(owner) ?? noWork();
    amounts.set(owner, found);
    return found;
  };
  for (const { name } of unit.sections) of(name).section = 1;
  for (const group of arrangement.whole.children) {
    if (group.section !== undefined) addWork(group, of(group.section));
    else for (const child of group.children) addWork(child, of(ownerOf(child)));
  }
  of(wholeUnit).piece = arrangement.splits.length;
  of(wholeUnit).unit = 1;
  return [...amounts].flatMap(([owner, work]) =>
    rates.operations.flatMap(({ operation, per, hours, rate }) => {
      const amount = hours * work[per];
      const cents = wholeCents(amount * rate);
      return amount > 0
        ? [{ owner, sort: "labour" as const, what: operation, amount, unit: "h" as const, rate, cents }]
        : [];
    }),
  );
}

function ownerPrice(owner: string, lines: readonly CostLine[], { overhead, margin }: RateBook): OwnerPrice {
  const own = lines.filter((line) => line.owner === owner);
  const sum = (sort: CostLine["sort"]) => own.reduce((cents, line) => cents + (line.sort === sort ? line.cents : 0), 0);
  const [material, bought, work] = [sum("material"), sum("bought"), sum("labour")];
  const overheadCents = wholeCents(work * overhead);
  const cost = material + bought + work + overheadCents;
  const hours = own.reduce((all, line) => all + (line.sort === "labour" ? line.amount : 0), 0);
  return {
    owner,
    material,
    bought,
    labour: work,
    hours,
    overhead: overheadCents,
    cost,
    price: wholeCents(cost / (1 - margin)),
  };
}
