import { checkCoilLimits, coilLimitFields } from "@oncethrough/engine/design/coil-limits";
import { airStateFields, checkAirState, humidityRatioOfAirState } from "@oncethrough/engine/duty/air-state";
import {
  boilingProblem,
  checkLiquidSupply,
  chilledWaterFields,
  loopPressureField,
  steamFields,
} from "@oncethrough/engine/duty/utilities";
import { standardPressure } from "@oncethrough/engine/fluid/atmosphere";
import {
  choice,
  type Fields,
  type GroupCheck,
  group,
  quantity,
  text,
  type ValuesOf,
  variant,
} from "@oncethrough/engine/form/field";
import type { SectionKind } from "@oncethrough/engine/section/contract";
import { sectionKinds } from "@oncethrough/engine/section/kinds";

/** First line of every coil file. */
export const coilFormat = "oncethrough coil file 1";

/** The kinds of section that are a coil by themselves. */
export const coilKinds: readonly SectionKind[] = (sectionKinds as unknown as readonly SectionKind[]).filter(
  ({ name, role }) => / coil\b/.test(name) && (role === "cooling" || role === "heating" || name === "recovery coil"),
);

const coilVariants: Record<string, Fields> = Object.fromEntries(coilKinds.map((kind) => [kind.name, kind.fields]));
const coilChecks = Object.fromEntries(coilKinds.flatMap((kind) => (kind.check ? [[kind.name, kind.check]] : [])));

const airFields = {
  ...airStateFields,
  airflow: quantity("airflow", {
    meaning: "Airflow; give this or the face velocity",
    optional: true,
    minimum: "50 cfm",
    maximum: "250000 cfm",
  }),
  faceVelocity: quantity("velocity", {
    meaning: "Velocity over the coil's face; give this or the airflow",
    optional: true,
    minimum: "20 fpm",
    maximum: "1500 fpm",
  }),
  basis: choice(["standard", "actual"], {
    meaning: "Airflow and face velocity of standard air, 0.075 lb/ft³, or of the air as it enters",
    default: "standard",
  }),
  altitude: quantity("length", {
    meaning: "Height above sea level; sea level when neither this nor the barometric pressure is given",
    optional: true,
    minimum: "-1500 ft",
    maximum: "15000 ft",
  }),
  barometricPressure: quantity("absolutePressure", {
    meaning: "Barometric pressure, where it is known better than from the altitude",
    optional: true,
    minimum: "50 kPa",
    maximum: "110 kPa",
  }),
  leaving: quantity("temperature", {
    meaning: "Dry bulb wanted behind the coil; full capacity when left out",
    optional: true,
    minimum: "-40 °F",
    maximum: "180 °F",
  }),
} as const;

const exhaustFields = {
  ...airStateFields,
  airflow: quantity("airflow", {
    meaning: "Exhaust airflow, of standard air; that of the section when left out",
    optional: true,
    minimum: "50 cfm",
    maximum: "250000 cfm",
  }),
} as const;

const { glycol, concentration, flow } = chilledWaterFields;

const waterFields = {
  supply: quantity("temperature", { meaning: "Temperature entering the coil", minimum: "20 °F", maximum: "250 °F" }),
  pressure: loopPressureField,
  rise: quantity("temperatureDifference", {
    meaning: "Rise through a cooling coil; give this or the flow",
    optional: true,
    minimum: "2 F°",
    maximum: "40 F°",
  }),
  drop: quantity("temperatureDifference", {
    meaning: "Drop through a heating coil; give this or the flow",
    optional: true,
    minimum: "2 F°",
    maximum: "100 F°",
  }),
  flow,
  glycol,
  concentration,
} as const;

const { pressureAtCoil, condensateReturnPressure } = steamFields;

const checkAir: GroupCheck = (values, say) => {
  checkAirState(values, say);
  const given = Number(values.airflow !== undefined) + Number(values.faceVelocity !== undefined);
  const allowed = "one of `airflow` and `face velocity`";
  if (given === 0) say(undefined, "neither airflow nor face velocity is given", allowed);
  if (given === 2) say("faceVelocity", "both airflow and face velocity are given", allowed);
};

const checkWater: GroupCheck = (values, say) => {
  const given = ["rise", "drop", "flow"].filter((name) => values[name] !== undefined);
  const allowed = "one of `rise` (cooling), `drop` (heating) and `flow`";
  if (given.length === 0) say(undefined, "neither rise, drop nor flow is given", allowed);
  if (given.length > 1) say(given[1], `${given.join(" and ")} are given`, allowed);
  if ((values.glycol === "none") !== (values.concentration === 0)) {
    say("concentration", "glycol and concentration do not agree", "both, or neither");
  }
  checkLiquidSupply(values, say);
};

/** Everything that a coil file may say. */
export const coilFields = {
  format: text({ meaning: `Layout of this file: \`${coilFormat}\``, default: coilFormat }),
  coil: variant(coilVariants, { meaning: "The coil, as a section of a job", checks: coilChecks }),
  cabinet: group(
    {
      width: quantity("length", { meaning: "Clear width", minimum: "18 in", maximum: "30 ft" }),
      height: quantity("length", { meaning: "Clear height", minimum: "18 in", maximum: "20 ft" }),
    },
    { meaning: "The cabinet that the coil fills, where its own size is not given", optional: true },
  ),
  air: group(airFields, { meaning: "The air that enters", check: checkAir }),
  water: group(waterFields, { meaning: "Water or glycol at the coil", optional: true, check: checkWater }),
  steam: group(
    { pressureAtCoil, condensateReturnPressure },
    { meaning: "Steam at the coil; hot and under pressure", optional: true },
  ),
  exhaust: group(exhaustFields, {
    meaning: "The exhaust air that a recovery coil's loop draws on",
    optional: true,
    check: checkAirState,
  }),
  limits: group(coilLimitFields, {
    meaning: "What `--alternatives` may use and has to keep",
    optional: true,
    check: checkCoilLimits,
  }),
} as const;

/** What a coil file gives. */
export type CoilValues = ValuesOf<typeof coilFields>;

/** Pa absolute at the coil. */
export function coilPressure({ barometricPressure, altitude }: CoilValues["air"]): number {
  return barometricPressure ?? standardPressure(altitude ?? 0);
}

/** kg/kg of the entering air. */
export function coilHumidityRatio(air: CoilValues["air"]): number {
  return humidityRatioOfAirState(air, coilPressure(air));
}

function hasOwnSize(coil: Readonly<Record<string, unknown>>): boolean {
  return coil.finnedHeight !== undefined && coil.finnedLength !== undefined;
}

/** Heat has to flow the way that the kind is for. */
function checkDirection(
  kind: SectionKind | undefined,
  air: CoilValues["air"],
  water: CoilValues["water"],
  say: Parameters<GroupCheck>[1],
): void {
  if (water === undefined) return;
  if (kind?.role === "cooling" && water.supply >= air.dryBulb) {
    say("water", "the water is no colder than the air: it would heat it", "a supply below the air's dry bulb");
  }
  if (kind?.role === "heating" && water.supply <= air.dryBulb) {
    say("water", "the water is no warmer than the air: it would cool it", "a supply above the air's dry bulb");
  }
}

/** What the chosen kind asks of the file besides its own fields. */
export const checkCoilFile: GroupCheck = (values, say) => {
  const { coil, cabinet, air, water, steam, exhaust } = values as unknown as CoilValues;
  const kind = coilKinds.find((each) => each.name === coil.kind);
  if (cabinet === undefined && !hasOwnSize(coil)) {
    const allowed = "`finned height` and `finned length` of the coil, or the `cabinet` that it fills";
    say("coil", "the size of the coil is not given", allowed);
  }
  const wanted = coil.kind.startsWith("steam") ? "steam" : coil.kind === "recovery coil" ? "exhaust" : "water";
  if ({ steam, water, exhaust }[wanted] === undefined) {
    say(undefined, `a ${coil.kind} needs \`${wanted}\`, which is not given`, `a group \`${wanted}\``);
  }
  if (kind?.role === "cooling" && water?.drop !== undefined) {
    say("water", "a cooling coil warms its water", "`rise` instead of `drop`");
  }
  if (kind?.role === "heating" && water?.rise !== undefined) {
    say("water", "a heating coil cools its water", "`drop` instead of `rise`");
  }
  checkDirection(kind, air, water, say);
  const pressure = coilPressure(air);
  const boiling = water && boilingProblem(water.supply, water.pressure, pressure);
  if (boiling !== undefined) say("water", boiling.problem, boiling.allowed);
  if (air.altitude !== undefined && air.barometricPressure !== undefined) {
    say("air", "altitude and barometric pressure are both given", "one of them");
  }
  if (!Number.isFinite(humidityRatioOfAirState(air, pressure))) {
    say("air", "no air can have this state at this pressure", "less moisture");
  }
};
