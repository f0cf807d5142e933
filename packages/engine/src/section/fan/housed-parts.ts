import { partMasses } from "#standard/part-mass";
import type { Frame } from "../contract.ts";
import {
  assembly,
  blank,
  boxOf,
  type PartBox,
  type PartForm,
  type SectionPart,
  sheetPart,
  weighedPart,
} from "../part.ts";
import { prisms, roundForm } from "../part-form.ts";
import { baseEnds, motorAt, motorSize } from "./base.ts";
import type { FanDesign } from "./design.ts";
import { scrollOutline } from "./housing.ts";
import {
  baseMass,
  fanMasses,
  fanMiddle,
  fanPiece,
  motorPart,
  shippingRestraints,
  springParts,
  sprung,
} from "./pieces.ts";

/** m: height of the base of channel. */
const baseDepth = 0.09;
/** Room beside the housing for inlet, bearing and sheave, wheel diameters. */
const besideHousing = 0.15;

/** A housed fan on its base and springs, with its connection to the wall. */
export function housedFan(design: FanDesign, frame: Frame, index: number): SectionPart {
  const { diameter, wheel, reach } = design;
  if (reach === undefined) throw new Error("a housed fan without reach");
  const middle = fanMiddle(design, frame, index);
  const half = (wheel.housingWidth * diameter) / 2;
  const shaft = { x: design.shaftPlace, y: middle, z: design.baseHeight + reach.below * diameter };
  const ends = baseEnds(design);
  const base = {
    from: shaft.x + ends.from,
    to: shaft.x + ends.to,
    y: Math.max(0, middle - half - besideHousing * diameter),
    width: Math.min(frame.width, 2 * (half + besideHousing * diameter)),
  };
  const children = [
    ...turningParts(design, frame, shaft, half),
    weighedPart(
      "base",
      "base of channel",
      "rail",
      "steel",
      boxOf(base.from, base.y, design.baseHeight - baseDepth, base.to - base.from, base.width, baseDepth),
      baseMass(base.to - base.from, base.width, design.motorPower),
      "from-memory common steel channels by length",
    ),
  ];
  const carried = children.reduce((sum, child) => sum + child.mass, 0);
  const isSprung = design.isolation === "springs";
  const name = design.count === 1 ? "fan" : `fan ${index + 1}`;
  const springs = springParts(design, base, 0, Math.max(0.02, design.baseHeight - baseDepth), carried);
  return assembly(`fan ${index + 1}`, name, [
    sprung(children, isSprung),
    ...springs,
    ...(isSprung ? shippingRestraints(springs) : []),
    ...connection(design, shaft, middle),
  ]);
}

const roundAcross = roundForm("y");

/** The scroll in shares of its box. */
function scrollForm(design: FanDesign, housing: PartBox): PartForm {
  const { scroll, diameter, shaftPlace, baseHeight, reach } = design;
  return prisms("y", () => {
    if (scroll === undefined || reach === undefined) return [];
    const shaft = { x: 1000 * shaftPlace, z: 1000 * (baseHeight + reach.below * diameter) };
    const size = 1000 * diameter;
    const outline = scrollOutline(scroll, design.discharge).map((value, index) =>
      index % 2 === 0
        ? (shaft.x + size * value - housing.x) / housing.length
        : (shaft.z + size * value - housing.z) / housing.height,
    );
    return [outline];
  });
}

interface Shaft {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Housing with wheel and shaft in it, bearings in the inlets, motor, belts and guard at the connection side. */
function turningParts(design: FanDesign, frame: Frame, shaft: Shaft, half: number): readonly SectionPart[] {
  const { diameter, wheel, reach } = design;
  if (reach === undefined) return [];
  const beside = besideHousing * diameter;
  const shaftLength = 2 * (half + beside);
  const masses = fanMasses(design, shaftLength);
  const housing = boxOf(
    shaft.x - reach.before * diameter,
    shaft.y - half,
    shaft.z - reach.below * diameter,
    (reach.before + reach.behind) * diameter,
    2 * half,
    (reach.above + reach.below) * diameter,
  );
  const blades = (wheel.wheelWidth * diameter) / 2;
  const round = (radius: number, width: number) =>
    boxOf(shaft.x - radius, shaft.y - width, shaft.z - radius, 2 * radius, 2 * width, 2 * radius);
  const parts: SectionPart[] = [
    {
      ...fanPiece("housing", "housing", "housing", housing, (1 - coneShare) * masses.housing, design, true),
      form: scrollForm(design, housing),
    },
    {
      ...fanPiece("wheel", "wheel", "wheel", round(diameter / 2, blades), masses.wheel, design, true),
      form: roundAcross,
    },
  ];
  parts.push(...inletCones(design, shaft, half, (coneShare / 2) * masses.housing));
  const side = frame.hand === "right" ? -1 : 1;
  if (design.drive === "direct") {
    const { diameter: body, length } = motorSize(design.motorPower);
    const y = side < 0 ? shaft.y - half - length : shaft.y + half;
    const motor = motorPart(boxOf(shaft.x - body / 2, y, shaft.z - body / 2, body, length, body), design, false);
    return [...parts, { ...motor, form: roundAcross }];
  }
  const radius = 0.042 * diameter;
  parts.push({
    ...fanPiece("shaft", "shaft", "shaft", round(radius, half + beside), masses.shaft, design, true),
    form: roundAcross,
  });
  for (const [key, end] of [
    ["right", -1],
    ["left", 1],
  ] as const) {
    const y = end < 0 ? shaft.y - half - 0.07 * diameter : shaft.y + half;
    const box = boxOf(
      shaft.x - 0.06 * diameter,
      y,
      shaft.z - 0.045 * diameter,
      0.12 * diameter,
      0.07 * diameter,
      0.09 * diameter,
    );
    parts.push(fanPiece(`bearing ${key}`, "bearing", "bearing", box, masses.bearing, design, true));
  }
  return [...parts, ...beltSide(design, shaft, half, side, masses.drive)];
}

/** Share of a housing's mass that both inlet cones have; common practice, from memory. */
const coneShare = 0.12;

/** A cone in each side of the housing, from its plate to the wheel. */
function inletCones(design: FanDesign, shaft: Shaft, half: number, mass: number): readonly SectionPart[] {
  const { diameter, wheel } = design;
  const radius = 0.56 * wheel.inletDiameter * diameter;
  const long = Math.max(0.01, half - 0.5 * wheel.wheelWidth * diameter);
  return [
    ["right", shaft.y - half],
    ["left", shaft.y + half - long],
  ].map(([side, y]) => {
    const box = boxOf(shaft.x - radius, Number(y), shaft.z - radius, 2 * radius, long, 2 * radius);
    const cone = fanPiece(`inlet cone ${side}`, "inlet cone", "housing", box, mass, design, true);
    return { ...cone, form: roundAcross };
  });
}

/** Motor on the base beside the scroll, sheaves with belts, and their guard. */
function beltSide(
  design: FanDesign,
  shaft: Shaft,
  half: number,
  side: number,
  driveMass: number,
): readonly SectionPart[] {
  const { diameter } = design;
  const at = motorAt(design);
  if (at === undefined) return [];
  const body = motorSize(design.motorPower);
  // Belts run in the plane just outside the inlet; the motor reaches inwards from there, under the curve of the scroll.
  const plane = half + 0.08 * diameter;
  const length = Math.min(body.length, plane + half);
  const motorY = side < 0 ? shaft.y - plane : shaft.y + plane - length;
  const motor = { x: shaft.x + at.x, z: shaft.z + at.y };
  const sheave = 0.14 * diameter;
  const left = Math.min(shaft.x, motor.x) - sheave;
  const right = Math.max(shaft.x, motor.x) + sheave;
  const low = Math.min(shaft.z, motor.z) - sheave;
  const high = Math.max(shaft.z, motor.z) + sheave;
  const beltY = side < 0 ? shaft.y - plane - 0.06 * diameter : shaft.y + plane;
  const box = boxOf(left, beltY, low, right - left, 0.06 * diameter, high - low);
  const extras = { shares: true, bought: design.belts.head.name };
  return [
    {
      ...motorPart(
        boxOf(motor.x - body.diameter / 2, motorY, motor.z - body.diameter / 2, body.diameter, length, body.diameter),
        design,
        true,
      ),
      form: roundAcross,
    },
    weighedPart("drive", "sheaves and belts", "drive", "cast iron", box, driveMass, partMasses.source, extras),
    weighedPart(
      "guard",
      "belt guard",
      "guard",
      "galvanized steel",
      box,
      partMasses.beltGuard,
      partMasses.source,
      extras,
    ),
  ];
}

/** Flexible connection and straight duct from the outlet to the end of the section. */
function connection(design: FanDesign, shaft: Shaft, middle: number): readonly SectionPart[] {
  const { scroll, reach, diameter, wheel } = design;
  if (design.discharge !== "forward" || scroll === undefined || reach === undefined) return [];
  const width = wheel.outletWidth * diameter;
  const height = wheel.outletHeight * diameter;
  const z = shaft.z + scroll.outletBottom * diameter;
  const end = shaft.x + reach.behind * diameter;
  const perimeter = 2 * (width + height);
  const parts: SectionPart[] = [];
  const ductFrom = design.length - design.outletDuct;
  const flexibleFrom = Math.max(end, ductFrom - design.flexibleConnection);
  if (ductFrom - flexibleFrom > 0.01) {
    // Coated fabric 1 kg/m² with its steel edges 1.2 kg/m: common practice, from memory.
    const mass = perimeter * ((ductFrom - flexibleFrom) * 1 + 2 * 1.2);
    const box = boxOf(flexibleFrom, middle - width / 2, z, ductFrom - flexibleFrom, width, height);
    parts.push(weighedPart("flexible", "flexible connection", "flexible", "rubber", box, mass, partMasses.source));
  }
  if (design.outletDuct > 0.01) {
    const box = boxOf(ductFrom, middle - width / 2, z, design.outletDuct, width, height);
    parts.push(
      sheetPart("outlet duct", "outlet duct", "sheet", "galvanized steel", "18", box, [
        blank(perimeter + 0.05, design.outletDuct + 0.1),
      ]),
    );
  }
  return parts;
}
