import { standardPressure } from "#fluid/atmosphere";
import { type Liquid, liquidFreezePoint } from "#fluid/liquid";
import { humidityRatioFromWetBulb } from "#fluid/wet-bulb";
import { choice, type GroupCheck, group, integer, quantity, text, type ValuesOf } from "#form/field";
import { inBothUnits } from "../both-units.ts";

const bulb = { minimum: "-60 °F", maximum: "190 °F" } as const;

/** What a supplier declares of any coil: the point, what the coil is, what it does there. */
const anyCoilFields = {
  number: text({ meaning: "Number of the rating or submittal", longest: 60 }),
  revision: text({ meaning: "Revision of it", longest: 20, default: "" }),
  airflow: quantity("airflow", {
    meaning: "Airflow over all coils of the section",
    minimum: "50 cfm",
    maximum: "250000 cfm",
  }),
  basis: choice(["standard", "actual"], {
    meaning: "Airflow of standard air, 0.075 lb/ft³, or of the air as it enters",
    default: "standard",
  }),
  altitude: quantity("length", {
    meaning: "Height above sea level that the rating was made for",
    default: "0 ft",
    minimum: "-1500 ft",
    maximum: "15000 ft",
  }),
  enteringDryBulb: quantity("temperature", { meaning: "Dry bulb of the entering air", ...bulb }),
  rows: integer({ meaning: "Tube rows of the coil declared", optional: true, minimum: 1, maximum: 16 }),
  fins: quantity("pitch", {
    meaning: "Fins of the coil declared",
    optional: true,
    minimum: "3 per in",
    maximum: "18 per in",
  }),
  capacity: quantity("power", { meaning: "Total capacity, all coils together", minimum: "1 kBtu/h" }),
  leavingDryBulb: quantity("temperature", { meaning: "Dry bulb of the leaving air", optional: true, ...bulb }),
  airPressureDrop: quantity("pressureDifference", {
    meaning: "Air pressure drop",
    optional: true,
    minimum: "0.001 in.wg",
    maximum: "10 in.wg",
  }),
} as const;

const liquidFields = {
  ...anyCoilFields,
  enteringWetBulb: quantity("temperature", {
    meaning:
      "Wet bulb of the entering air; a cooling coil needs it, dry air is taken where a heating coil leaves it out",
    optional: true,
    ...bulb,
  }),
  circuits: integer({ meaning: "Liquid circuits of one coil declared", optional: true, minimum: 1, maximum: 800 }),
  glycol: choice(["none", "ethylene glycol", "propylene glycol"], {
    meaning: "Antifreeze in the liquid of the rating",
    default: "none",
  }),
  concentration: quantity("share", {
    meaning: "Glycol by mass of the mixture",
    default: "0 %",
    minimum: "0 %",
    maximum: "60 %",
  }),
  flow: quantity("liquidFlow", {
    meaning: "Liquid flow, all coils together",
    minimum: "0.5 gpm",
    maximum: "5000 gpm",
  }),
  enteringLiquid: quantity("temperature", { meaning: "Entering liquid", minimum: "-20 °F", maximum: "250 °F" }),
  leavingLiquid: quantity("temperature", {
    meaning: "Leaving liquid",
    optional: true,
    minimum: "-20 °F",
    maximum: "250 °F",
  }),
  sensibleCapacity: quantity("power", {
    meaning: "Sensible capacity of a cooling coil",
    optional: true,
    minimum: "1 kBtu/h",
  }),
  leavingWetBulb: quantity("temperature", { meaning: "Wet bulb of the leaving air", optional: true, ...bulb }),
  airPressureDropOf: choice(["dry fins", "wet fins"], {
    meaning: "Whether the air pressure drop declared is that of dry or of wet fins",
    default: "dry fins",
  }),
  liquidPressureDrop: quantity("liquidPressureDrop", {
    meaning: "Liquid pressure drop between the connections",
    optional: true,
    minimum: "0.01 ft wg",
    maximum: "300 ft wg",
  }),
} as const;

const steamFields = {
  ...anyCoilFields,
  steamPressure: quantity("gaugePressure", {
    meaning: "Steam pressure at the coil",
    minimum: "-12 psig",
    maximum: "200 psig",
  }),
  condensate: quantity("massFlow", { meaning: "Condensate, all coils together", optional: true, minimum: "1 lb/h" }),
} as const;

/** A declared point of a coil with liquid in its tubes, read. */
export type DeclaredLiquidCoil = ValuesOf<typeof liquidFields>;

/** A declared point of a steam coil, read. */
export type DeclaredSteamCoil = ValuesOf<typeof steamFields>;

/** The liquid that a rating was made with. */
export function declaredLiquid({ glycol, concentration }: DeclaredLiquidCoil): Liquid {
  return glycol === "none"
    ? { substance: "water", massFraction: 0 }
    : { substance: glycol, massFraction: concentration };
}

/** kg/kg of the entering air; of dry air where no wet bulb is declared. */
export function declaredHumidityRatio({ enteringDryBulb, enteringWetBulb, altitude }: DeclaredLiquidCoil): number {
  if (enteringWetBulb === undefined) return 0;
  return humidityRatioFromWetBulb(enteringDryBulb, enteringWetBulb, standardPressure(altitude));
}

/** What cannot be a rating of any coil with liquid: air and glycol that do not exist, a liquid that is ice. */
const checkLiquidPoint: GroupCheck = (values, say) => {
  const point = values as unknown as DeclaredLiquidCoil;
  if ((point.glycol === "none") !== (point.concentration === 0)) {
    say("concentration", "glycol and concentration do not agree", "both, or neither");
    return;
  }
  const freezing = liquidFreezePoint(declaredLiquid(point));
  if (point.enteringLiquid < freezing)
    say("enteringLiquid", "the liquid enters frozen", `above ${inBothUnits(freezing, "temperature")}, or more glycol`);
  for (const [dry, wet] of [
    ["enteringDryBulb", "enteringWetBulb"],
    ["leavingDryBulb", "leavingWetBulb"],
  ] as const) {
    const [dryBulb, wetBulb] = [point[dry], point[wet]];
    if (dryBulb !== undefined && wetBulb !== undefined && wetBulb > dryBulb + 1e-9)
      say(wet, "the wet bulb is above the dry bulb, which no air can be", "a value not above the dry bulb");
  }
  if (!(declaredHumidityRatio(point) >= 0))
    say("enteringWetBulb", "no air of this dry bulb has so low a wet bulb", "a higher wet bulb");
  if (point.sensibleCapacity !== undefined && point.sensibleCapacity > point.capacity * 1.001)
    say("sensibleCapacity", "more sensible than total capacity", "at most the `capacity`");
};

/** True where the declared liquid, air and leaving air all say that heat goes the way asked. */
function checkDirection(cools: boolean): GroupCheck {
  return (values, say) => {
    const { enteringDryBulb, enteringLiquid, leavingDryBulb } = values as unknown as DeclaredLiquidCoil;
    const [does, side] = cools ? ["cools", "below"] : ["heats", "above"];
    const goes = (of: number) => (cools ? of < enteringDryBulb : of > enteringDryBulb);
    if (!goes(enteringLiquid))
      say("enteringLiquid", `a coil that ${does} needs liquid ${side} the air`, `${side} the entering dry bulb`);
    if (leavingDryBulb !== undefined && !goes(leavingDryBulb))
      say("leavingDryBulb", `the coil ${does} the air`, `${side} the entering dry bulb`);
  };
}

const groupWords = "A supplier's returned rating of the coil, to be held against ours before it is ordered";

/** The declared rating of a coil with liquid in its tubes that cools, heats, or does either. */
export function declaredLiquidRating(does: "cooling" | "heating" | "either") {
  const check: GroupCheck = (values, say) => {
    checkLiquidPoint(values, say);
    if (does === "cooling" && values.enteringWetBulb === undefined)
      say(undefined, "the entering wet bulb of a cooling coil is not given", "`entering wet bulb`");
    const { enteringDryBulb, enteringLiquid } = values as unknown as DeclaredLiquidCoil;
    const cools = does === "either" ? enteringLiquid < enteringDryBulb : does === "cooling";
    checkDirection(cools)(values, say);
  };
  return group(liquidFields, { meaning: groupWords, optional: true, check });
}

const checkSteamPoint: GroupCheck = (values, say) => {
  const { enteringDryBulb, leavingDryBulb } = values as unknown as DeclaredSteamCoil;
  if (leavingDryBulb !== undefined && leavingDryBulb <= enteringDryBulb)
    say("leavingDryBulb", "the coil heats the air", "above the entering dry bulb");
};

/** The declared rating of a steam coil. */
export const declaredSteamRating = group(steamFields, { meaning: groupWords, optional: true, check: checkSteamPoint });
