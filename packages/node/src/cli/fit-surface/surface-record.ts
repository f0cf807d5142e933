import type { FinnedSurface } from "@oncethrough/engine/component/finned-surface/family";
import type { SurfaceFit } from "@oncethrough/engine/design/surface-fit";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { printInUnit } from "@oncethrough/engine/quantity/print";

/** What a fitted record is made of. */
export interface SurfaceRecordParts {
  readonly fit: Extract<SurfaceFit, { ok: true }>;
  readonly name: string;
  /** The file of the points, as it is cited. */
  readonly source: string;
  /** Year-month-day. */
  readonly date: string;
}

/** The text of a catalogue file with the fitted surface as its one record. */
export function surfaceRecord({ fit, name, source, date }: SurfaceRecordParts): string {
  const { surface } = fit;
  const length = (value: number, kind: QuantityKind = "length") => printInUnit(value, kind, "in");
  const number = (value: number) => String(Number(value.toPrecision(5)));
  const lines: [string, string | undefined][] = [
    ["pattern", surface.pattern],
    ["tube outside diameter", length(surface.tubeOutsideDiameter)],
    ["tube wall", length(surface.tubeWall, "smallLength")],
    ["tube material", surface.tubeMaterial],
    ["transverse pitch", length(surface.transversePitch)],
    ["longitudinal pitch", length(surface.longitudinalPitch)],
    ["staggered", surface.staggered ? "yes" : "no"],
    ["fin material", surface.finMaterial],
    ["fin thickness", length(surface.finThickness, "smallLength")],
    ["collars", surface.collars ? "yes" : "no"],
    ["correlation", surface.correlation],
    ["heat factor", number(surface.heatFactor)],
    ["friction factor", number(surface.frictionFactor)],
    ["contact resistance", surface.contactResistance === 0 ? undefined : `${number(surface.contactResistance)} m²K/W`],
    ["tube heat factor", number(surface.tubeHeatFactor)],
    ["wet heat", surface.wetHeat],
    ["wet heat factor", surface.wetHeatFactor === undefined ? undefined : number(surface.wetHeatFactor)],
    ["lewis factor", number(surface.lewisFactor)],
    ["wet friction", surface.wetFriction],
    ["wet friction factor", surface.wetFrictionFactor === undefined ? undefined : number(surface.wetFrictionFactor)],
  ];
  const tested = (surface.tested ?? []).map(
    ({ reynolds, colburn, friction }) =>
      `      - { reynolds: ${number(reynolds)}, colburn: ${number(colburn)}, friction: ${number(friction)} }\n`,
  );
  const fields = lines.flatMap(([key, value]) => (value === undefined ? [] : [`    ${key}: ${value}\n`]));
  return `family: finned surface
records:
  - name: ${JSON.stringify(name)}
    basis: tested
    source: ${JSON.stringify(`${fit.isSteam ? "test points or rating table" : "test points"} ${source}`)}
    date: ${date}
    note: ${JSON.stringify(noteOf(fit, surface))}
${fields.join("")}${tested.length === 0 ? "" : `    tested:\n${tested.join("")}`}`;
}

function noteOf(fit: Extract<SurfaceFit, { ok: true }>, surface: FinnedSurface): string {
  const factors = fit.factors.map(
    ({ factor, value, low, high }) => `${factor} ${value.toFixed(3)} (95 %: ${low.toFixed(3)} to ${high.toFixed(3)})`,
  );
  const wet = fit.points.filter(({ wetShare }) => wetShare > 0).length;
  return `Fitted to ${fit.points.length} points, ${wet} of them wet by it, starting from "${surface.head.name}": ${factors.join(", ")}; errors of heat ${errorWords(fit.heatErrors)}. ${fit.isSteam ? "Steam in the tubes." : "Clean tubes."} ${frictionWords(fit)}`;
}

function frictionWords({ points, lossErrors }: Extract<SurfaceFit, { ok: true }>): string {
  if (lossErrors === undefined) return "Friction is that of the record it started from.";
  const count = points.filter(({ loss }) => loss !== undefined).length;
  return `Friction fitted to ${count} air pressure losses; errors ${errorWords(lossErrors)}.`;
}

function errorWords({ meanSize, largest }: { readonly meanSize: number; readonly largest: number }): string {
  return `${(100 * meanSize).toFixed(1)} % in the mean of sizes, ${(100 * largest).toFixed(1)} % at most`;
}
