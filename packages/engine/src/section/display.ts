/**
 * Display lists: charts and drawings as data, to be painted, hit, animated, spoken, typeset and plotted alike.
 * Drawings are in millimetres with y up; charts in points with y down. The list says which.
 */
export interface DisplayList {
  readonly title: string;
  readonly unit: "mm" | "pt";
  readonly up: boolean;
  /** The part of the plane that holds everything. */
  readonly box: Box;
  readonly items: readonly DisplayItem[];
}

/** A rectangle of the list's plane. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The role of a line or face; what it looks like is the painter's choice. */
export type Ink =
  | "outline" // edges of the machine
  | "fine" // inner detail
  | "hairline" // grids, section limits
  | "hidden"
  | "water"
  | "moisture"
  | "steam"
  | "heat"
  | "air"
  | "choice" // what the hand can change, what is picked
  | "fail"
  | "quiet" // secondary words and scales
  | "strong"; // figures and names

/** What an item stands for, so that a click or a screen reader can find it. */
export interface Reference {
  readonly section?: string;
  readonly part?: string;
  readonly figure?: string;
}

interface ItemBase {
  /** Stable over edits: the same thing keeps its key. */
  readonly key: string;
  readonly reference: Reference;
  readonly ink: Ink;
  /** Spoken and shown on hover. */
  readonly label?: string;
}

/** Straight pieces through points `[x1, y1, x2, y2, …]`; filled when `fill` names an ink. */
export interface LineItem extends ItemBase {
  readonly shape: "line";
  readonly points: readonly number[];
  /** Points, counted from 0, with which another line begins: many alike, such as the cells of a field, are one item. */
  readonly breaks?: readonly number[];
  readonly closed?: boolean;
  readonly fill?: Ink | "paper";
  readonly dash?: "short" | "long";
  /** 0…1: the fill is a tone without an edge, as in fields of cells; left out, the painter's tint with its edge. */
  readonly tone?: number;
}

/** A circle; filled when `fill` names an ink. */
export interface CircleItem extends ItemBase {
  readonly shape: "circle";
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly fill?: Ink | "paper";
}

/** A word or a figure at a point. */
export interface TextItem extends ItemBase {
  readonly shape: "text";
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: "start" | "middle" | "end";
  /** Three sizes only; in the list's unit the painter decides how large they are. */
  readonly size: "small" | "normal" | "large";
  /** Degrees anticlockwise. */
  readonly turn?: number;
}

/** One thing to be painted. */
export type DisplayItem = LineItem | CircleItem | TextItem;
