import type { FitErrors } from "@oncethrough/engine/design/fit-confidence";
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
    errors: errorsOf(fit.heatErrors),
    ...(fit.lossErrors === undefined ? {} : { lossErrors: errorsOf(fit.lossErrors) }),
    points: fit.points.map(({ loss, ...point }, index) => {
      return { line: lines[index] ?? 0, ...point, ...(loss === undefined ? {} : { airPressureDrop: loss }) };
    }),
    record: parts.record,
  };
}

function errorsOf({ meanSize, scatter, largest }: FitErrors): object {
  return { meanSize, rootMeanSquare: scatter, largest };
}

/** The published schema of `oncethrough fit-surface --json`. */
export function fitSurfaceSchema(): object {
  const multiplier = record({
    factor: { enum: [...surfaceFactors] },
    value: number("as fitted"),
    low: number("lower bound with 95 % confidence"),
    high: number("upper bound"),
  });
  const point = record(
    {
      line: number("of the file of points"),
      measured: number("W; negative where the air is heated"),
      before: number("W by the surface that the fit started from"),
      fitted: number("W by the fitted surface"),
      wetShare: number("share of the rows that are wet"),
      rangeDistance: number("distance from the correlation's range, 0 inside"),
      airPressureDrop: record({
        measured: number("Pa"),
        before: number("Pa by the surface that the fit started from"),
        fitted: number("Pa by the fitted surface"),
      }),
    },
    "airPressureDrop",
  );
  const errors = (of: string) =>
    record({
      meanSize: number(`share of the ${of}, mean of sizes`),
      rootMeanSquare: number(`share of the ${of}`),
      largest: number(`share of the ${of}`),
    });
  return published(
    "fit-surface",
    "A finned surface fitted to points, as printed by `oncethrough fit-surface --json`; all numbers in SI units",
    record(
      {
        format: { const: format },
        name: text("of the record"),
        startedFrom: text("name of the catalogue record"),
        tubes: { enum: ["water", "steam"] },
        multipliers: listOf(multiplier),
        errors: errors("heat"),
        lossErrors: errors("air pressure loss"),
        points: listOf(point),
        record: text("the catalogue record (YAML)"),
      },
      "lossErrors",
    ),
  );
}
