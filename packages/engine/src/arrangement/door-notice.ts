import { printQuantity } from "#quantity/print";
import type { Unit } from "#unit/unit";
import type { DoorSwing } from "./door-swing.ts";
import type { ArrangementNotice } from "./notice.ts";
import type { Running } from "./running.ts";

/** Pa under which a door is opened and shut either way. */
const hardlyFelt = 50;

/** Doors that the wall pressure pushes open: under suction a door opens outwards, under pressure inwards. */
export function doorNotices(unit: Unit, swings: readonly DoorSwing[], running: Running): readonly ArrangementNotice[] {
  return swings.flatMap(({ section, part, hinge, opens }) => {
    const index = unit.sections.findIndex(({ name }) => name === section);
    const found = running.sections[index]?.wallPressure;
    // Behind plenum wheels the door has the fan's pressure, which the section's own wall pressure already is.
    if (found === undefined || (part.endsWith("/door") && isPlenumFan(unit, index))) return [];
    const pushes = opens === "outward" ? found.most : -found.least;
    if (pushes < hardlyFelt) return [];
    const what = `the door opens ${opens}, and ${printQuantity(pushes, "pressureDifference", "si")} push it open: it should open ${opens === "outward" ? "inward" : "outward"}`;
    return [{ part: section, at: hinge.x, what, weight: "caution", source: "common-practice" }];
  });
}

/** The door before plenum wheels stands in suction, whatever the cabinet behind them has. */
function isPlenumFan(unit: Unit, index: number): boolean {
  const { behaviour, design } = unit.sections[index]!;
  return behaviour.role === "fan" && !(design as { readonly housed: boolean }).housed;
}
