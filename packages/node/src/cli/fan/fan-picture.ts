import { fanChart } from "@oncethrough/engine/chart/fan-chart";
import { fanChartPoint, fanDesignOf, fanSystemCurves } from "@oncethrough/engine/chart/fan-system";
import { svgText } from "@oncethrough/engine/drawing/svg-text";
import type { Job } from "@oncethrough/engine/job/job";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { createUnitRating, rateUnit } from "@oncethrough/engine/unit/rate-unit";

/** pt. */
const size = { width: 640, height: 680 } as const;

/**
 * The fan chart of a job as SVG: the points of all conditions, system curves of the one in hand; undefined where the fan
 * runs at none. A condition at which it stands gives way to the first at which it runs.
 */
export function fanPicture(job: Job, picked: string, system: UnitSystem): string | undefined {
  const points = job.conditions.flatMap((condition) => {
    const rating = rateUnit(job.unit, condition, createUnitRating(job.unit, condition));
    return fanChartPoint(job.unit, rating) ?? [];
  });
  const key = points.some((point) => point.key === picked) ? picked : points[0]?.key;
  const condition = job.conditions.find((each) => each.key === key);
  if (condition === undefined) return undefined;
  const section = job.unit.sections.find(({ behaviour }) => behaviour.role === "fan")?.name ?? "fan";
  const systems = [...fanSystemCurves(job.unit, condition)];
  const design = fanDesignOf(job.unit);
  return svgText(fanChart({ design, section, points, systems, picked: condition.key, system, ...size }));
}
