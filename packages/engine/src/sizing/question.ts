import type { Duty } from "#duty/duty";
import type { DefaultApplied } from "#form/reading";

/** Something that nobody said and that was assumed. */
export interface Question {
  /** `duty.utilities.steam.condensateReturnPressure` */
  readonly path: string;
  readonly assumed: string;
  readonly asks: string;
  readonly why: string;
}

/** What an open question puts at stake, most first; common practice. Paths that are not listed matter least. */
const stakes: readonly (readonly [path: string, why: string])[] = [
  ["duty.externalStatic.includes", "what the external static covers decides fan, motor and sound"],
  ["duty.externalStatic.reserve", "a named reserve is better than one in every figure"],
  [
    "duty.utilities.steam.condensateReturnPressure",
    "lift and back-pressure hold condensate in the coil, where it freezes",
  ],
  ["duty.utilities.steam.valveFails", "decides whether a stopped unit freezes or overheats"],
  ["duty.utilities.chilledWater.glycol", "glycol costs a tenth and more of the coil"],
  ["duty.utilities.heatingWater.glycol", "plain water freezes in an outside-air coil"],
  ["duty.returnAir.staticPressure", "decides the return damper and what share it holds"],
  ["duty.supplyAirflow.minimum", "stability, stall and carry-over are looked at over the whole range of flow"],
  ["duty.supplyAirflow.basis", "standard or actual air: a tenth and more at altitude"],
  ["duty.setPoints.maximumDewPoint", "how dry the laboratories must be decides rows and water"],
  ["duty.setPoints.winterMinimumDewPoint", "a humidifier, its length and its steam"],
  ["duty.redundancy.airflowWithOneFanOut", "one fan or an array"],
  ["duty.soundLimits.discharge", "an attenuator's length and pressure"],
  ["duty.soundLimits.intake", "noise to the neighbours goes out through the intake"],
  ["duty.limits.length", "whether the unit fits the place"],
  ["duty.limits.width", "whether the unit fits the place"],
  ["duty.limits.height", "whether the unit fits the place"],
  ["duty.limits.shippingLength", "how many pieces the unit comes in"],
  ["duty.limits.shippingWidth", "road permits, or a unit in more pieces"],
  ["duty.limits.shippingHeight", "road permits, or a unit in more pieces"],
  ["duty.site.corrosionClass", "metals and coats"],
  ["duty.site.snow", "hood and drains"],
  ["duty.site.rainRate", "hood, louver and drains"],
  ["duty.site.placement", "roof, casing and condensation"],
  ["duty.site.windSpeed", "what wind blows through a stopped unit"],
  ["duty.utilities.electricity.voltage", "motors and working space"],
  ["duty.stackHeight", "how fast a stopped unit cools in winter"],
];

/** Open questions, those that move price or risk most first: defaults taken and optional answers not given. */
export function openQuestions(duty: Duty, defaults: readonly DefaultApplied[]): readonly Question[] {
  const questions = stakes.flatMap(([path, why]): readonly Question[] => {
    const taken = defaults.find((each) => each.path === path);
    if (taken !== undefined) return [{ path, assumed: taken.value, asks: taken.meaning, why }];
    const missing = isLeftOut(duty, path);
    return missing ? [{ path, assumed: "nothing", asks: `No ${lastWords(path)} is given`, why }] : [];
  });
  return questions;
}

/** True where the group is there and its optional member is not. */
function isLeftOut(duty: Duty, path: string): boolean {
  const names = path.split(".").slice(1);
  let at: unknown = duty;
  for (const name of names.slice(0, -1)) {
    at = (at as Readonly<Record<string, unknown>>)[name];
    if (at === undefined) return false;
  }
  return (at as Readonly<Record<string, unknown>>)[names.at(-1)!] === undefined;
}

function lastWords(path: string): string {
  const parts = path.split(".").slice(-2);
  const words = (name: string) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return parts[0] === "duty" ? words(parts[1]!) : `${words(parts[1]!)} under ${words(parts[0]!)}`;
}
