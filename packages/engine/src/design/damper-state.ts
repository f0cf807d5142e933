import { damperLeakage } from "#component/damper";
import { standardAirDensity } from "#quantity/standard-air";
import { type DamperPart, damperBladeLoss, damperTorque } from "#section/damper-part";
import type { FanSectionRating } from "#section/fan/rate";
import type { MixingBoxDesign } from "#section/mixing-box/design";
import type { MixingBoxRating } from "#section/mixing-box/rate";
import type { ShutOffDamperDesign } from "#section/shut-off-damper/design";
import type { ShutOffDamperRating } from "#section/shut-off-damper/rate";
import type { UnitRating } from "#unit/rating";
import type { Unit } from "#unit/unit";
import { sectionWithRole } from "#unit/walk";

/** A damper of the unit at a rating: what it takes, how much of its path that is, and what it would leak when closed. */
export interface DamperState {
  readonly section: string;
  readonly name: "outside-air damper" | "return-air damper" | "shut-off damper";
  readonly control: "hand set" | "actuated" | "two-position";
  readonly bladeAction: "opposed" | "parallel";
  readonly leakageClass: string;
  /** m², the face; m/s in it, negative where air goes backwards. */
  readonly area: number;
  readonly velocity: number;
  /** degrees from closed. */
  readonly bladeAngle: number;
  /** Pa at this flow: the blades as they stand, the blades wide open, and all else on the damper's path. */
  readonly loss: number;
  readonly openLoss: number;
  readonly restLoss: number;
  /** Loss of the open blades over the rest of the path; undefined for a damper that only opens and shuts. */
  readonly authority: number | undefined;
  readonly closed: ClosedDamper;
}

/** A damper when it is closed. */
export interface ClosedDamper {
  /** Pa that it really sees, and where that comes from. */
  readonly pressure: number;
  readonly because: "it is closed" | "the fan pulls with all it has";
  /** m³/s of standard air by the leakage class at that pressure, and its share of the design airflow. */
  readonly leakage: number;
  readonly leakageShare: number;
  /** N·m to close against that pressure. */
  readonly torque: number;
}

/** Pa at which the torque of a damper's record holds. */
const recordTorquePressure = 500;

/** Every damper of the unit, in airflow order, at a rating. */
export function damperStates(unit: Unit, rating: UnitRating): readonly DamperState[] {
  return unit.sections.flatMap((section, index): readonly DamperState[] => {
    const record = rating.sections[index]!;
    if (section.kind === "mixing box") {
      const box = section.design as MixingBoxDesign;
      return boxStates(unit, rating, index, section.name, box, record as MixingBoxRating);
    }
    if (section.kind === "shut-off damper") {
      return [shutOffState(unit, rating, section.name, section.design as ShutOffDamperDesign, record as never)];
    }
    return [];
  });
}

function boxStates(
  unit: Unit,
  rating: UnitRating,
  index: number,
  section: string,
  design: MixingBoxDesign,
  record: MixingBoxRating,
): readonly DamperState[] {
  const before = rating.sections.slice(0, index).reduce((sum, each) => sum + each.totalPressureLoss, 0);
  const outsideHead = 0.5 * record.outsideDensity * record.outsideVelocity ** 2;
  const states = [
    stateOf(unit, rating, {
      section,
      name: "outside-air damper",
      control: design.control,
      part: design.outside,
      velocity: record.outsideVelocity,
      bladeAngle: record.outsideBladeAngle,
      head: outsideHead,
      bladeLoss: record.outsideBladeLoss,
      restLoss: before + design.wallLoss * outsideHead,
    }),
  ];
  const opening = design.returnOpening;
  if (opening === undefined) return states;
  const returnHead = 0.5 * record.returnDensity * record.returnVelocity ** 2;
  const fixedLoss = record.returnDryAirFlow >= 0 ? opening.inwardLoss : opening.outwardLoss;
  states.push(
    stateOf(unit, rating, {
      section,
      name: "return-air damper",
      control: design.control,
      part: opening.part,
      velocity: record.returnVelocity,
      bladeAngle: record.returnBladeAngle,
      head: returnHead,
      bladeLoss: record.returnBladeLoss,
      restLoss: fixedLoss * returnHead,
    }),
  );
  return states;
}

function shutOffState(
  unit: Unit,
  rating: UnitRating,
  section: string,
  design: ShutOffDamperDesign,
  record: ShutOffDamperRating,
): DamperState {
  const head = 0.5 * record.density * record.faceVelocity ** 2;
  return stateOf(unit, rating, {
    section,
    name: "shut-off damper",
    control: "two-position",
    part: design.part,
    velocity: record.faceVelocity,
    bladeAngle: record.bladeAngle,
    head,
    bladeLoss: record.bladeLoss,
    restLoss: design.wallLoss * head,
  });
}

/** What the sections say of a damper. */
interface Stand {
  readonly section: string;
  readonly name: DamperState["name"];
  readonly control: DamperState["control"];
  readonly part: DamperPart;
  readonly velocity: number;
  readonly bladeAngle: number;
  /** Pa of velocity pressure in the face. */
  readonly head: number;
  readonly bladeLoss: number;
  readonly restLoss: number;
}

function stateOf(unit: Unit, rating: UnitRating, stand: Stand): DamperState {
  const { section, name, control, part, velocity, bladeAngle, head, bladeLoss, restLoss } = stand;
  const openLoss = damperBladeLoss(part, 90) * head;
  const loss = bladeLoss * head;
  return {
    section,
    name,
    control,
    bladeAction: part.damper.bladeAction,
    leakageClass: part.damper.leakageClass,
    area: part.area,
    velocity,
    bladeAngle,
    loss,
    openLoss,
    restLoss,
    authority: control === "two-position" || restLoss <= 0 ? undefined : openLoss / restLoss,
    closed: closedOf(unit, rating, part, bladeAngle === 0 ? loss : undefined),
  };
}

/** A closed damper; `loss` is what it takes where it stands closed now. */
function closedOf(unit: Unit, rating: UnitRating, part: DamperPart, loss: number | undefined): ClosedDamper {
  const pressure = loss ?? highestFanPressure(unit, rating);
  const leakage = part.area * damperLeakage(part.damper.leakageClass, pressure);
  const design = rating.condition.externalStatic.designDryAirFlow / standardAirDensity;
  return {
    pressure,
    because: loss === undefined ? "the fan pulls with all it has" : "it is closed",
    leakage,
    leakageShare: leakage / design,
    torque: damperTorque(part) * Math.max(1, pressure / recordTorquePressure),
  };
}

/** Pa that the fan reaches at its speed when nothing flows or little: what a damper closed by mistake or at start has to hold. */
function highestFanPressure(unit: Unit, rating: UnitRating): number {
  const record = rating.sections[sectionWithRole(unit, "fan")] as FanSectionRating | undefined;
  return record?.peakPressure ?? 0;
}
