import { arrangeRunning } from "@oncethrough/engine/arrangement/weigh";
import type { Job } from "@oncethrough/engine/job/job";
import { type OrderData, orderData } from "@oncethrough/engine/takeoff/order-data";
import type { StockBook } from "@oncethrough/engine/takeoff/shop-book";
import {
  type BoughtLine,
  type CutLine,
  type PartLine,
  type SheetNeed,
  takeOff,
} from "@oncethrough/engine/takeoff/takeoff";
import { ratingsOf } from "@oncethrough/engine/unit/rate-unit";

/** What `oncethrough takeoff --json` prints; the tables for people are printed from the same figures. All in SI. */
export interface TakeoffOutput {
  readonly format: "oncethrough takeoff 1";
  readonly tag: string;
  /** Section by section, then the unit; sizes in m. */
  readonly parts: readonly PartOutput[];
  readonly cuts: readonly CutLine[];
  readonly sheets: readonly SheetOutput[];
  readonly bought: readonly BoughtOutput[];
  /** Section by section: the figures by which bought parts are ordered. */
  readonly orders: readonly OrderOutput[];
  /** What the stock book's figures rest on. */
  readonly stock: string;
}

/** A line of the parts list, m and kg. */
export interface PartOutput extends Omit<PartLine, "size" | "bought"> {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly bought?: string;
}

/** A bought thing, m and kg. */
export interface BoughtOutput extends Omit<BoughtLine, "size"> {
  readonly length?: number;
  readonly width?: number;
  readonly height?: number;
}

/** What a section's bought parts are ordered by, in SI. */
export interface OrderOutput extends Omit<OrderData, "declared"> {
  readonly declared?: NonNullable<OrderData["declared"]>;
}

/** Sheets of one metal and gauge, m, m² and kg. */
export interface SheetOutput extends Omit<SheetNeed, "sheet" | "joined"> {
  readonly length?: number;
  readonly width?: number;
  /** Blanks that are joined of smaller pieces. */
  readonly joined: number;
}

/** Takes the unit of a job off. */
export function takeoffOf(job: Job, stock: StockBook): TakeoffOutput {
  const { unit, duty, conditions } = job;
  const ratings = ratingsOf(unit, conditions);
  const { parts, cuts, sheets, bought } = takeOff(arrangeRunning(unit, duty, conditions, ratings), stock);
  return {
    format: "oncethrough takeoff 1",
    tag: job.tag,
    parts: parts.map(partOutput),
    cuts: cuts.map((cut) => ({ ...cut, length: cut.length / 1000, width: cut.width / 1000 })),
    sheets: sheets.map(sheetOutput),
    bought: bought.map(boughtOutput),
    orders: orderData(unit, ratings).map(({ declared, ...rest }) => ({
      ...rest,
      ...(declared === undefined ? {} : { declared }),
    })),
    stock: stock.basis,
  };
}

function partOutput({ size, bought, ...rest }: PartLine): PartOutput {
  const [length, width, height] = size;
  return {
    ...rest,
    length: length / 1000,
    width: width / 1000,
    height: height / 1000,
    ...(bought === undefined ? {} : { bought }),
  };
}

function boughtOutput({ size, ...rest }: BoughtLine): BoughtOutput {
  if (size === undefined) return rest;
  const [length, width, height] = size;
  return { ...rest, length: length / 1000, width: width / 1000, height: height / 1000 };
}

function sheetOutput({ sheet, joined, area, ...rest }: SheetNeed): SheetOutput {
  return {
    ...rest,
    area: area / 1e6,
    joined: joined.reduce((sum, each) => sum + each.count, 0),
    ...(sheet === undefined ? {} : { length: sheet.length / 1000, width: sheet.width / 1000 }),
  };
}
