import type { QuantityKind } from "#quantity/kind";
import type { SectionRating, Shortfall, WorkingLine, WorkingTable } from "#section/contract";
import { declaredNotes } from "#section/declared-notes";
import { actualAirflow } from "#section/station";
import type { PlacedDeclared, PlacedNote, PlacedShortfall, Station, UnitRating } from "./rating.ts";
import type { Unit } from "./unit.ts";
import { wallPressureOf } from "./walk.ts";

/** K by which a supply temperature may miss before it counts as missed. */
const temperatureGrace = 0.05;
/** Share by which an outside-air share, a flow or a humidity ratio may miss. */
const shareGrace = 0.005;

/** The planes of the airway: outdoors, and behind every section. */
export function stationsOf(unit: Unit, rating: UnitRating): readonly Station[] {
  const area = unit.frame.width * unit.frame.height;
  const outdoors: Station = {
    after: "outdoors",
    position: -(unit.sections[0]?.layout.outside ?? 0),
    air: rating.outdoors,
    velocity: 0,
    wallPressure: 0,
  };
  const behind = unit.sections.map((section, index): Station => {
    const air = rating.between[index]!;
    return {
      after: section.name,
      position: section.start + section.layout.length,
      air,
      velocity: actualAirflow(air) / area,
      wallPressure: wallPressureOf(unit, rating, index),
    };
  });
  return [outdoors, ...behind];
}

/** What is asked and not held: by the sections, and by the unit as a whole (`unit`). */
export function shortfallsOf(unit: Unit, rating: UnitRating): readonly PlacedShortfall[] {
  const at = { condition: rating.condition, operation: rating.operation };
  const bySection = unit.sections.flatMap((section, index) => {
    const found = section.behaviour.shortfalls?.(section.design, rating.sections[index]!, at) ?? [];
    return found.map((shortfall) => ({ ...shortfall, section: section.name }));
  });
  return [...bySection, ...unitShortfalls(rating).map((shortfall) => ({ ...shortfall, section: "unit" }))];
}

function unitShortfalls(rating: UnitRating): readonly Shortfall[] {
  const { condition, supply } = rating;
  if (condition.flow.mode === "fan stopped") return [];
  return [...temperatureShortfalls(rating), ...moistureShortfalls(rating), ...flowShortfalls(rating)].filter(
    () => supply.dryAirFlow > 0,
  );
}

function temperatureShortfalls(rating: UnitRating): readonly Shortfall[] {
  const { season, setPoints } = rating.condition;
  const wanted = setPoints.supply;
  if (wanted === undefined) return [];
  const got = rating.supply.dryBulb;
  const missed = season === "cooling" ? got - wanted : wanted - got;
  const words = season === "cooling" ? "supply air warmer than wanted" : "supply air colder than wanted";
  return missed > temperatureGrace ? [{ what: words, quantity: "temperature", wanted, got }] : [];
}

function moistureShortfalls(rating: UnitRating): readonly Shortfall[] {
  const { supplyMaximumHumidityRatio: most, supplyMinimumHumidityRatio: least } = rating.condition.setPoints;
  const got = rating.supply.humidityRatio;
  const found: Shortfall[] = [];
  if (most !== undefined && got > most * (1 + shareGrace)) {
    found.push({ what: "supply air moister than the dew point allows", quantity: "humidityRatio", wanted: most, got });
  }
  if (least !== undefined && got < least * (1 - shareGrace)) {
    found.push({ what: "supply air drier than wanted", quantity: "humidityRatio", wanted: least, got });
  }
  return found;
}

function flowShortfalls(rating: UnitRating): readonly Shortfall[] {
  const { condition, supply } = rating;
  const found: Shortfall[] = [];
  const { fansOut } = condition;
  if (fansOut !== undefined) {
    const { leastDryAirFlow: wanted } = fansOut;
    if (supply.dryAirFlow < wanted * (1 - shareGrace)) {
      found.push({
        what: "less air than the duty asks with a fan out",
        quantity: "massFlow",
        wanted,
        got: supply.dryAirFlow,
      });
    }
  } else if (condition.flow.mode === "speed held") {
    const wanted = condition.externalStatic.designDryAirFlow;
    if (supply.dryAirFlow < wanted * (1 - shareGrace)) {
      found.push({ what: "less air than the duty asks", quantity: "massFlow", wanted, got: supply.dryAirFlow });
    }
  }
  return found;
}

/** What is worth minding in a rating, by section. */
export function notesOf(unit: Unit, rating: UnitRating): readonly PlacedNote[] {
  const at = { condition: rating.condition, operation: rating.operation };
  return unit.sections.flatMap((section, index) => {
    const found = section.behaviour.notes?.(section.design, rating.sections[index]!, at) ?? [];
    const declared = section.behaviour.declared?.(section.design, rating.sections[index]!, at);
    return [...declaredNotes(declared), ...found].map((note) => ({ ...note, section: section.name }));
  });
}

/** Suppliers' declared ratings beside ours, of every section for which the job holds one. */
export function declaredOf(unit: Unit, rating: UnitRating): readonly PlacedDeclared[] {
  const at = { condition: rating.condition, operation: rating.operation };
  return unit.sections.flatMap((section, index) => {
    const found = section.behaviour.declared?.(section.design, rating.sections[index]!, at);
    return found === undefined ? [] : [{ ...found, section: section.name }];
  });
}

/** The arithmetic behind one figure, with the numbers put in. */
export interface EvaluatedWorking {
  readonly figure: string;
  readonly name: string;
  readonly quantity: WorkingQuantity;
  readonly equation: string;
  readonly terms: readonly {
    readonly symbol: string;
    readonly name: string;
    readonly quantity: WorkingQuantity;
    readonly value: number;
  }[];
  readonly result: number;
  readonly source: string;
}

type WorkingQuantity = QuantityKind | "count" | "factor";

/** The working of every figure of a section that has one; undefined when the unit has no section of that name. */
export function workingOf(
  unit: Unit,
  rating: UnitRating,
  sectionName: string,
): readonly EvaluatedWorking[] | undefined {
  const index = unit.sections.findIndex((section) => section.name === sectionName);
  const section = unit.sections[index];
  const record = rating.sections[index];
  if (section === undefined || record === undefined) return undefined;
  return section.behaviour.working.map((line) => evaluateWorking(line, section.design, record));
}

/** Tables behind the figures of a section; none when the unit has no section of that name. */
export function workingTablesOf(unit: Unit, rating: UnitRating, sectionName: string): readonly WorkingTable[] {
  const index = unit.sections.findIndex((section) => section.name === sectionName);
  const section = unit.sections[index];
  const record = rating.sections[index];
  if (section === undefined || record === undefined) return [];
  const at = { condition: rating.condition, operation: rating.operation };
  return section.behaviour.workingTables?.(section.design, record, at) ?? [];
}

/** A line of arithmetic with the numbers of a rating put in. */
export function evaluateWorking(
  line: WorkingLine<unknown, SectionRating>,
  design: unknown,
  record: SectionRating,
): EvaluatedWorking {
  return {
    figure: line.figure,
    name: line.name,
    quantity: line.quantity,
    equation: line.equation,
    terms: line.terms.map(({ symbol, name, quantity, value }) => ({
      symbol,
      name,
      quantity,
      value: value(record, design),
    })),
    result: line.evaluate(record, design),
    source: line.source,
  };
}
