import { coilRefusals, coilSortings } from "@oncethrough/engine/design/coil-alternative";
import { listOf, number, published, record, text } from "../schema/describe.ts";

const alternative = record({
  surface: text("name of the catalogue record"),
  rows: number("count"),
  fins: number("1/m"),
  circuits: number("count, of one coil"),
  turbulators: { type: "boolean" },
  tubesPerRow: number("count, of one coil"),
  passes: number("count"),
  present: { type: "boolean", description: "the coil as the file has it" },
  priceIndex: number("the present coil 100, by invented rates"),
  capacity: number("W, all stacked coils, valve open"),
  sensibleCapacity: number("W"),
  leavingDryBulb: number("°C"),
  leavingHumidityRatio: number("kg/kg"),
  liquidMassFlow: number("kg/s, all stacked coils"),
  liquidVolumeFlow: number("m³/s, all stacked coils"),
  liquidLeaving: number("°C"),
  tubeVelocity: number("m/s"),
  liquidPressureDrop: number("Pa between connections"),
  faceVelocity: number("m/s, of the air as it enters"),
  airPressureDrop: number("Pa, as wet as the coil is"),
  carryOverShare: number("peak face velocity over the one that throws water; 0 for heating"),
  rangeDistance: number("distance from the correlation's range, 0 inside"),
  depth: number("m along the flow with the casing"),
});

/** The published schema of `oncethrough coil --alternatives --json`. */
export function alternativesSchema(): object {
  return published(
    "coil-alternatives",
    "Other ways to build a coil, as printed by `oncethrough coil --alternatives --json`; all numbers in SI units",
    record(
      {
        format: { const: "oncethrough coil alternatives 1" },
        kind: { enum: ["chilled-water coil", "hot-water coil"] },
        wantedLeaving: number("°C of dry bulb"),
        sortedBy: { enum: [...coilSortings] },
        priceFormula: text("how the price index comes about"),
        looked: number("ways looked at"),
        met: number("ways that do the duty within the limits; the list may be shorter"),
        refused: record(Object.fromEntries(coilRefusals.map((each) => [each, number("ways left out for this first")]))),
        present: alternative,
        candidates: listOf(alternative),
      },
      "present",
    ),
  );
}
