import { type SurfaceFit, surfaceFactors } from "@oncethrough/engine/design/surface-fit";
import { listOf, number, published, record, text } from "../schema/describe.ts";

const format = "oncethrough fitted surface 1";

/** A fit as programs read it: all numbers in SI units. */
export function fittedSurfaceJson(parts: {
  readonly fit: Extract<SurfaceFit, { ok: true }>;
  readonly lines: readonly number[];
  readonly name: string;
  readonly startedFrom: string;
  readonly record: string;
}): object {
  const { fit, lines, name, startedFrom } = parts;
  return {
    format,
    name,
    startedFrom,
    tubes: fit.isSteam ? "steam" : "water",
    multipliers: fit.factors,
    errors: { meanSize: fit.meanSize, rootMeanSquare: fit.scatter, largest: fit.largest },
    points: fit.points.map((point, index) => ({ line: lines[index] ?? 0, ...point })),
    record: parts.record,
  };
}

/** The published schema of `oncethrough fit-surface --json`. */
export function fitSurfaceSchema(): object {
  const multiplier = record({
    factor: { enum: [...surfaceFactors] },
    value: number("as fitted"),
    low: number("lower bound with 95 % confidence"),
    high: number("upper bound"),
  });
  const point = record({
    line: number("of the file of points"),
    measured: number("W; negative where the air is heated"),
    before: number("W by the surface that the fit started from"),
    fitted: number("W by the fitted surface"),
    wetShare: number("share of the rows that are wet"),
    rangeDistance: number("distance from the correlation's range, 0 inside"),
  });
  return published(
    "fit-surface",
    "A finned surface fitted to points, as printed by `oncethrough fit-surface --json`; all numbers in SI units",
    record({
      format: { const: format },
      name: text("of the record"),
      startedFrom: text("name of the catalogue record"),
      tubes: { enum: ["water", "steam"] },
      multipliers: listOf(multiplier),
      errors: record({
        meanSize: number("share of the heat, mean of sizes"),
        rootMeanSquare: number("share of the heat"),
        largest: number("share of the heat"),
      }),
      points: listOf(point),
      record: text("the catalogue record (YAML)"),
    }),
  );
}
