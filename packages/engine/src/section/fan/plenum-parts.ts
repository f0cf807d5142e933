import type { Frame } from "../contract.ts";
import { assembly, blank, boxOf, type SectionPart, sheetPart, weighedPart } from "../part.ts";
import { roundForm } from "../part-form.ts";
import { backdraftPart } from "./backdraft-parts.ts";
import { motorSize } from "./base.ts";
import type { FanDesign } from "./design.ts";
import { baseMass, fanMasses, fanPiece, motorPart, shippingRestraints, springParts, sprung } from "./pieces.ts";

/** m: depth of the frame under a wheel, and of a spring's foot above the floor of its cell. */
const frameDepth = 0.06;

const roundAlong = roundForm("x");

/** The inlet wall and every wheel of the array behind it. */
export function plenumFans(design: FanDesign, frame: Frame): readonly SectionPart[] {
  const { columns, rows } = design;
  const wheels = Array.from({ length: rows * columns }, (_, index) =>
    plenumWheel(design, frame, Math.floor(index / columns), index % columns),
  );
  return [inletWall(design, frame), ...wheels, ...shelves(design, frame)];
}

/** m from the entry plane to the far end of the motors. */
function motorEnd({ upstreamSpace, diameter, wheel, motorPower }: FanDesign): number {
  return upstreamSpace + (0.23 + wheel.wheelWidth) * diameter + motorSize(motorPower).length;
}

/** m: depth of the inlet wall as drawn, and where it ends. */
const wallSheet = 0.003;
const wallEnd = ({ upstreamSpace }: FanDesign) => Math.max(wallSheet, upstreamSpace);

function inletWall(design: FanDesign, frame: Frame): SectionPart {
  const throat = (design.wheel.inletDiameter * design.diameter) ** 2 * (Math.PI / 4);
  const area = Math.max(0.05, frame.width * frame.height - design.count * throat);
  const box = boxOf(wallEnd(design) - wallSheet, 0, 0, wallSheet, frame.width, frame.height);
  const wall = blank(frame.height + 0.05, area / frame.height + 0.05);
  return sheetPart("inlet wall", "inlet wall", "sheet", "galvanized steel", "12", box, [wall]);
}

/** Floors between the rows. */
function shelves(design: FanDesign, frame: Frame): readonly SectionPart[] {
  const cell = frame.height / design.rows;
  // As far as the frames reach: behind them a person stands.
  const from = wallEnd(design);
  const length = Math.min(motorEnd(design) + 0.03, design.length) - from;
  return Array.from({ length: design.rows - 1 }, (_, index) =>
    sheetPart(
      `shelf ${index + 1}`,
      "shelf",
      "sheet",
      "galvanized steel",
      "12",
      boxOf(from, 0, (index + 1) * cell - 0.004, length, frame.width, 0.003),
      [blank(length + 0.1, frame.width + 0.1)],
    ),
  );
}

/** A wheel with cone, motor, frame and springs in its cell of the array. */
function plenumWheel(design: FanDesign, frame: Frame, row: number, column: number): SectionPart {
  const { diameter, wheel } = design;
  const cell = { width: frame.width / design.columns, height: frame.height / design.rows };
  const middle = { y: (column + 0.5) * cell.width, z: (row + 0.5) * cell.height };
  const wall = design.upstreamSpace;
  const shroud = wall + 0.17 * diameter;
  const back = shroud + wheel.wheelWidth * diameter;
  const mouth = 0.58 * wheel.inletDiameter * diameter;
  const masses = fanMasses(design, 0);
  const motor = motorSize(design.motorPower);
  const motorFrom = back + 0.06 * diameter;
  const end = motorFrom + motor.length;
  const floor = row * cell.height;
  const top = Math.max(floor + design.baseHeight, middle.z - 0.5 * diameter - 0.06);
  const base = { from: wall + 0.2 * diameter, to: end, y: middle.y - 0.3 * diameter, width: 0.6 * diameter };
  const around = (x: number, length: number, radius: number) =>
    boxOf(x, middle.y - radius, middle.z - radius, length, 2 * radius, 2 * radius);
  const children: SectionPart[] = [
    {
      ...fanPiece(
        "wheel",
        "plenum wheel",
        "wheel",
        around(shroud, back - shroud, diameter / 2),
        masses.wheel,
        design,
        true,
      ),
      form: roundAlong,
    },
    { ...motorPart(around(motorFrom, motor.length, motor.diameter / 2), design, true), form: roundAlong },
    fanPiece(
      "frame",
      "frame and pedestal",
      "frame",
      boxOf(base.from, base.y, Math.min(top, middle.z) - frameDepth, end - base.from, base.width, frameDepth),
      0.7 * masses.housing,
      design,
      true,
    ),
    weighedPart(
      "base",
      "base of channel",
      "rail",
      "steel",
      boxOf(base.from, base.y, Math.min(top, middle.z) - frameDepth, end - base.from, base.width, frameDepth),
      0.5 * baseMass(end - base.from, base.width, design.motorPower),
      "from-memory common steel channels by length",
      { shares: true },
    ),
  ];
  const carried = children.reduce((sum, child) => sum + child.mass, 0);
  const underside = Math.min(top, middle.z) - frameDepth;
  const cone = fanPiece(
    "cone",
    "inlet cone",
    "housing",
    around(wall, shroud - wall, mouth),
    0.3 * masses.housing,
    design,
    true,
  );
  const isSprung = design.isolation === "springs";
  const springs = springParts(design, base, floor, Math.max(0.01, underside - floor), carried);
  const key = `wheel ${row + 1}.${column + 1}`;
  return assembly(key, design.count === 1 ? "fan" : `fan in row ${row + 1}, column ${column + 1}`, [
    sprung(children, isSprung),
    { ...cone, form: roundAlong },
    ...(design.backdraftDampers ? [backdraftPart(design, frame, middle.y, middle.z)] : []),
    ...springs,
    ...(isSprung ? shippingRestraints(springs) : []),
  ]);
}
