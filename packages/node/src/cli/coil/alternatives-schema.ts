import { coilRefusals, coilSortings } from "@oncethrough/engine/design/coil-alternative";
import { ratedCoilKinds } from "@oncethrough/engine/design/section-alternatives";
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

const steamAlternative = record({
  surface: text("name of the catalogue record"),
  rows: number("count"),
  fins: number("1/m"),
  tubesPerRow: number("count, of one coil or lane"),
  present: { type: "boolean", description: "the coil as the file has it" },
  priceIndex: number("the present coil 100, by invented rates"),
  capacity: number("W, all coils or lanes, valve open"),
  leavingDryBulb: number("°C, valve open"),
  condensate: number("kg/s, valve open"),
  surplus: number("share of the capacity that the leaving air wanted does not need"),
  stallAirTemperature: number("°C of entering air above which it stalls at the leaving air wanted"),
  breakerAirTemperature: number("°C of entering air above which its vacuum breaker stands open"),
  faceVelocity: number("m/s, of the air as it enters"),
  airPressureDrop: number("Pa"),
  rangeDistance: number("distance from the correlation's range, 0 inside"),
  depth: number("m along the flow with the casing"),
});

const recoveryAlternative = record({
  surface: text("name of the catalogue record"),
  rows: number("count"),
  fins: number("1/m"),
  circuits: number("count, of one coil"),
  turbulators: { type: "boolean" },
  tubesPerRow: number("count, of one coil"),
  passes: number("count"),
  present: { type: "boolean", description: "the coil as the file has it" },
  priceIndex: number("both coils against both present ones, 100, by invented rates"),
  capacity: number("W between the two airs"),
  frostGivenUp: number("W that the frost limit takes off it"),
  leavingDryBulb: number("°C"),
  temperatureEffectiveness: number("change of the air over the difference of the two airs"),
  liquidMassFlow: number("kg/s of the loop"),
  tubeVelocity: number("m/s in the section's coil"),
  loopPressureDrop: number("Pa in both coils"),
  faceVelocity: number("m/s, of the air as it enters"),
  airPressureDrop: number("Pa, as wet as the coil is"),
  exhaustPressureDrop: number("Pa of the exhaust air over dry fins"),
  rangeDistance: number("distance from the correlation's range, 0 inside"),
  depth: number("m along the flow with the casing"),
});

const anyAlternative = { anyOf: [alternative, steamAlternative, recoveryAlternative] };

/** The published schema of `oncethrough coil --alternatives --json`. */
export function alternativesSchema(): object {
  return published(
    "coil-alternatives",
    "Other ways to build a coil, as printed by `oncethrough coil --alternatives --json`; all numbers in SI units",
    record(
      {
        format: { const: "oncethrough coil alternatives 1" },
        kind: { enum: ["chilled-water coil", "hot-water coil", ...ratedCoilKinds] },
        wantedLeaving: number("°C of dry bulb"),
        sortedBy: { enum: [...coilSortings] },
        priceFormula: text("how the price index comes about"),
        looked: number("ways looked at"),
        met: number("ways that do the duty within the limits; the list may be shorter"),
        refused: record(Object.fromEntries(coilRefusals.map((each) => [each, number("ways left out for this first")]))),
        present: anyAlternative,
        candidates: listOf(anyAlternative),
      },
      "present",
    ),
  );
}
