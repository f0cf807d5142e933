import { weightedLevel } from "@oncethrough/engine/component/fan-sound";
import type { FanCandidate } from "@oncethrough/engine/design/fan-selection";
import { metresPerInch } from "@oncethrough/engine/quantity/inch-pound";
import { type FanDesign, fanWidth } from "@oncethrough/engine/section/fan/design";
import type { FanSectionRating } from "@oncethrough/engine/section/fan/rate";
import { fanMadeSound } from "@oncethrough/engine/section/fan/sound";
import type { UnitSection } from "@oncethrough/engine/unit/unit";
import type { Choice, ChoiceColumn, Choices, FieldChange } from "./choices.ts";

/** A fan found; its wheel by name. */
type Found = Omit<FanCandidate, "wheel"> & { readonly wheel: string };

/** What the search for fans came to. */
export interface FansFound {
  readonly at: { readonly name: string };
  readonly looked: number;
  readonly candidates: readonly Found[];
}

const columns: readonly ChoiceColumn[] = [
  { key: "wheel", name: "wheel", quantity: "words", meaning: "line of wheels" },
  { key: "count", name: "fans", quantity: "count", meaning: "number of fans" },
  { key: "diameter", name: "diameter", quantity: "length", meaning: "wheel diameter" },
  { key: "class", name: "class", quantity: "words", meaning: "class of construction" },
  { key: "drive", name: "drive", quantity: "words", meaning: "how the motor drives" },
  { key: "speed", name: "speed", quantity: "rotationalSpeed", meaning: "wheel speed" },
  { key: "motor", name: "motor", quantity: "shaftPower", meaning: "rated power of each motor" },
  { key: "power", name: "mains", quantity: "electricPower", meaning: "power from the mains" },
  { key: "efficiency", name: "static eff.", quantity: "share", meaning: "static efficiency" },
  { key: "peak", name: "of peak", quantity: "share", meaning: "share of the peak static pressure" },
  { key: "sound", name: "sound", quantity: "weightedSoundLevel", meaning: "sound power at the outlet" },
  {
    key: "width",
    name: "width",
    quantity: "length",
    meaning: "what the fans take across, with the room that they need",
  },
  { key: "length", name: "length", quantity: "length", meaning: "length of the section" },
];

/** Other fans for a section; the present one with its figures at the same condition. */
export function fanChoices(section: UnitSection, found: FansFound, record: FanSectionRating | undefined): Choices {
  const design = section.design as FanDesign;
  const count = (value: number) => value.toLocaleString("en-US");
  const own = record === undefined || !(record.fanSpeed > 0) ? undefined : presentOf(design, record);
  return {
    columns,
    list: found.candidates.map((each) => toChoice(each, design, section.values)),
    present: own === undefined ? undefined : toChoice(own, design, section.values),
    plot: { x: { column: "power", better: "less" }, y: { column: "sound", better: "less" } },
    found: `${count(found.candidates.length)} of ${count(found.looked)} ways serve the point at ${found.at.name}`,
    remarks: ["classes and motors are the smallest that do; look at all conditions after taking one"],
  };
}

function toChoice(each: Found, design: FanDesign, values: UnitSection["values"]): Choice {
  return {
    key: [each.wheel, inches(each.diameter), each.count, each.drive].join("|"),
    name: `${each.count} × ${inches(each.diameter)} ${each.wheel}, ${each.drive} drive`,
    figures: {
      wheel: each.wheel.replace(/^typical airfoil /, ""),
      count: each.count,
      diameter: each.diameter,
      class: each.class,
      drive: each.drive,
      speed: each.speed,
      motor: each.motorPower,
      power: each.electricPower,
      efficiency: each.staticEfficiency,
      peak: each.pressureToPeak,
      sound: each.sound,
      width: each.width,
      length: each.length,
    },
    changes: changesTo(each, design, values),
  };
}

/** The fans as they are, in the figures of the search. */
function presentOf(design: FanDesign, record: FanSectionRating): Found {
  const sound = fanMadeSound(design, record);
  const { diameter, count, drive, motorPower, length } = design;
  const { staticEfficiency, totalEfficiency, pressureToPeak, flowToStable, energyIndex, electricPower } = record;
  return {
    ...{ diameter, count, drive, motorPower, length, class: design.class, wheel: design.wheel.head.name },
    ...{ staticEfficiency, totalEfficiency, pressureToPeak, flowToStable, energyIndex, electricPower },
    speed: record.fanSpeed,
    width: fanWidth(design),
    sound: sound === undefined ? Number.NaN : weightedLevel(sound.downstream),
  };
}

function inches(metres: number): string {
  return `${Number((metres / metresPerInch).toFixed(2))} in`;
}

/** The fields that differ from the fans as they are; a speed or rows given for those give way. */
function changesTo(each: Found, design: FanDesign, values: UnitSection["values"]): readonly FieldChange[] {
  const changes: FieldChange[] = [];
  const put = (differs: boolean, field: string, typed: string | undefined) => differs && changes.push({ field, typed });
  put(each.wheel !== design.wheel.head.name, "wheel", each.wheel);
  put(Math.abs(each.diameter - design.diameter) > 1e-5, "diameter", inches(each.diameter));
  put(each.class !== design.class, "class", each.class);
  put(each.count !== design.count, "count", String(each.count));
  put(each.drive !== design.drive, "drive", each.drive);
  const horsepower = Number((each.motorPower / 745.6999).toFixed(2));
  put(Math.abs(each.motorPower / design.motorPower - 1) > 1e-3, "motorPower", `${horsepower} hp`);
  put(values.rows !== undefined && each.count !== design.count, "rows", undefined);
  put(values.fixedSpeed !== undefined, "fixedSpeed", undefined);
  return changes;
}
