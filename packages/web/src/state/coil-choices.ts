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
    name: builtName(each),
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
    changes: builtChanges(each, coil),
  });
  return {
    columns,
    list: choice.candidates.map(toChoice),
    present: present === undefined ? undefined : toChoice(present),
    plot: { x: { column: "air", better: "less" }, y: { column: "capacity", better: "more" } },
    found: foundWords(choice.candidates.length, choice.looked, choice.wanted, at.name, system),
    remarks: [...refusedWords(choice.refused), `price index: ${coilPriceFormula}`],
  };
}

function keyOf(each: Pick<CoilAlternative, "surface" | "rows" | "fins" | "circuits" | "turbulators">): string {
  return [each.surface, each.rows, Math.round(each.fins), each.circuits, each.turbulators ? "wire" : "none"].join("|");
}

function presentKey({ surface, rows, finsPerLength, circuits, turbulators }: Coil): string {
  return keyOf({ surface: surface.head.name, rows, fins: finsPerLength, circuits, turbulators });
}

/** What was looked for and found, in words. */
export function foundWords(found: number, looked: number, wanted: number, at: string, system: UnitSystem): string {
  return `${count(found)} of ${count(looked)} ways leave the air at ${printQuantity(wanted, "temperature", system)} at ${at}`;
}

/** What ways were left out for, in words; none where none was. */
export function refusedWords(refused: Readonly<Record<string, number>>): readonly string[] {
  const some = Object.entries(refused).filter(([, many]) => many > 0);
  return some.length === 0 ? [] : [`left out for ${some.map(([why, many]) => `${why} ${count(many)}`).join(", ")}`];
}

function count(value: number): string {
  return value.toLocaleString("en-US");
}

/** How a coil is built; circuits and wire where liquid runs in its tubes. */
type Built = Pick<CoilAlternative, "surface" | "rows" | "fins" | "tubesPerRow"> &
  Partial<Pick<CoilAlternative, "circuits" | "turbulators">>;

/** `8 rows, 12 per in, 92 circuits, typical plain 5/8 in`. */
export function builtName({ surface, rows, fins, circuits, turbulators }: Built): string {
  const led = circuits === undefined ? "" : `, ${circuits} circuits`;
  return `${rows} row${rows === 1 ? "" : "s"}, ${perInch(fins)}${led}, ${surface}${turbulators ? ", wire turbulators" : ""}`;
}

function perInch(fins: number): string {
  return `${Number((fins * metresPerInch).toFixed(2))} per in`;
}

/** The fields that differ from the coil as it is. */
export function builtChanges(each: Built, coil: Coil): readonly FieldChange[] {
  const changes: FieldChange[] = [];
  const put = (differs: boolean, field: string, typed: string) => differs && changes.push({ field, typed });
  put(each.surface !== coil.surface.head.name, "surface", each.surface);
  put(each.rows !== coil.rows, "rows", String(each.rows));
  put(Math.abs(each.fins / coil.finsPerLength - 1) > 1e-6, "fins", perInch(each.fins));
  if (each.circuits === undefined) return changes;
  // Circuits left to their default follow the tubes of a row, which another surface may change.
  put(each.circuits !== coil.circuits || each.tubesPerRow !== coil.tubesPerRow, "circuits", String(each.circuits));
  put(each.turbulators !== coil.turbulators, "turbulators", each.turbulators ? "wire" : "none");
  return changes;
}
