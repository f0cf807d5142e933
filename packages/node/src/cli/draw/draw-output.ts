import { arrangeUnit } from "@oncethrough/engine/arrangement/arrange";
import { arrangementTask } from "@oncethrough/engine/arrangement/weigh";
import { airwayAxis } from "@oncethrough/engine/chart/airway-axis";
import { elevation } from "@oncethrough/engine/drawing/elevation";
import { type Solid, solidsOf } from "@oncethrough/engine/drawing/solids";
import type { Job } from "@oncethrough/engine/job/job";
import type { DisplayList } from "@oncethrough/engine/section/display";

/** The views that can be drawn. */
export type ViewName = "side";

/** What `oncethrough draw --json` prints: the display list of the view in millimetres, and the solids when asked for. */
export interface DrawOutput {
  readonly format: "oncethrough drawing 1";
  readonly tag: string;
  readonly view: ViewName;
  readonly list: DisplayList;
  readonly solids?: readonly Solid[];
}

/** Draws a view of the job's unit. */
export function drawingOf(
  job: Job,
  view: ViewName,
  options: { readonly width: number; readonly system: "ip" | "si"; readonly withSolids: boolean },
): DrawOutput {
  const { unit, duty } = job;
  const axis = airwayAxis(unit, options.width, 0);
  const list = elevation(unit, { axis, system: options.system, placement: duty.site.placement });
  return {
    format: "oncethrough drawing 1",
    tag: job.tag,
    view,
    list,
    ...(options.withSolids ? { solids: solidsOf(arrangeUnit(unit, arrangementTask(duty))) } : {}),
  };
}
