import { listOf, number, published, record, text } from "../schema/describe.ts";

const closed = record({
  pressure: number("Pa that the closed damper really sees"),
  because: text("where that pressure comes from"),
  leakage: number("m³/s of standard air, by the leakage class and the root of pressure"),
  leakageShare: number("of the design airflow, 0 to 1"),
  torque: number("N·m to close against that pressure"),
});

const damper = record(
  {
    section: text("name of the section"),
    name: { enum: ["outside-air damper", "return-air damper", "shut-off damper"] },
    control: { enum: ["hand set", "actuated", "two-position"] },
    bladeAction: { enum: ["opposed", "parallel"] },
    leakageClass: text(),
    area: number("m², face"),
    velocity: number("m/s in the face; negative where air goes backwards"),
    bladeAngle: number("degrees from closed"),
    loss: number("Pa that the blades take"),
    openLoss: number("Pa that they would take wide open at this flow"),
    restLoss: number("Pa of all else on the damper's path"),
    authority: number("loss of the open blades over the rest of the path; left out for a damper that opens and shuts"),
    closed,
  },
  "authority",
);

const proposal = record({
  section: text("name of the mixing box"),
  outsideBladeAngle: number("degrees from closed"),
  returnBladeAngle: number("degrees from closed"),
  wantedShare: number("0 to 1, of outside air by dry air"),
  share: number("with these angles"),
  shareAtWholeDegrees: number("with both angles rounded"),
  held: { type: "boolean" },
  reason: text("why no angles hold the share; empty when they do"),
});

const share = record({
  words: text("what differs from the condition"),
  flowShare: number("of the condition's flow"),
  filterLoading: number("0 clean to 1 at change-out"),
  windSpeed: number("m/s"),
  windPressureCoefficient: number("pressure at the intake over the wind's velocity pressure"),
  share: number("of outside air, 0 to 1, by dry air"),
  returnDryAirFlow: number("kg/s from the return opening; negative backwards"),
  solved: { type: "boolean" },
});

/** The published schema of `oncethrough dampers --json`. */
export function dampersSchema(): object {
  const stopped = record({
    condition: text("key"),
    name: text(),
    intakeDryAirFlow: number("kg/s of dry air that still comes in"),
    dampers: listOf(damper),
  });
  return published(
    "dampers",
    "The dampers of a unit, as printed by `oncethrough dampers --json`; numbers in SI units",
    {
      ...record(
        {
          format: { const: "oncethrough dampers 1" },
          tag: text("of the unit"),
          condition: text("key of the condition to which the rest belongs"),
          solved: { type: "boolean" },
          outsideAirShare: number("0 to 1, by dry air"),
          dampers: listOf(damper, "in airflow order"),
          stopped: listOf(stopped, "the conditions with the fan stopped"),
          proposal,
          shares: listOf(share),
        },
        "proposal",
        "shares",
      ),
    },
  );
}
