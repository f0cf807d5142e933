import type { BuildLine } from "../contract.ts";
import type { FanDesign } from "./design.ts";

/** What the fans are to be built as, with motor and drive. */
export function fanBuild(design: FanDesign): readonly BuildLine[] {
  const { wheel, motor, drive, count } = design;
  const driven: readonly BuildLine[] =
    drive === "belt"
      ? [{ name: "belts", text: design.belts.head.name }]
      : [{ name: "drive", text: "on the motor's shaft" }];
  return [
    { name: "fans", quantity: "count", value: count },
    { name: "wheel", text: wheel.head.name },
    { name: "wheel diameter", quantity: "length", value: design.diameter },
    { name: "class", text: design.class },
    ...(design.housed ? [{ name: "discharge", text: design.discharge }] : []),
    { name: "motor", text: motor.head.name },
    { name: "motor power, each", quantity: "shaftPower", value: design.motorPower },
    ...driven,
    { name: "highest wheel speed", quantity: "rotationalSpeed", value: design.maximumSpeed },
  ];
}
