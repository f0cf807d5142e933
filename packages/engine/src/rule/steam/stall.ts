import { dropLegPressure } from "#component/coil/steam-side";
import type { SteamCoilDesign } from "#section/steam-coil/design";
import type { SteamCoilRating } from "#section/steam-coil/rate";
import { conditionRule, type Mend, type RatedSection, type Rule } from "../contract.ts";
import { fahrenheit } from "../inch-pound-limits.ts";

/** Kinds of coil in which steam condenses. */
export const steamCoilKinds = ["steam coil", "steam coil with face and bypass"] as const;

type AtSteamCoil = RatedSection<Pick<SteamCoilDesign, "dropLeg">, SteamCoilRating>;

const fullSteam: readonly Mend[] = [
  { at: { kind: "steam coil" }, field: "control", way: "other" },
  { at: "section", field: "dropLeg", way: "more" },
  { at: { kind: "steam coil" }, field: "rows", way: "less" },
];

/** Freezing air meets tubes in which condensate may stand. */
function meetsFrost({ record }: AtSteamCoil): boolean {
  return record.capacity > 0 && record.entering.coldestFilament < 0;
}

/** Steam that cannot push its condensate out. */
export const stallRules: readonly Rule[] = [
  conditionRule<Pick<SteamCoilDesign, "dropLeg">, SteamCoilRating>({
    id: "steam stall in frost",
    covers: ["STM-09", "STM-10", "STM-11", "STM-12", "STM-13", "DUT-13"],
    protects: "the tubes from freezing and bursting",
    measures: "pressure in the coil and of the drop leg, while freezing air meets the tubes",
    quantity: "absolutePressure",
    sense: "at least",
    limit: ({ rating }) => rating.condition.utilities.steam?.condensateReturnPressure ?? Number.NaN,
    limitWords: "the pressure that the condensate return holds against the trap",
    source: "derived-here balance of heat and pressure on the steam side; steam-stall-example",
    certainty: "derived here",
    severity: "damage",
    remedy: "full steam with face and bypass, a two-position valve on a small first coil, or a longer free drop leg",
    mends: fullSteam,
    of: steamCoilKinds,
    value: (at) => (meetsFrost(at) ? at.record.steamPressure + dropLegPressure(at.design.dropLeg) : undefined),
  }),
  conditionRule<Pick<SteamCoilDesign, "dropLeg">, SteamCoilRating>({
    id: "stall temperature",
    covers: ["STM-09", "STM-10", "STM-12"],
    protects: "the tubes on all the hours between the design day and the frost point",
    measures: "entering air above which the coil stalls at this flow and set point",
    quantity: "temperature",
    span: 10,
    sense: "at least",
    limit: 0,
    source: "derived-here T = (T_set − ε T_drain)/(1 − ε), steam-stall-example",
    certainty: "derived here",
    severity: "damage",
    remedy: "full steam with face and bypass, or less surface on a higher steam pressure",
    mends: fullSteam,
    of: steamCoilKinds,
    value: (at) => (meetsFrost(at) ? at.record.stallAirTemperature : undefined),
  }),
  conditionRule<Pick<SteamCoilDesign, "dropLeg">, SteamCoilRating>({
    id: "steam pressure in cold air",
    covers: ["STM-02", "STM-01"],
    protects: "the tubes: condensate has to leave at once",
    measures: "gauge pressure at the coil's connection while air below 35 °F enters",
    quantity: "gaugePressure",
    sense: "at least",
    limit: 5 * 6894.757,
    source: "steam-coil-guide 5 psig at the coil at all times below 35 °F",
    certainty: "read",
    contested:
      "makers forbid a modulating valve below 35 °F and the VA asks for face and bypass on a two-position valve, yet units are built with modulating valves: where the coil does not stall, an owner may let this go by name",
    severity: "damage",
    remedy: "full steam with face and bypass",
    mends: fullSteam,
    of: steamCoilKinds,
    value: ({ record }) =>
      record.capacity > 0 && record.entering.coldestFilament < fahrenheit(35)
        ? record.connectionGaugePressure
        : undefined,
  }),
];
