import { liquidFreezePoint } from "#fluid/liquid";
import { steamSaturationTemperature } from "#fluid/steam";
import { choice, factor, flag, type GroupCheck, group, quantity } from "#form/field";
import { printQuantity } from "#quantity/print";

const valveFails = choice(["open", "closed"], {
  meaning: "Where the valve stands when control fails or the fan stops",
  default: "open",
});

/** Steam at hand, as it arrives at the coil. */
export const steamFields = {
  pressureAtCoil: quantity("gaugePressure", {
    meaning: "Steam pressure at the coil with the valve open, after valve and strainer",
    minimum: "0.5 psig",
    maximum: "200 psig",
  }),
  condensateReturnPressure: quantity("gaugePressure", {
    meaning: "Pressure that the condensate return holds against the trap, lift included",
    default: "0 psig",
    minimum: "0 psig",
    maximum: "100 psig",
  }),
  valveFails,
} as const;

const liquidFields = {
  glycol: choice(["none", "ethylene glycol", "propylene glycol"], {
    meaning: "Antifreeze in the water",
    default: "none",
  }),
  concentration: quantity("share", {
    meaning: "Glycol by mass of the mixture",
    default: "0 %",
    minimum: "0 %",
    maximum: "60 %",
  }),
  flow: quantity("liquidFlow", {
    meaning: "Flow at full load; give this or the change of temperature",
    optional: true,
    minimum: "0.1 gpm",
    maximum: "20000 gpm",
  }),
  pumpRunsWhenStopped: flag({ meaning: "The circulating pump runs on when the fan stops", default: false }),
};

/** Chilled water at hand. */
export const chilledWaterFields = {
  supply: quantity("temperature", { meaning: "Temperature entering the coil", minimum: "20 °F", maximum: "70 °F" }),
  rise: quantity("temperatureDifference", {
    meaning: "Rise through the coil at full load; give this or the flow",
    optional: true,
    minimum: "2 F°",
    maximum: "40 F°",
  }),
  ...liquidFields,
  valveFails: choice(["open", "closed"], {
    meaning: "Where the valve stands when control fails or the fan stops",
    default: "closed",
  }),
} as const;

/** Pressure of a loop, against which its water does not boil. */
export const loopPressureField = quantity("gaugePressure", {
  meaning:
    "Pressure of the loop at the coil, by which its water does not boil; the default is the fill pressure that loops have at their highest place (common practice)",
  default: "12 psig",
  minimum: "0 psig",
  maximum: "150 psig",
});

/** Heating water or glycol at hand. */
export const heatingWaterFields = {
  supply: quantity("temperature", { meaning: "Temperature entering the coil", minimum: "70 °F", maximum: "250 °F" }),
  pressure: loopPressureField,
  drop: quantity("temperatureDifference", {
    meaning: "Drop through the coil at full load; give this or the flow",
    optional: true,
    minimum: "2 F°",
    maximum: "100 F°",
  }),
  ...liquidFields,
  valveFails,
} as const;

function checkFlowOrChange(change: "rise" | "drop"): GroupCheck {
  return (values, say) => {
    const allowed = `one of \`${change}\` and \`flow\``;
    const given = Number(values[change] !== undefined) + Number(values.flow !== undefined);
    if (given === 0) say(undefined, `neither ${change} nor flow is given`, allowed);
    if (given === 2) say("flow", `both ${change} and flow are given`, allowed);
    if (values.glycol === "none" && (values.concentration as number) > 0) {
      say(
        "concentration",
        "a concentration is given, but no glycol",
        "name the `glycol`, or leave the concentration out",
      );
    }
    if (values.glycol !== "none" && values.concentration === 0) {
      say("concentration", "the glycol has no concentration", "a share by mass, 1 % to 60 %");
    }
    checkLiquidSupply(values, say);
  };
}

/** Liquid that is supplied colder than it freezes is no liquid. */
export const checkLiquidSupply: GroupCheck = (values, say) => {
  const { supply, glycol, concentration } = values as {
    readonly supply: number;
    readonly glycol: "none" | "ethylene glycol" | "propylene glycol";
    readonly concentration: number;
  };
  if (typeof supply !== "number" || (glycol === "none") !== (concentration === 0)) return;
  const liquid =
    glycol === "none"
      ? ({ substance: "water", massFraction: 0 } as const)
      : ({ substance: glycol, massFraction: concentration } as const);
  const freezes = liquidFreezePoint(liquid);
  if (supply >= freezes) return;
  const what = glycol === "none" ? "water" : `${glycol} of ${Math.round(100 * concentration)} %`;
  const limit = `${(freezes * 1.8 + 32).toFixed(0)} °F (${freezes.toFixed(0)} °C)`;
  say("supply", `${what} is ice at this temperature`, `at least ${limit}, or more glycol`);
};

/**
 * What is wrong with water at `supply` °C in a loop of `pressure` Pa against a site's barometric pressure, Pa; nothing where it
 * stays water. Glycol only raises the temperature at which its mixture boils, so that water's is on the safe side.
 */
export function boilingProblem(
  supply: number,
  pressure: number,
  barometricPressure: number,
): { readonly problem: string; readonly allowed: string } | undefined {
  const boils = steamSaturationTemperature(pressure + barometricPressure);
  if (supply < boils) return undefined;
  const at = `${printQuantity(boils, "temperature", "ip")} (${printQuantity(boils, "temperature", "si")})`;
  const held = printQuantity(pressure, "gaugePressure", "ip");
  return {
    problem: `water boils at ${at} under the loop's ${held} and this site's barometric pressure`,
    allowed: "colder water, or the higher `pressure` that the loop really holds at the coil",
  };
}

/** Electricity at hand. */
export const electricityFields = {
  voltage: quantity("voltage", { meaning: "Between phases", default: "460 V", minimum: "100 V", maximum: "700 V" }),
  frequency: quantity("frequency", { meaning: "Of the mains", default: "60 Hz", minimum: "45 Hz", maximum: "65 Hz" }),
  phases: factor({ meaning: "Number of phases, 1 or 3", default: 3, minimum: 1, maximum: 3 }),
} as const;

/** What the building gives the unit. */
export const utilitiesFields = {
  steam: group(steamFields, {
    meaning: "Steam; hot and under pressure: piped and started by licensed people",
    optional: true,
  }),
  chilledWater: group(chilledWaterFields, {
    meaning: "Chilled water",
    optional: true,
    check: checkFlowOrChange("rise"),
  }),
  heatingWater: group(heatingWaterFields, {
    meaning: "Hot water or glycol for heating",
    optional: true,
    check: checkFlowOrChange("drop"),
  }),
  electricity: group(electricityFields, { meaning: "Electricity" }),
} as const;
