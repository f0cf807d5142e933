import { coilPriceFormula } from "@oncethrough/engine/design/coil-price";
import type { RecoveryAlternative } from "@oncethrough/engine/design/recovery-alternative";
import type { SectionCoilAlternative, SectionCoilChoice } from "@oncethrough/engine/design/section-alternatives";
import type { SteamAlternative } from "@oncethrough/engine/design/steam-alternative";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import { toDisplay } from "@oncethrough/engine/quantity/print";
import type { CoilBlock } from "@oncethrough/engine/section/coil/block";
import type { RecoveryCoilDesign } from "@oncethrough/engine/section/recovery-coil/design";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import type { Choice, ChoiceColumn, Choices, FieldChange } from "./choices.ts";
import { builtChanges, builtName, foundWords, refusedWords } from "./coil-choices.ts";

/** What the search for coils on steam, or of a run-around loop, came to. */
export interface RatedCoilsFound {
  readonly at: { readonly name: string };
  readonly ratedChoice: SectionCoilChoice;
}

const builtColumns: readonly ChoiceColumn[] = [
  { key: "surface", name: "surface", quantity: "words", meaning: "finned surface" },
  { key: "rows", name: "rows", quantity: "count", meaning: "tube rows" },
  { key: "fins", name: "fins", quantity: "pitch", meaning: "fins" },
  { key: "price", name: "price", quantity: "count", meaning: "price index, the present coil 100" },
  { key: "capacity", name: "capacity", quantity: "power", meaning: "capacity" },
  { key: "leaving", name: "air", quantity: "temperature", meaning: "leaving dry bulb, with all that the coil has" },
  { key: "air", name: "air loss", quantity: "pressureDifference", meaning: "air pressure drop" },
];

const steamColumns: readonly ChoiceColumn[] = [
  { key: "surplus", name: "surplus", quantity: "share", meaning: "capacity that the leaving air does not need" },
  { key: "condensate", name: "condensate", quantity: "massFlow", meaning: "condensate, valve open" },
  { key: "stall", name: "stalls above", quantity: "temperature", meaning: "entering air above which the coil stalls" },
];

const loopColumns: readonly ChoiceColumn[] = [
  { key: "circuits", name: "circuits", quantity: "count", meaning: "circuits of one coil" },
  { key: "turbulators", name: "wire", quantity: "words", meaning: "wire turbulators in the tubes" },
  { key: "effectiveness", name: "effectiveness", quantity: "share", meaning: "temperature effectiveness" },
  { key: "frost", name: "to frost", quantity: "power", meaning: "heat given up to the frost limit" },
  { key: "loop", name: "loop loss", quantity: "liquidPressureDrop", meaning: "liquid pressure drop of both coils" },
  {
    key: "exhaust",
    name: "exhaust loss",
    quantity: "pressureDifference",
    meaning: "air pressure drop of the exhaust coil",
  },
  { key: "tubes", name: "in tubes", quantity: "liquidVelocity", meaning: "velocity in the tubes" },
];

/** Other coils on steam or of a loop for a section, its present one marked. */
export function ratedCoilChoices(
  section: UnitSection,
  { at, ratedChoice }: RatedCoilsFound,
  system: UnitSystem,
): Choices {
  const { candidates, present, looked, refused, wanted } = ratedChoice;
  const { coil } = (section.design as { readonly block: CoilBlock }).block;
  const toChoice = (each: SectionCoilAlternative): Choice => ({
    key: keyOf(each),
    name: builtName(each),
    figures: { ...builtFigures(each), ...(isLoop(each) ? loopFigures(each) : steamFigures(each)) },
    changes: keptFlow(section, builtChanges(each, coil)),
  });
  return {
    columns: [...builtColumns, ...(section.kind === "recovery coil" ? loopColumns : steamColumns)],
    list: candidates.map(toChoice),
    present: present === undefined ? undefined : toChoice(present),
    plot: { x: { column: "air", better: "less" }, y: { column: "capacity", better: "more" } },
    found: foundWords(candidates.length, looked, wanted, at.name, system),
    remarks: [...refusedWords(refused), `price index: ${coilPriceFormula}`],
  };
}

/** A loop's flow stays as it is: where the job leaves it to its default, another coil would bring another with it. */
function keptFlow(section: UnitSection, changes: readonly FieldChange[]): readonly FieldChange[] {
  const { loopFlow } = section.values as { readonly loopFlow?: number };
  const { loopVolumeFlow } = section.design as Partial<RecoveryCoilDesign>;
  if (loopVolumeFlow === undefined || loopFlow !== undefined || changes.length === 0) return changes;
  return [...changes, { field: "loopFlow", typed: `${toDisplay(loopVolumeFlow, "liquidFlow", "ip").toFixed(2)} gpm` }];
}

function isLoop(each: SectionCoilAlternative): each is RecoveryAlternative {
  return "loopPressureDrop" in each;
}

function keyOf(each: SectionCoilAlternative): string {
  const loop = isLoop(each) ? [each.circuits, each.turbulators ? "wire" : "none"] : [];
  return [each.surface, each.rows, Math.round(each.fins), ...loop].join("|");
}

function builtFigures(each: SectionCoilAlternative) {
  return {
    surface: each.surface.replace(/^typical /, ""),
    rows: each.rows,
    fins: each.fins,
    price: each.priceIndex,
    capacity: each.capacity,
    leaving: each.leavingDryBulb,
    air: each.airPressureDrop,
  };
}

function steamFigures({ surplus, condensate, stallAirTemperature }: SteamAlternative) {
  return { surplus, condensate, stall: stallAirTemperature };
}

function loopFigures(each: RecoveryAlternative) {
  return {
    circuits: each.circuits,
    turbulators: each.turbulators ? "wire" : "",
    effectiveness: each.temperatureEffectiveness,
    frost: each.frostGivenUp,
    loop: each.loopPressureDrop,
    exhaust: each.exhaustPressureDrop,
    tubes: each.tubeVelocity,
  };
}
