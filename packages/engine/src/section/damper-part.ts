import type { Damper } from "#component/damper";
import { lossFromCurve } from "#component/damper";
import { component, quantity, type ValuesOf } from "#form/field";
import type { Frame } from "./contract.ts";
import { requireFit } from "./fit.ts";
import type { Pencil } from "./pencil.ts";
import { drawAirfoilBlade } from "./pencil-shape.ts";

/** What a damper in a section is described by. */
export const damperPartFields = {
  damper: component<Damper>()("damper", { meaning: "The damper's record in the catalogue" }),
  width: quantity("length", { meaning: "Width of the damper's face", minimum: "6 in", maximum: "30 ft" }),
  height: quantity("length", {
    meaning: "Height of the damper's face, across its blades' axles",
    minimum: "6 in",
    maximum: "20 ft",
  }),
  bladeAngle: quantity("angle", {
    meaning: "Blades from closed (0) to open (90)",
    default: "90 deg",
    minimum: "0 deg",
    maximum: "90 deg",
  }),
} as const;

/** A damper in place. */
export interface DamperPart {
  readonly damper: Damper;
  readonly width: number;
  readonly height: number;
  /** m². */
  readonly area: number;
  /** degrees from closed, as set. */
  readonly bladeAngle: number;
  readonly blades: number;
}

/** Puts a damper in place; `field` is where it stands in the job, `clearWidth` and `clearHeight` what it has to fit. */
export function prepareDamper(
  values: ValuesOf<typeof damperPartFields>,
  field: string,
  clearWidth: number,
  clearHeight: number,
): DamperPart {
  const under = field === "" ? "" : `${field}.`;
  requireFit(`${under}width`, "the damper is wider than the opening it stands in", values.width, clearWidth);
  requireFit(`${under}height`, "the damper is higher than the opening it stands in", values.height, clearHeight);
  const blades = Math.max(1, Math.round(values.height / values.damper.bladeWidth));
  return { ...values, area: values.width * values.height, blades };
}

/** Loss of a damper's blades at an angle, on the velocity in its face. */
export function damperBladeLoss(part: DamperPart, bladeAngle: number): number {
  return lossFromCurve(part.damper.curve, bladeAngle);
}

/** N·m that turn all blades of the damper. */
export function damperTorque(part: DamperPart): number {
  return part.damper.torquePerArea * part.area;
}

/** Draws a damper that closes a plane across the flow: blades one above the other from `y` up, axles at `x`. */
export function drawDamperAcross(pencil: Pencil, name: string, part: DamperPart, x: number, y: number): void {
  const height = part.height * 1000;
  const pitch = height / part.blades;
  const depth = part.damper.frameDepth * 1000;
  drawFrame(pencil, name, x - depth / 2, y, depth, height);
  for (let blade = 0; blade < part.blades; blade++) {
    const turn = 90 - part.bladeAngle;
    drawAirfoilBlade(
      pencil,
      name,
      x,
      y + (blade + 0.5) * pitch,
      pitch * 0.96,
      isTurnedBack(part, blade) ? -turn : turn,
      "choice",
    );
  }
}

/** Draws a damper in the ceiling or the floor, axles at `y`: blades one behind the other from `x` on. */
export function drawDamperAlong(pencil: Pencil, name: string, part: DamperPart, x: number, y: number): void {
  const length = part.height * 1000;
  const pitch = length / part.blades;
  const depth = part.damper.frameDepth * 1000;
  for (const end of [x, x + length]) pencil.line(`${name} frame`, "outline", [end, y - depth / 2, end, y + depth / 2]);
  for (let blade = 0; blade < part.blades; blade++) {
    const turn = isTurnedBack(part, blade) ? part.bladeAngle : -part.bladeAngle;
    drawAirfoilBlade(pencil, name, x + (blade + 0.5) * pitch, y, pitch * 0.96, turn, "choice");
  }
}

function isTurnedBack(part: DamperPart, blade: number): boolean {
  return part.damper.bladeAction === "opposed" && blade % 2 === 1;
}

function drawFrame(pencil: Pencil, name: string, x: number, y: number, depth: number, height: number): void {
  for (const edge of [y, y + height]) pencil.line(`${name} frame`, "outline", [x, edge, x + depth, edge]);
  pencil.line(`${name} frame`, "hairline", [x, y, x, y + height]);
  pencil.line(`${name} frame`, "hairline", [x + depth, y, x + depth, y + height]);
}

/** m² of the clear cabinet. */
export function frameArea(frame: Frame): number {
  return frame.width * frame.height;
}
