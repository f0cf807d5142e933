import type { Coil } from "@oncethrough/engine/component/coil/coil";
import type { CoilAlternative } from "@oncethrough/engine/design/coil-alternative";
import { coilPriceFormula } from "@oncethrough/engine/design/coil-price";
import { metresPerInch } from "@oncethrough/engine/quantity/inch-pound";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { printQuantity } from "@oncethrough/engine/quantity/print";
import type { CoilBlock } from "@oncethrough/engine/section/coil/block";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import type { Choice, ChoiceColumn, Choices, FieldChange } from "./choices.ts";

/** What the search for coils came to. */
export interface CoilsFound {
  readonly at: { readonly name: string };
  readonly choice: {
    readonly looked: number;
    readonly refused: Readonly<Record<string, number>>;
    readonly wanted: number;
    readonly present: CoilAlternative | undefined;
    readonly candidates: readonly CoilAlternative[];
  };
}

const columns: readonly ChoiceColumn[] = [
  { key: "surface", name: "surface", quantity: "words", meaning: "finned surface" },
  { key: "rows", name: "rows", quantity: "count", meaning: "tube rows" },
  { key: "fins", name: "fins", quantity: "pitch", meaning: "fins" },
  { key: "circuits", name: "circuits", quantity: "count", meaning: "circuits of one coil" },
  { key: "turbulators", name: "wire", quantity: "words", meaning: "wire turbulators in the tubes" },
  { key: "price", name: "price", quantity: "count", meaning: "price index, the present coil 100" },
  { key: "capacity", name: "capacity", quantity: "power", meaning: "capacity" },
  { key: "leaving", name: "air", quantity: "temperature", meaning: "leaving dry bulb, valve open" },
  { key: "air", name: "air loss", quantity: "pressureDifference", meaning: "air pressure drop" },
  { key: "water", name: "water loss", quantity: "liquidPressureDrop", meaning: "water pressure drop" },
  { key: "flow", name: "water", quantity: "liquidFlow", meaning: "water flow, valve open" },
  { key: "tubes", name: "in tubes", quantity: "liquidVelocity", meaning: "velocity in the tubes" },
];

/** Other coils for a section, its present one marked and the price index based on it. */
export function coilChoices(section: UnitSection, { at, choice }: CoilsFound, system: UnitSystem): Choices {
  const { coil } = (section.design as { readonly block: CoilBlock }).block;
  const isPresent = (each: CoilAlternative) => keyOf(each) === presentKey(coil);
  const all = choice.present === undefined ? choice.candidates : [choice.present, ...choice.candidates];
  const present = choice.candidates.find(isPresent) ?? all.find(isPresent);
  const base = present?.priceIndex ?? 100;
  const toChoice = (each: CoilAlternative): Choice => ({
    key: keyOf(each),
    name: nameOf(each),
    figures: {
      surface: each.surface.replace(/^typical /, ""),
      rows: each.rows,
      fins: each.fins,
      circuits: each.circuits,
      turbulators: each.turbulators ? "wire" : "",
      price: (100 * each.priceIndex) / base,
      capacity: each.capacity,
      leaving: each.leavingDryBulb,
      air: each.airPressureDrop,
      water: each.liquidPressureDrop,
      flow: each.liquidVolumeFlow,
      tubes: each.tubeVelocity,
    },
    changes: changesTo(each, coil),
  });
  const refused = Object.entries(choice.refused).filter(([, count]) => count > 0);
  const wanted = printQuantity(choice.wanted, "temperature", system);
  const count = (value: number) => value.toLocaleString("en-US");
  return {
    columns,
    list: choice.candidates.map(toChoice),
    present: present === undefined ? undefined : toChoice(present),
    plot: { x: { column: "air", better: "less" }, y: { column: "capacity", better: "more" } },
    found: `${count(choice.candidates.length)} of ${count(choice.looked)} ways leave the air at ${wanted} at ${at.name}`,
    remarks: [
      ...(refused.length === 0
        ? []
        : [`left out for ${refused.map(([why, many]) => `${why} ${count(many)}`).join(", ")}`]),
      `price index: ${coilPriceFormula}`,
    ],
  };
}

function keyOf(each: Pick<CoilAlternative, "surface" | "rows" | "fins" | "circuits" | "turbulators">): string {
  return [each.surface, each.rows, Math.round(each.fins), each.circuits, each.turbulators ? "wire" : "none"].join("|");
}

function presentKey({ surface, rows, finsPerLength, circuits, turbulators }: Coil): string {
  return keyOf({ surface: surface.head.name, rows, fins: finsPerLength, circuits, turbulators });
}

function nameOf({ surface, rows, fins, circuits, turbulators }: CoilAlternative): string {
  return `${rows} rows, ${perInch(fins)}, ${circuits} circuits, ${surface}${turbulators ? ", wire turbulators" : ""}`;
}

function perInch(fins: number): string {
  return `${Number((fins * metresPerInch).toFixed(2))} per in`;
}

/** The fields that differ from the coil as it is. */
function changesTo(each: CoilAlternative, coil: Coil): readonly FieldChange[] {
  const changes: FieldChange[] = [];
  const put = (differs: boolean, field: string, typed: string) => differs && changes.push({ field, typed });
  put(each.surface !== coil.surface.head.name, "surface", each.surface);
  put(each.rows !== coil.rows, "rows", String(each.rows));
  put(Math.abs(each.fins / coil.finsPerLength - 1) > 1e-6, "fins", perInch(each.fins));
  // Circuits left to their default follow the tubes of a row, which another surface may change.
  put(each.circuits !== coil.circuits || each.tubesPerRow !== coil.tubesPerRow, "circuits", String(each.circuits));
  put(each.turbulators !== coil.turbulators, "turbulators", each.turbulators ? "wire" : "none");
  return changes;
}
