import { displayUnit, printNumber, printQuantity } from "@oncethrough/engine/quantity/print";
import type { CostLine, MissingPrice } from "@oncethrough/engine/takeoff/price";
import { csvLine } from "../air/read-csv.ts";
import { wrapped } from "../ink.ts";
import type { Style } from "../rate/rate-print.ts";
import { type Column, printTable } from "../table.ts";
import type { PriceOutput } from "./price-output.ts";

/** Whole cents as an amount with thousands apart. */
export function amountText(cents: number): string {
  const whole = Math.trunc(Math.abs(cents) / 100);
  const rest = String(Math.abs(cents) % 100).padStart(2, "0");
  return `${cents < 0 ? "-" : ""}${whole.toLocaleString("en-US")}.${rest}`;
}

/** Price by section and of the whole, what has no price, and what the books rest on. */
export function printPrice(output: PriceOutput, style: Style, withLines: boolean): string {
  const parts = [
    printOwners(output, style),
    printWhole(output, style),
    printMissing(output, style),
    printOptions(output, style),
    withLines ? printLines(output, style) : "",
    printBasis(output, style),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function printOwners({ tag, currency, owners }: PriceOutput, { ink }: Style): string {
  const columns: Column[] = [
    { name: "section", align: "left" },
    { name: "material", unit: currency, align: "right" },
    { name: "bought", unit: currency, align: "right" },
    { name: "hours", unit: "h", align: "right" },
    { name: "labour", unit: currency, align: "right" },
    { name: "overhead", unit: currency, align: "right" },
    { name: "cost", unit: currency, align: "right" },
    { name: "price", unit: currency, align: "right" },
  ];
  const rows = owners.map((each) => [
    each.owner === "unit" ? "the unit as a whole" : each.owner,
    amountText(each.material),
    amountText(each.bought),
    each.hours.toFixed(1),
    amountText(each.labour),
    amountText(each.overhead),
    amountText(each.cost),
    ink.strong(amountText(each.price)),
  ]);
  return `${ink.strong(`${tag} · price`)}\n${printTable(columns, rows, ink)}`;
}

function printWhole(output: PriceOutput, { ink, columns }: Style): string {
  const { cost, freight, price, currency, margin, missing, options } = output;
  const rows = [
    ["cost with overhead", amountText(cost)],
    [`margin, ${(100 * margin).toFixed(1)} % of the price`, amountText(price - freight - cost)],
    ["freight", amountText(freight)],
    [ink.strong(options.length === 0 ? "price" : "base price"), ink.strong(amountText(price))],
  ];
  const table = printTable(
    [
      { name: "", align: "left" },
      { name: "", unit: currency, align: "right" },
    ],
    rows,
    ink,
  );
  if (missing.length === 0) return table;
  return `${table}\n${ink.fail(wrapped("The price is not whole: what follows has no price and is in no sum.", columns))}`;
}

function printOptions(output: PriceOutput, { ink, system }: Style): string {
  const { options, order, currency, price } = output;
  if (options.length === 0) return "";
  const columns: Column[] = [
    { name: "option", align: "left" },
    { name: "", align: "left" },
    { name: "adds", unit: currency, align: "right" },
    { name: "mass", unit: displayUnit("mass", system), align: "right" },
    { name: "length", unit: displayUnit("length", system), align: "right" },
    { name: "", align: "left" },
  ];
  const rows = options.map((option) => [
    option.name,
    option.taken ? "taken" : "",
    signed(amountText(option.cents)),
    signed(printNumber(option.mass, "mass", system)),
    option.length === 0 ? "" : signed(printNumber(option.length, "length", system)),
    option.missing.length === 0
      ? ""
      : ink.fail(`without a price: ${option.missing.map(({ what }) => what).join(", ")}`),
  ]);
  const entered =
    order.enteredMass > 0
      ? `\n${ink.quiet(`${printQuantity(order.enteredMass, "mass", system)} entered with options taken have no place in the machine and are in no other mass`)}`
      : "";
  const sums = [
    ["base price", amountText(price)],
    ["options taken", amountText(order.price - price - order.together)],
    ...(order.together === 0 ? [] : [["less or more by being taken together", amountText(order.together)]]),
    [ink.strong("order"), ink.strong(amountText(order.price))],
  ];
  const totals = printTable(
    [
      { name: "", align: "left" },
      { name: "", unit: currency, align: "right" },
    ],
    sums,
    ink,
  );
  return options.some(({ taken }) => taken)
    ? `${printTable(columns, rows, ink)}${entered}\n\n${totals}`
    : `${printTable(columns, rows, ink)}\n${ink.quiet("no option is taken: the order comes to the base price")}`;
}

function signed(text: string): string {
  return text.startsWith("-") ? text : `+${text}`;
}

function printMissing({ missing }: PriceOutput, { ink }: Style): string {
  if (missing.length === 0) return "";
  return [ink.fail("without a price"), ...missing.map(missingWords)].join("\n");
}

function missingWords({ owner, what, amount, unit }: MissingPrice): string {
  return `  ${owner}: ${what}, ${unit === "each" ? `${amount} of it` : `${amount.toFixed(1)} ${unit}`}`;
}

function printLines({ lines, currency }: PriceOutput, { ink }: Style): string {
  const columns: Column[] = [
    { name: "section", align: "left" },
    { name: "sort", align: "left" },
    { name: "what", align: "left" },
    { name: "amount", align: "right" },
    { name: "", align: "left" },
    { name: "for one", unit: currency, align: "right" },
    { name: "cost", unit: currency, align: "right" },
  ];
  return printTable(columns, lines.map(lineCells), ink);
}

function lineCells(line: CostLine): string[] {
  const { owner, sort, what, amount, unit, rate, cents } = line;
  const figure = unit === "each" || unit === "entered" ? String(amount) : amount.toFixed(2);
  return [owner, sort, what, figure, unit, amountText(rate), amountText(cents)];
}

function printBasis({ basis }: PriceOutput, { ink, columns }: Style): string {
  const say = (name: string, words: string) => (words === "invented" ? `${name} are invented` : `${name}: ${words}`);
  const words = `${say("prices", basis.prices)}, ${say("hours and rates", basis.rates)}, stock: ${basis.stock}. Sheet is counted with its offcuts. Each line is rounded to a cent, halves upwards; sums are of rounded lines.`;
  return ink.quiet(wrapped(words.charAt(0).toUpperCase() + words.slice(1), columns));
}

/** Every line of cost as CSV, then what has no price with an empty cost, then options with what each adds to the price. */
export function priceCsv({ lines, missing, options, currency }: PriceOutput): string {
  const heads = ["section", "sort", "what", "amount", "unit", `for one [${currency}]`, `cost [${currency}]`];
  const plain = (cents: number) => amountText(cents).replaceAll(",", "");
  const rows = [
    ...lines.map((line) => [
      line.owner,
      line.sort,
      line.what,
      String(line.amount),
      line.unit,
      plain(line.rate),
      plain(line.cents),
    ]),
    ...missing.map(({ owner, what, amount, unit }) => [owner, "without a price", what, String(amount), unit, "", ""]),
    ...options.flatMap(({ name, taken, cents, missing: without }) => [
      ["option", taken ? "price, taken" : "price, not taken", name, "1", "each", plain(cents), plain(cents)],
      ...without.map(({ what, amount, unit }) => [
        "option",
        "without a price",
        `${name}: ${what}`,
        String(amount),
        unit,
        "",
        "",
      ]),
    ]),
  ];
  return [heads, ...rows].map(csvLine).join("");
}
