import { type Attenuator, baffleLossCoefficient } from "#component/attenuator";
import { component, integer, quantity, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";
import { type Frame, SectionProblem } from "../contract.ts";
import { frameArea } from "../damper-part.ts";

/** What a person writes about an attenuator. */
export const attenuatorFields = {
  attenuator: component<Attenuator>()("attenuator", {
    meaning: "The record of its baffles in the catalogue",
    default: "typical baffles 8 in with 8 in passages",
  }),
  baffleLength: quantity("length", {
    meaning: "Length of the baffles along the airflow",
    default: "5 ft",
    minimum: "1 ft",
    maximum: "16 ft",
  }),
  baffles: integer({
    meaning: "Baffles side by side; as many as come nearest to the record's open share when left out",
    optional: true,
    minimum: 1,
    maximum: 60,
  }),
  spaceBefore: quantity("length", {
    meaning: "Space before the noses",
    default: "12 in",
    minimum: "0 in",
    maximum: "10 ft",
  }),
  spaceBehind: quantity("length", {
    meaning: "Space behind the tails",
    default: "24 in",
    minimum: "0 in",
    maximum: "10 ft",
  }),
} as const;

/** An attenuator ready to be rated. */
export interface AttenuatorDesign {
  readonly attenuator: Attenuator;
  readonly baffleLength: number;
  readonly baffles: number;
  /** m, of a passage as built; the two halves at the walls count as one. */
  readonly passageWidth: number;
  readonly openShare: number;
  /** On the velocity in the passages. */
  readonly lossCoefficient: number;
  readonly spaceBefore: number;
  readonly length: number;
  /** m². */
  readonly passageArea: number;
  readonly cabinetArea: number;
  /** m, largest side of a passage across the flow. */
  readonly passageHeight: number;
}

/** Passages may differ so much from the record's before its losses stop to hold. */
const widestRatio = 1.5;

/** Sets the baffles side by side, with half a passage at each wall. */
export function prepareAttenuator(values: ValuesOf<typeof attenuatorFields>, frame: Frame): AttenuatorDesign {
  const { attenuator, baffleLength } = values;
  checkLength(attenuator, baffleLength);
  const pitch = attenuator.baffleWidth + attenuator.passageWidth;
  const baffles = values.baffles ?? Math.max(1, Math.round(frame.width / pitch));
  const passageWidth = frame.width / baffles - attenuator.baffleWidth;
  const ratio = passageWidth / attenuator.passageWidth;
  if (!(ratio * widestRatio >= 1 && ratio <= widestRatio)) throw wrongCount(attenuator, baffles, passageWidth, frame);
  const openShare = (passageWidth * baffles) / frame.width;
  return {
    attenuator,
    baffleLength,
    baffles,
    passageWidth,
    openShare,
    lossCoefficient: baffleLossCoefficient(attenuator, openShare, baffleLength, passageWidth),
    spaceBefore: values.spaceBefore,
    length: values.spaceBefore + baffleLength + values.spaceBehind,
    passageArea: openShare * frameArea(frame),
    cabinetArea: frameArea(frame),
    passageHeight: Math.max(frame.height, passageWidth),
  };
}

function checkLength(attenuator: Attenuator, length: number): void {
  const [shortest, longest] = [attenuator.lengths[0]!.length, attenuator.lengths.at(-1)!.length];
  if (length >= shortest - 1e-9 && length <= longest + 1e-9) return;
  throw new SectionProblem(
    "baffleLength",
    `"${attenuator.head.name}" has no insertion loss for ${inBothUnits(length, "length")}`,
    `${inBothUnits(shortest, "length")} to ${inBothUnits(longest, "length")}`,
  );
}

function wrongCount(attenuator: Attenuator, baffles: number, passage: number, frame: Frame): SectionProblem {
  const { baffleWidth, passageWidth } = attenuator;
  const most = Math.floor(frame.width / (baffleWidth + passageWidth / widestRatio) + 1e-9);
  const fewest = Math.max(1, Math.ceil(frame.width / (baffleWidth + passageWidth * widestRatio) - 1e-9));
  const problem =
    passage > 0
      ? `${baffles} baffles leave passages of ${inBothUnits(passage, "length")}, for which the record's losses do not hold`
      : `${baffles} baffles are wider than the cabinet`;
  const allowed = fewest <= most ? `${fewest} to ${most} baffles` : "a wider cabinet, or another record";
  return new SectionProblem("baffles", problem, allowed);
}
