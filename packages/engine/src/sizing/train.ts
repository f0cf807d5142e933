import type { Duty } from "#duty/duty";
import type { DraftSection } from "./draft.ts";
import type { SizeLimits } from "./size-limits.ts";

/**
 * The sections that a duty asks for, in airflow order: rain out, dust out, frost off, water out and drained, then the fan.
 * A duty file that names its sections is not asked.
 */
export function sectionTrain(duty: Duty, limits: SizeLimits): DraftSection[] {
  return [
    section("intake hood", "intake hood", { opening: "facing down" }),
    section("louver", "louver", { exposure: "behind a hood" }),
    intake(duty),
    section("filter bank", "filters"),
    ...(duty.exhaust === undefined
      ? []
      : [section("access", "filter access"), section("recovery coil", "run-around coil")]),
    ...heating(duty, limits),
    ...cooling(duty, limits),
    section("fan", "fan"),
    ...(duty.setPoints.winterMinimumDewPoint === undefined ? [] : [section("steam humidifier", "humidifier")]),
    section("discharge plenum", "discharge plenum", { direction: "horizontal" }),
  ];
}

function section(kind: string, name: string, values: DraftSection["values"] = {}): DraftSection {
  return { kind, name, values: { ...values } };
}

function intake(duty: Duty): DraftSection {
  return duty.outsideAirShare < 1 ? section("mixing box", "mixing box") : section("shut-off damper", "intake damper");
}

function heating(duty: Duty, limits: SizeLimits): readonly DraftSection[] {
  const { steam, heatingWater } = duty.utilities;
  if (steam !== undefined) {
    const kind = limits.faceAndBypass ? "steam coil with face and bypass" : "steam coil";
    return [section(kind, "preheat coil")];
  }
  return heatingWater === undefined ? [] : [section("hot-water coil", "preheat coil")];
}

function cooling(duty: Duty, limits: SizeLimits): readonly DraftSection[] {
  if (duty.utilities.chilledWater === undefined) return [section("access", "fan access")];
  return [
    limits.walkInBeforeCoil ? section("access", "coil access") : section("spray gap", "spray gap"),
    section("chilled-water coil", "cooling coil"),
    section("access", "fan access"),
  ];
}
