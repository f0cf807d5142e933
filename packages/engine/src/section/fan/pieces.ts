import { massFromDiameter } from "#component/fan-wheel";
import { materials } from "#standard/material";
import { partMasses } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import { assembly, boxOf, type PartBox, type SectionPart, weighedPart } from "../part.ts";
import type { FanDesign } from "./design.ts";

/** m from the right wall to the middle of a housed fan. */
export function fanMiddle(design: FanDesign, frame: Frame, index: number): number {
  return ((index + 0.5) * frame.width) / design.count;
}

/** kg of a fan's pieces: the record's whole, less what is known of it, is its housing or frame. */
export function fanMasses(design: FanDesign, shaftLength: number) {
  const { wheel, diameter, motorPower } = design;
  const whole = massFromDiameter(wheel.fanMass, wheel.referenceDiameter, diameter);
  const turning = massFromDiameter(wheel.wheelMass, wheel.referenceDiameter, diameter);
  const shaft =
    design.drive === "belt" ? (Math.PI / 4) * (0.084 * diameter) ** 2 * shaftLength * materials.steel.density : 0;
  const kilowatts = motorPower / 1000;
  const bearing =
    design.drive === "belt" ? Math.max(partMasses.leastBearing, partMasses.bearingPerKilowatt * kilowatts) : 0;
  const rest = whole - turning - shaft - 2 * bearing;
  return {
    wheel: turning,
    // A heavy shaft may leave little of a light record for the housing: a third of the whole at least is sheet.
    housing: Math.max(rest, whole / 3),
    shaft,
    bearing,
    motor: design.motor.massPerKilowatt * kilowatts,
    drive: partMasses.beltDrivePerKilowatt * kilowatts,
  };
}

const recordSource = "common-practice the record's mass, by wheel diameter to the power 2.5";

/** A part of the fan whose mass the wheel's record gives. */
export function fanPiece(
  key: string,
  name: string,
  kind: SectionPart["kind"],
  box: PartBox,
  mass: number,
  design: FanDesign,
  shares: boolean,
): SectionPart {
  return weighedPart(key, name, kind, "steel", box, mass, recordSource, { shares, bought: design.wheel.head.name });
}

/** A motor, from the record's mass by power. */
export function motorPart(box: PartBox, design: FanDesign, shares: boolean): SectionPart {
  const mass = (design.motor.massPerKilowatt * design.motorPower) / 1000;
  const bought = `${design.motor.head.name}, ${(design.motorPower / 1000).toFixed(1)} kW`;
  const source = "common-practice kg for each kW in the motor's record, within about 25 %";
  return weighedPart("motor", "motor", "motor", "motor, mixed", box, mass, source, { shares, bought });
}

/** What the springs carry. */
export function sprung(children: readonly SectionPart[], isSprung: boolean): SectionPart {
  return isSprung ? assembly("sprung", "on springs", children) : assembly("fixed", "on its feet", children);
}

/** Spring places that a base of this length takes: four, six above 2 m. */
export function springParts(
  design: FanDesign,
  base: { readonly from: number; readonly to: number; readonly y: number; readonly width: number },
  z: number,
  height: number,
  carried: number,
): readonly SectionPart[] {
  const isSprung = design.isolation === "springs";
  const along = base.to - base.from > 2 ? 3 : 2;
  const size = Math.min(0.12, 0.4 * base.width, 0.3 * (base.to - base.from));
  const inset = 0.08 * (base.to - base.from);
  const mass = Math.max(partMasses.leastSpring, (partMasses.springShare * carried * 4) / (2 * along));
  return Array.from({ length: 2 * along }, (_, index) => {
    const place = Math.floor(index / 2);
    const x = base.from + inset + ((base.to - base.from - 2 * inset - size) * place) / (along - 1);
    const y = index % 2 === 0 ? base.y : base.y + base.width - size;
    const name = isSprung ? "spring" : "foot";
    return weighedPart(
      `${name} ${index + 1}`,
      name,
      "spring",
      "steel",
      boxOf(x, y, z, size, size, height),
      isSprung ? mass : 1,
      partMasses.source,
      isSprung ? { bought: design.springs.head.name } : {},
    );
  });
}

/** A bracket beside each spring that holds the base for shipping; all of them come off before the fan is started. */
export function shippingRestraints(springs: readonly SectionPart[]): readonly SectionPart[] {
  const thick = 10;
  return springs.map(({ key, box }, index) => {
    // Springs stand in pairs: restraints between them, in the shade of the base.
    const y = index % 2 === 0 ? box.y + box.width : box.y - thick;
    const place = { ...box, y, width: thick };
    return weighedPart(
      `restraint of ${key}`,
      "shipping restraint",
      "restraint",
      "steel",
      place,
      partMasses.shippingRestraint,
      partMasses.source,
    );
  });
}

/** kg of a base of channel: two long sides, two ends and two cross members. */
export function baseMass(length: number, width: number, motorPower: number): number {
  // Channels of 8.2 lb/ft (6 in) under large motors, 5.4 lb/ft (4 in) under others: common steel sections, from memory.
  const perMetre = motorPower > 15_000 ? 12.2 : 8.04;
  return perMetre * (2 * length + 4 * width);
}
