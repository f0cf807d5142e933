import { choice, flag, group, list, quantity, text, type ValuesOf } from "#form/field";
import { printQuantity } from "#quantity/print";
import { airStateFields, checkAirState } from "./air-state.ts";
import { checkSchedule, scheduleFields } from "./schedule.ts";
import { siteField } from "./site.ts";
import { tariffFields } from "./tariffs.ts";
import { utilitiesFields } from "./utilities.ts";

const designDay = (meaning: string) => group(airStateFields, { meaning, check: checkAirState });

/** Supply airflow, what it is measured in and where. */
const supplyAirflowFields = {
  design: quantity("airflow", { meaning: "Airflow at design", minimum: "200 cfm", maximum: "250000 cfm" }),
  minimum: quantity("airflow", {
    meaning: "Smallest airflow in use; the design airflow when left out",
    optional: true,
    minimum: "100 cfm",
    maximum: "250000 cfm",
  }),
  basis: choice(["standard", "actual"], {
    meaning: "Standard air of 0.075 lb/ft³, or the air as it is at the plane",
    default: "standard",
  }),
  plane: choice(["supply", "intake"], { meaning: "Where an actual airflow is measured", default: "supply" }),
} as const;

/** Set points; supply set points hold after fan heat. */
const setPointFields = {
  coilLeaving: quantity("temperature", {
    meaning: "Air leaving the cooling coil; give this or the supply temperature",
    optional: true,
    minimum: "35 °F",
    maximum: "90 °F",
  }),
  supply: quantity("temperature", {
    meaning: "Air leaving the unit in summer, after fan heat",
    optional: true,
    minimum: "40 °F",
    maximum: "100 °F",
  }),
  maximumDewPoint: quantity("temperature", {
    meaning: "Highest dew point that the laboratories take",
    optional: true,
    minimum: "30 °F",
    maximum: "80 °F",
  }),
  winterSupply: quantity("temperature", {
    meaning: "Air leaving the unit in winter, after fan heat",
    minimum: "32 °F",
    maximum: "120 °F",
  }),
  winterMinimumDewPoint: quantity("temperature", {
    meaning: "Dew point that the humidifier has to reach in winter",
    optional: true,
    minimum: "0 °F",
    maximum: "70 °F",
  }),
} as const;

/** Everything the customer needs of the unit. */
export const dutyFields = {
  tag: text({ meaning: "The unit's name on the customer's drawings", longest: 60 }),
  customer: text({ meaning: "Who asks", default: "", longest: 120 }),
  service: text({ meaning: "What the air is for, in a line", default: "", longest: 200 }),
  site: siteField,
  supplyAirflow: group(supplyAirflowFields, {
    meaning: "Supply airflow",
    check: (values, say) => {
      const minimum = values.minimum as number | undefined;
      const design = values.design as number;
      if (minimum !== undefined && minimum > design) {
        const most = `${printQuantity(design, "airflow", "ip")} (${printQuantity(design, "airflow", "si")})`;
        say("minimum", "the minimum airflow is above the design airflow", `at most the design airflow, ${most}`);
      }
    },
  }),
  outsideAirShare: quantity("share", {
    meaning: "Share of outside air wanted at design, by mass of dry air",
    default: "100 %",
    minimum: "30 %",
    maximum: "100 %",
  }),
  summer: group(
    {
      dryBulbDay: designDay("The day of highest dry bulb"),
      wetBulbDay: designDay("The day of highest wet bulb: most heat to take out"),
      dewPointDay: designDay("The day of highest dew point: most water to take out"),
    },
    { meaning: "The three summer design days" },
  ),
  winter: designDay("The winter design day"),
  returnAir: group(
    {
      summer: designDay("Return air in summer"),
      winter: designDay("Return air in winter"),
      staticPressure: quantity("gaugePressure", {
        meaning: "Static pressure at the return opening against outdoors",
        default: "0 in.wg",
        minimum: "-3 in.wg",
        maximum: "3 in.wg",
      }),
    },
    { meaning: "Air that comes back from the building; needed below 100 % outside air", optional: true },
  ),
  setPoints: group(setPointFields, {
    meaning: "What the laboratories need",
    check: (values, say) => {
      if (values.coilLeaving === undefined && values.supply === undefined) {
        say(undefined, "no summer set point is given", "`coil leaving`, `supply`, or both");
      }
    },
  }),
  externalStatic: group(
    {
      pressure: quantity("pressureDifference", {
        meaning: "Static pressure that the duct system needs at design airflow",
        minimum: "0 in.wg",
        maximum: "15 in.wg",
      }),
      fixed: quantity("pressureDifference", {
        meaning: "The part of it that a pressure controller holds at every flow",
        default: "0 in.wg",
        minimum: "0 in.wg",
        maximum: "10 in.wg",
      }),
      reserve: quantity("pressureDifference", {
        meaning: "Pressure that the fan has to be able to give beyond that; the unit's needed static includes it",
        default: "0 in.wg",
        minimum: "0 in.wg",
        maximum: "5 in.wg",
      }),
      includes: list(text({ meaning: "What the figure covers", longest: 120 }), {
        meaning: "What the external static covers: supply duct, terminal boxes, reheat coils, …",
        optional: true,
      }),
    },
    {
      meaning: "Pressure of the duct system",
      check: (values, say) => {
        if ((values.fixed as number) > (values.pressure as number)) {
          say("fixed", "the fixed part is more than the whole", "at most the pressure at design");
        }
      },
    },
  ),
  utilities: group(utilitiesFields, { meaning: "What the building gives the unit" }),
  exhaust: group(
    {
      airflow: quantity("standardAirflow", { meaning: "Exhaust air that passes the remote coil, standard air" }),
      summer: designDay("Exhaust air in summer"),
      winter: designDay("Exhaust air in winter"),
    },
    { meaning: "Exhaust stream of a run-around loop", optional: true },
  ),
  limits: group(
    {
      length: quantity("length", { meaning: "Longest unit that the site takes", optional: true }),
      width: quantity("length", { meaning: "Widest", optional: true }),
      height: quantity("length", { meaning: "Highest, rail included", optional: true }),
      serviceSide: quantity("length", {
        meaning: "Clear room beside the unit on the side of its doors and pipes",
        optional: true,
      }),
      shippingLength: quantity("length", { meaning: "Longest piece that can be shipped and rigged", default: "40 ft" }),
      shippingWidth: quantity("length", { meaning: "Widest piece", default: "8 ft 6 in" }),
      shippingHeight: quantity("length", { meaning: "Highest piece", default: "8 ft 6 in" }),
      shippingMass: quantity("mass", { meaning: "Heaviest piece", default: "40000 lb" }),
    },
    { meaning: "Limits of size and shipping" },
  ),
  soundLimits: group(
    {
      intake: quantity("soundLevel", { meaning: "A-weighted sound power at the intake", optional: true }),
      discharge: quantity("soundLevel", { meaning: "A-weighted sound power at the discharge", optional: true }),
      casing: quantity("soundLevel", { meaning: "A-weighted sound power radiated by the casing", optional: true }),
    },
    { meaning: "Limits of sound power" },
  ),
  redundancy: group(
    {
      airflowWithOneFanOut: quantity("share", { meaning: "Share of design airflow with one fan out", default: "0 %" }),
      emergencyPower: flag({ meaning: "The fan runs on emergency power", default: false }),
    },
    { meaning: "What must go on when something fails" },
  ),
  schedule: group(scheduleFields, { meaning: "How the unit runs over the year", check: checkSchedule }),
  tariffs: group(tariffFields, { meaning: "What energy and water cost and emit" }),
  stackHeight: quantity("length", {
    meaning: "Height of warm air in ducts and building that draws through a stopped unit in winter",
    default: "30 ft",
    minimum: "0 ft",
    maximum: "500 ft",
  }),
  ownerProfile: text({ meaning: "Name of the owner's rule profile", default: "common practice", longest: 60 }),
} as const;

/** A duty as read, in SI. */
export type Duty = ValuesOf<typeof dutyFields>;
