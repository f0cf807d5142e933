import type { SectionKind } from "@oncethrough/engine/section/contract";
import { fan } from "@oncethrough/engine/section/fan/kind";
import { declaredRecord } from "../declared-schema.ts";
import { largestFlowFields } from "../largest-flow-schema.ts";
import { figuresOfKind, workingLine } from "../rate/rate-schema.ts";
import { listOf, number, published, record, text } from "../schema/describe.ts";
import { electrical, mechanics, oneFanOut, powerAllowance, powerLimit, range } from "./fan-standing-schema.ts";

const built = record({
  wheel: text("name of the catalogue record"),
  arrangement: text(),
  diameter: number("m"),
  class: text("of construction"),
  count: number("equal fans"),
  drive: { enum: ["belt", "direct"] },
  motorPower: number("W, rated, each"),
  speedControlled: { type: "boolean" },
  tipSpeedLimit: number("m/s"),
  mass: number("kg of one fan with motor and base, about"),
});

const bands = {
  type: "array",
  items: { type: "number" },
  minItems: 8,
  maxItems: 8,
  description: "dB re 1 pW in the octave bands 63 to 8000 Hz, all fans together",
};

const sound = record({
  inlet: bands,
  outlet: bands,
  weighted: number("dB(A) at the outlet"),
  bladePass: number("Hz"),
  uncertainty: number("dB either way in a band"),
  certainty: text("what the figures rest on"),
  source: text("bibliography key and place"),
});

const candidate = record({
  wheel: text("name of the catalogue record"),
  diameter: number("m"),
  class: text(),
  count: number("equal fans"),
  drive: { enum: ["belt", "direct"] },
  speed: number("rev/s"),
  motorPower: number("W, rated, each"),
  electricPower: number("W from the mains, all"),
  staticEfficiency: number("0 to 1"),
  totalEfficiency: number("0 to 1"),
  pressureToPeak: number("static pressure over peak at this speed"),
  flowToStable: number("flow over the smallest steady flow"),
  energyIndex: number("fan energy index"),
  sound: number("dB(A) of sound power at the outlet"),
  width: number("m across the cabinet with the room that the fans need"),
  length: number("m along the airflow"),
});

/** The published schema of `oncethrough fan --json`. */
export function fanSchema(): object {
  const point = record({
    condition: text("key"),
    solved: { type: "boolean" },
    figures: figuresOfKind(fan as unknown as SectionKind),
  });
  return published("fan", "The fan of a unit, as printed by `oncethrough fan --json`; all numbers in SI units", {
    ...record(
      {
        format: { const: "oncethrough fan 1" },
        tag: text("of the unit"),
        section: text("name of the fan section"),
        fan: built,
        points: listOf(point, "one for each condition of the job"),
        condition: text("key of the condition to which the rest belongs"),
        sound,
        electrical,
        mechanics,
        range,
        largestFlow: record(largestFlowFields),
        largestFlowUnset: record({ ...largestFlowFields, limitedBy: { enum: ["speed", "motor"] } }),
        oneFanOut,
        powerLimit,
        powerAllowances: listOf(powerAllowance, "one for each edition of the allowances by component"),
        declared: declaredRecord(),
        alternatives: record({ looked: number("ways looked at"), candidates: listOf(candidate) }),
        working: listOf(workingLine),
      },
      "sound",
      "mechanics",
      "largestFlow",
      "largestFlowUnset",
      "declared",
      "alternatives",
      "working",
    ),
  });
}
