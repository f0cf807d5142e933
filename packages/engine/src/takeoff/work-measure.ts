import type { Part } from "#arrangement/part";
import { visitParts } from "#arrangement/part";

/** What hours of work can go with. */
export const workMeasures = [
  "blank",
  "square metre of panel",
  "panel",
  "door",
  "kilogram of frame and rail",
  "pan",
  "coil",
  "fan",
  "bought part",
  "section",
  "piece",
  "unit",
] as const;

/** One of them. */
export type WorkMeasure = (typeof workMeasures)[number];

/** How much there is of each. */
export type WorkAmounts = Record<WorkMeasure, number>;

/** Nothing of anything. */
export function noWork(): WorkAmounts {
  return Object.fromEntries(workMeasures.map((measure) => [measure, 0])) as WorkAmounts;
}

/** What there is to do on a part and all below it. */
export function addWork(part: Part, amounts: WorkAmounts): void {
  visitParts(part, (each) => {
    if (each.kind === "assembly") {
      if (/\/coil \d+$/.test(each.key)) amounts.coil += 1;
      if (each.children.some((child) => /\/(sprung|fixed)$/.test(child.key))) amounts.fan += 1;
      return;
    }
    for (const { blanks } of each.sheets) for (const { count } of blanks) amounts.blank += count;
    if (each.kind === "panel") {
      amounts.panel += 1;
      const { x, y, z } = each.size;
      amounts["square metre of panel"] += Math.max(x * y, y * z, z * x) / 1e6;
    }
    if (each.kind === "door") amounts.door += 1;
    if (each.kind === "pan") amounts.pan += 1;
    if (each.kind === "rail" || each.kind === "frame") amounts["kilogram of frame and rail"] += each.mass;
    // Driving screws is in the hours of what they hold.
    if (each.bought !== undefined && each.kind !== "fastener") amounts["bought part"] += 1;
  });
}
