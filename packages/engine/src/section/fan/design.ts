import { inletEffectFromClearance } from "#component/fan-system-effect";
import { fanInletVelocity, massFromDiameter } from "#component/fan-wheel";
import { motorFullLoadSpeed, motorNominalEfficiency } from "#component/motor";
import { springNaturalFrequency } from "#component/spring";
import { metresPerInch } from "#quantity/inch-pound";
import type { Frame } from "../contract.ts";
import { SectionProblem } from "../contract.ts";
import { backdraftArea } from "./backdraft.ts";
import { baseEnds, motorSize } from "./base.ts";
import type { FanValues } from "./fields.ts";
import { type HousingReach, housingReach, type ScrollShape, scrollShape } from "./housing.ts";

/** A fan section ready to be rated: geometry and records looked up once. */
export interface FanDesign extends FanValues {
  readonly drive: "belt" | "direct";
  readonly housed: boolean;
  readonly columns: number;
  readonly rows: number;
  /** m²: the clear cabinet. */
  readonly cabinetArea: number;
  /** m² of one fan: throats of all its inlets; outlet, 0 for a plenum wheel. */
  readonly inletArea: number;
  readonly outletArea: number;
  /** m² that the flow fills where it leaves the section. */
  readonly leavingArea: number;
  /** m, free before each inlet. */
  readonly clearance: number;
  /** Velocity pressures in the inlet's throat. */
  readonly inletLoss: number;
  /** m²: face of one fan's backdraft damper, whether it has one or not. */
  readonly backdraftFace: number;
  /** m/s. */
  readonly tipSpeedLimit: number;
  /** rev/s of the wheel at that. */
  readonly maximumSpeed: number;
  readonly motorEfficiency: number;
  /** rev/s of the motor at full load. */
  readonly motorSpeed: number;
  /** Hz, of the fan on its springs; 0 when it stands rigid. */
  readonly naturalFrequency: number;
  /** kg of one fan with motor and base. */
  readonly fanMass: number;
  readonly scroll: ScrollShape | undefined;
  readonly reach: HousingReach | undefined;
  /** m. */
  readonly baseHeight: number;
  /** m from the entry plane to a housed fan's shaft. */
  readonly shaftPlace: number;
  readonly length: number;
}

/** m: frame under a fan, without springs; and room to walk past or take the motor out, behind plenum wheels. */
const frameHeight = 0.15;
const springFootHeight = 0.1;

/** Checks that the fans can be built and fit the cabinet, and looks up what rating needs. */
export function prepareFan(values: FanValues, frame: Frame): FanDesign {
  const { wheel, diameter } = values;
  checkRecord(values);
  const housed = wheel.arrangement !== "plenum wheel";
  const drive = values.drive ?? (housed ? "belt" : "direct");
  const grid = housed ? { columns: values.count, rows: 1 } : gridOf(values, frame);
  const scroll = housed ? scrollShape(wheel) : undefined;
  const reach = scroll === undefined ? undefined : housingReach(scroll, values.discharge);
  const baseHeight = frameHeight + (values.isolation === "springs" ? springFootHeight + values.springs.deflection : 0);
  const clearance = values.inletClearance ?? freeBeforeInlet(values, housed, frame);
  if (reach !== undefined) checkHousingFits(values, reach, baseHeight, frame);
  const cabinetArea = frame.width * frame.height;
  const outletArea = wheel.outletWidth * wheel.outletHeight * diameter ** 2;
  const tipSpeedLimit = wheel.classes.find((each) => each.name === values.class)!.tipSpeed;
  const { motor, motorPower } = values;
  const motorSpeed = motorFullLoadSpeed(Number(motor.poles), motor.frequency, motor.slip);
  return {
    ...values,
    fixedSpeed: values.fixedSpeed ?? (drive === "direct" && !values.speedControlled ? motorSpeed : undefined),
    drive,
    housed,
    ...grid,
    cabinetArea,
    inletArea: 1 / fanInletVelocity(1, diameter, wheel.inletDiameter, wheel.inlets),
    outletArea,
    leavingArea: housed ? values.count * outletArea : cabinetArea,
    clearance,
    inletLoss: inletEffectFromClearance(clearance / diameter),
    backdraftFace: backdraftArea(values, Math.min(frame.width / grid.columns, frame.height / grid.rows), outletArea),
    tipSpeedLimit,
    maximumSpeed: tipSpeedLimit / (Math.PI * diameter),
    motorEfficiency: motorNominalEfficiency(motor.enclosure, motor.poles, motorPower),
    motorSpeed,
    naturalFrequency: values.isolation === "springs" ? springNaturalFrequency(values.springs.deflection) : 0,
    fanMass: 1.3 * (massFromDiameter(wheel.fanMass, wheel.referenceDiameter, diameter) + motorMass(values)),
    scroll,
    reach,
    baseHeight,
    ...lengthsOf(values, drive, scroll, reach),
  };
}

/** kg of one motor. */
export function motorMass(values: Pick<FanValues, "motor" | "motorPower">): number {
  return (values.motor.massPerKilowatt * values.motorPower) / 1000;
}

function checkRecord(values: FanValues): void {
  const { wheel, diameter } = values;
  const inches = (metres: number) => `${(metres / metresPerInch).toFixed(2).replace(/\.?0+$/, "")} in`;
  if (diameter < wheel.smallestDiameter * (1 - 1e-9) || diameter > wheel.largestDiameter * (1 + 1e-9)) {
    throw new SectionProblem(
      "diameter",
      `${inches(diameter)} is no size of "${wheel.head.name}"`,
      `${inches(wheel.smallestDiameter)} to ${inches(wheel.largestDiameter)}`,
    );
  }
  if (!wheel.classes.some((each) => each.name === values.class)) {
    const known = wheel.classes.map((each) => each.name).join(", ");
    throw new SectionProblem("class", `"${wheel.head.name}" has no class ${values.class}`, known);
  }
  if (values.drive === "direct" && wheel.inlets === 2) {
    throw new SectionProblem("drive", "a motor on the shaft would stand in one of the two inlets", "belt");
  }
  if (values.fixedSpeed !== undefined && values.speedControlled) {
    throw new SectionProblem(
      "fixedSpeed",
      "a speed-controlled fan has no fixed speed",
      "no fixed speed, or `speed controlled: no`",
    );
  }
}

/** Rows and columns in which an array's cells come nearest to squares; the smallest cell side decides. */
function gridOf(values: FanValues, frame: Frame): { readonly columns: number; readonly rows: number } {
  const { count } = values;
  const possible = Array.from({ length: count }, (_, index) => index + 1).filter((rows) => count % rows === 0);
  if (values.rows !== undefined && !possible.includes(values.rows)) {
    throw new SectionProblem("rows", `${count} fans do not fill ${values.rows} rows evenly`, possible.join(", "));
  }
  const cellOf = (rows: number) => Math.min(frame.height / rows, (frame.width * rows) / count);
  const rows = values.rows ?? possible.reduce((best, each) => (cellOf(each) > cellOf(best) ? each : best));
  const needed = wheelCell * values.diameter;
  if (cellOf(rows) < needed) {
    const most = (cellOf(rows) / wheelCell / metresPerInch).toFixed(1);
    throw new SectionProblem(
      "diameter",
      `${count} wheels in ${rows} row${rows === 1 ? "" : "s"} do not fit the cabinet, each with 15 % of room around it`,
      `at most ${most} in, or fewer fans, or a larger cabinet`,
    );
  }
  return { columns: count / rows, rows };
}

/** m before an inlet: the space upstream for plenum wheels, what the cabinet's width leaves beside housings. */
function freeBeforeInlet(values: FanValues, housed: boolean, frame: Frame): number {
  const { wheel, diameter, count } = values;
  if (!housed) return values.upstreamSpace;
  const left = frame.width - count * wheel.housingWidth * diameter;
  // A double wheel shares the rest between both its sides; a single one stands off its closed side by a sixth diameter.
  return wheel.inlets === 2 ? left / (2 * count) : left / count - diameter / 6;
}

/** m across the cabinet that housings take, with the room at their inlets. */
export function housingsWidth(wheel: FanValues["wheel"], diameter: number, count: number): number {
  return count * (wheel.housingWidth + 0.3 * wheel.inlets) * diameter;
}

/** Side of the cell of a plenum wheel over its diameter: 15 % of room around it. */
export const wheelCell = 1.15;

/** m across the cabinet that the fans take, with the room that they need. */
export function fanWidth({ housed, wheel, diameter, count, columns }: FanDesign): number {
  return housed ? housingsWidth(wheel, diameter, count) : columns * wheelCell * diameter;
}

function checkHousingFits(values: FanValues, reach: HousingReach, baseHeight: number, frame: Frame): void {
  const { wheel, diameter, count } = values;
  const width = housingsWidth(wheel, diameter, count);
  const height = (reach.above + reach.below) * diameter + baseHeight;
  const most = Math.min((diameter * frame.width) / width, (frame.height - baseHeight) / (reach.above + reach.below));
  if (width <= frame.width && height <= frame.height + 1e-9) return;
  const which = width > frame.width ? "width" : "height";
  throw new SectionProblem(
    "diameter",
    `${count === 1 ? "the housing" : `${count} housings`} with base and room at the inlets do not fit the cabinet's ${which}`,
    `at most ${Math.max(most / metresPerInch, 0).toFixed(1)} in, or a larger cabinet`,
  );
}

/** m along the airflow: to a housed fan's shaft, and the whole. */
function lengthsOf(
  values: FanValues,
  drive: "belt" | "direct",
  scroll: ScrollShape | undefined,
  reach: HousingReach | undefined,
): { readonly shaftPlace: number; readonly length: number } {
  const { diameter, wheel, upstreamSpace } = values;
  if (reach === undefined) {
    const motorLength = motorSize(values.motorPower).length;
    const room = Math.max(0.6, 0.5 * diameter);
    return { shaftPlace: 0, length: upstreamSpace + wheel.housingWidth * diameter + motorLength + room };
  }
  const base = baseEnds({ ...values, drive, scroll, reach });
  const shaftPlace = upstreamSpace + Math.max(reach.before * diameter, -base.from);
  const connection = values.discharge === "forward" ? values.flexibleConnection + values.outletDuct : 0.15;
  return { shaftPlace, length: shaftPlace + Math.max(reach.behind * diameter + connection, base.to + 0.1) };
}
