import { type AirwayAxis, axisPoint } from "@oncethrough/engine/chart/airway-axis";
import type { CSSProperties } from "react";
import { useBench, useRating } from "./use-bench.ts";

/** Shares of the cabinet's height at which air is seen to move, and how late each strand begins, as a share of its way. */
const strands = [
  [0.14, 0.1],
  [0.14, 0.62],
  [0.31, 0.38],
  [0.31, 0.86],
  [0.48, 0.0],
  [0.48, 0.54],
  [0.66, 0.24],
  [0.66, 0.74],
  [0.84, 0.46],
  [0.84, 0.93],
] as const;

interface AirMotionProps {
  readonly axis: AirwayAxis;
  /** px of the cabinet's ceiling and floor. */
  readonly ceiling: number;
  readonly floor: number;
}

/** Air on its way through the cabinet, in its own time and to the drawing's scale; nothing moves while the fan stands. */
export function AirMotion({ axis, ceiling, floor }: AirMotionProps) {
  const unit = useBench((bench) => bench.sound?.job.unit);
  const rating = useRating();
  if (unit === undefined || rating === undefined || rating.operation.fanSpeed === 0) return null;
  const velocity = rating.supplyActualAirflow / (unit.frame.width * unit.frame.height);
  if (!(velocity > 0.05)) return null;
  const left = axisPoint(axis, 0);
  const width = axisPoint(axis, 1000 * unit.length) - left;
  const seconds = unit.length / velocity;
  return (
    <div className="air-motion" aria-hidden="true" style={{ left, top: ceiling, width, height: floor - ceiling }}>
      {strands.map(([height, late]) => (
        <i
          key={`${height} ${late}`}
          style={
            {
              top: `${100 * height}%`,
              "--way": `${width}px`,
              animationDuration: `${seconds.toFixed(2)}s`,
              animationDelay: `${(-late * seconds).toFixed(2)}s`,
            } as CSSProperties
          }
        />
      ))}
    </div>
  );
}
