import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { sectionKind } from "@oncethrough/engine/job/job";
import type { UnitSystem } from "@oncethrough/engine/quantity/kind";
import type { Unit } from "@oncethrough/engine/unit/unit";
import { shortLength } from "./length-steps.ts";

/** What a new section is begun with. */
export interface Beginning {
  readonly unit: Unit;
  readonly catalogue: Catalogue;
  readonly system: UnitSystem;
}

/** A new section as it is written into the job text, with a name of its own. */
export function newSectionText(kind: string, name: string, beginning: Beginning): string {
  const named = name === kind ? [] : [`name: ${name}`];
  return [`kind: ${kind}`, ...named, ...firstLines(kind, beginning), ""].join("\n");
}

/** The kind's own name, or with a number behind it where another section has that. */
export function freeName(kind: string, unit: Unit): string {
  const taken = new Set(unit.sections.map((section) => section.name));
  let name = kind;
  for (let number = 2; taken.has(name); number++) name = `${kind} ${number}`;
  return name;
}

/** What a kind has no default for: records of the catalogue, and sizes that fit the cabinet. */
function firstLines(kind: string, { unit, catalogue, system }: Beginning): readonly string[] {
  const { width, height } = unit.frame;
  const length = (value: number) => shortLength(value, system);
  const record = (field: string) => firstRecord(kind, field, catalogue);
  switch (kind) {
    case "louver":
      return [
        `louver: ${record("louver")}`,
        ...(unit.sections[0]?.kind === "intake hood" ? ["exposure: behind a hood"] : []),
      ];
    case "mixing box":
      return [
        "outside air:",
        `  damper: ${catalogue.names("damper")[0]}`,
        `  width: ${length(0.6 * width)}`,
        `  height: ${length(0.6 * height)}`,
      ];
    case "shut-off damper":
      return [`damper: ${record("damper")}`, `width: ${length(0.94 * width)}`, `height: ${length(0.94 * height)}`];
    case "filter bank":
      return [`medium: ${record("medium")}`];
    case "access":
      return height < tallestDoor ? [`door height: ${length(height - 0.1)}`] : [];
    case "moisture eliminator":
      return [`eliminator: ${record("eliminator")}`];
    case "steam humidifier":
      return [`dispersion: ${record("dispersion")}`];
    case "fan":
      return [`diameter: ${length(0.28 * height)}`, "motor power: 10 hp"];
    case "discharge plenum":
      return [`outlet width: ${length(0.5 * width)}`, `outlet height: ${length(0.4 * height)}`];
    case "special":
      return [
        "what: to be described",
        "curve:",
        "  - { airflow: '10,000 cfm', pressure loss: 0.1 in.wg }",
        `length: ${length(0.61)}`,
        "mass: 200 lb",
        "source: a first guess, to be replaced by the supplier's figures",
      ];
    default:
      return [];
  }
}

/** m: the door that an access has by default, with its frame. */
const tallestDoor = 1.93;

function firstRecord(kind: string, field: string, catalogue: Catalogue): string {
  const found = sectionKind(kind)?.fields[field];
  return found?.type === "component" ? (catalogue.names(found.family)[0] ?? "") : "";
}
