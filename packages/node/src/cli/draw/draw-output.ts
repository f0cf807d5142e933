import { weighUnit } from "@oncethrough/engine/arrangement/weigh";
import { endViews } from "@oncethrough/engine/drawing/end";
import { planView } from "@oncethrough/engine/drawing/plan";
import { shopElevation } from "@oncethrough/engine/drawing/shop-elevation";
import { type Solid, solidsOf } from "@oncethrough/engine/drawing/solids";
import type { Job } from "@oncethrough/engine/job/job";
import type { DisplayList } from "@oncethrough/engine/section/display";

/** The views that can be drawn. */
export type ViewName = "side" | "plan" | "end";

/** What `oncethrough draw --json` prints: the display list of the view in millimetres, and the solids when asked for. */
export interface DrawOutput {
  readonly format: "oncethrough drawing 1";
  readonly tag: string;
  readonly view: ViewName;
  readonly list: DisplayList;
  readonly solids?: readonly Solid[];
}

const draw = { side: shopElevation, plan: planView, end: endViews } as const;

/** Draws a view of the job's unit. */
export function drawingOf(
  job: Job,
  view: ViewName,
  options: { readonly width: number; readonly system: "ip" | "si"; readonly withSolids: boolean },
): DrawOutput {
  const { unit, duty } = job;
  const { width, system } = options;
  const weighing = weighUnit(unit, duty, job.conditions);
  return {
    format: "oncethrough drawing 1",
    tag: job.tag,
    view,
    list: draw[view](unit, weighing, { system, width }),
    ...(options.withSolids ? { solids: solidsOf(weighing.arrangement) } : {}),
  };
}
