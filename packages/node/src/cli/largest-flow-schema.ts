import { listOf, number, record, text } from "./schema/describe.ts";

/** What a unit's largest flow is told by. */
export const largestFlowFields = {
  fanSpeed: number("rev/s"),
  share: number("of design airflow"),
  dryAirFlow: number("kg/s of dry air that leave the unit"),
  intakeAirflow: number("m³/s that enter it"),
  intake: listOf(
    record(
      {
        section: text("name"),
        kind: text(),
        velocity: number("m/s in a hood's opening, in a louver's free area"),
        marginToOnset: number("share left to the onset of water penetration; negative beyond it"),
      },
      "marginToOnset",
    ),
    "sections of the intake in airflow order",
  ),
} as const;
