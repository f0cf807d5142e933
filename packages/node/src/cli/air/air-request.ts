import { standardPressure } from "@oncethrough/engine/fluid/atmosphere";
import { type GivenAir, HIGHEST_AIR_PRESSURE, LOWEST_AIR_PRESSURE } from "@oncethrough/engine/fluid/given-air";
import { type MoistAirState, moistAirState } from "@oncethrough/engine/fluid/moist-air-state";
import type { QuantityKind } from "@oncethrough/engine/quantity/kind";
import { parseQuantity } from "@oncethrough/engine/quantity/parse";
import { type GivenKey, givenProperties } from "./air-property.ts";

/** What is wrong with a value that was given, and where. */
export interface AirProblem {
  /** Line of the CSV file; undefined for values given as options. */
  readonly row?: number;
  /** The column or option, by its words; empty for the row as a whole. */
  readonly column: string;
  readonly value: string;
  readonly problem: string;
  readonly allowed: string;
}

/** A state that was asked for, and the answer. */
export interface AirAnswer {
  readonly row?: number;
  readonly name?: string;
  readonly given: readonly GivenKey[];
  readonly state: MoistAirState;
  /** By ideal relations, where asked for. */
  readonly ideal?: MoistAirState;
  readonly notes: readonly string[];
}

/** Typed values by their words: `dry bulb` → `95 °F`. Empty ones count as not given. */
export type TypedValues = Readonly<Record<string, string>>;

const seaLevel = 101_325;
const placeKinds = { pressure: "absolutePressure", altitude: "length" } as const satisfies Record<string, QuantityKind>;

/** Words that a value may be given under besides the properties of air. */
export const placeWords = Object.keys(placeKinds);

const twoOf = `two of ${givenProperties.map((each) => each.words).join(", ")}`;

/** Answers one request, or says everything that is wrong with it. */
export function answerAir(typed: TypedValues, ideal: boolean): Omit<AirAnswer, "row"> | readonly AirProblem[] {
  const problems: AirProblem[] = [];
  const values: Partial<Record<GivenKey, number>> = {};
  for (const { key, words, quantity } of givenProperties) {
    const value = read(typed, words, quantity, problems);
    if (value !== undefined) values[key] = value;
  }
  const pressure = readPressure(typed, problems);
  const given = givenProperties.map((each) => each.key).filter((key) => values[key] !== undefined);
  if (problems.length > 0) return problems;
  if (given.length !== 2) {
    const problem =
      given.length === 0
        ? "no value is given"
        : `${given.length} ${given.length === 1 ? "value is" : "values are"} given`;
    return [{ column: "", value: "", problem, allowed: twoOf }];
  }
  try {
    const state = moistAirState(values, pressure);
    const compared = ideal ? idealState(values, pressure) : undefined;
    const notes = [
      ...(state.freeWater > 0 ? ["fog: saturated air with free water"] : []),
      ...(ideal && compared === undefined ? ["by ideal relations no air can have this pair"] : []),
    ];
    return { given, state, notes, ...(compared === undefined ? {} : { ideal: compared }) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const words = given.map((key) => givenProperties.find((each) => each.key === key)?.words ?? key);
    const value = words.map((each) => typed[each] ?? "").join(", ");
    return [
      {
        column: words.join(" and "),
        value,
        problem: error.message.replace(/^moist air: /, ""),
        allowed: "a pair that air can have",
      },
    ];
  }
}

function read(typed: TypedValues, words: string, quantity: QuantityKind, problems: AirProblem[]): number | undefined {
  const value = (typed[words] ?? "").trim();
  if (value === "") return undefined;
  const parsed = parseQuantity(value, quantity);
  if (parsed.ok) return parsed.value;
  problems.push({ column: words, value, problem: parsed.problem, allowed: parsed.allowed });
  return undefined;
}

function readPressure(typed: TypedValues, problems: AirProblem[]): number {
  const pressure = read(typed, "pressure", placeKinds.pressure, problems);
  const altitude = read(typed, "altitude", placeKinds.altitude, problems);
  if (pressure !== undefined && altitude !== undefined) {
    const value = typed.altitude ?? "";
    problems.push({
      column: "altitude",
      value,
      problem: "pressure and altitude are both given",
      allowed: "one of them",
    });
  }
  if (problems.length > 0) return seaLevel;
  const at = pressure ?? (altitude === undefined ? seaLevel : pressureAtAltitude(altitude));
  if (at >= LOWEST_AIR_PRESSURE && at <= HIGHEST_AIR_PRESSURE) return at;
  const column = pressure === undefined ? "altitude" : "pressure";
  const problem = `the pressure, ${(at / 1000).toFixed(1)} kPa, is outside what the relations of moist air cover`;
  problems.push({ column, value: typed[column] ?? "", problem, allowed });
  return seaLevel;
}

const allowed = `${LOWEST_AIR_PRESSURE / 1000} to ${HIGHEST_AIR_PRESSURE / 1000} kPa absolute`;

/** Where the standard atmosphere ends there is no pressure. */
function pressureAtAltitude(altitude: number): number {
  return altitude > -5000 && altitude < 40_000 ? standardPressure(altitude) : 0;
}

/** The state by ideal relations; a pair just inside saturation may lie outside it there. */
function idealState(given: GivenAir, pressure: number): MoistAirState | undefined {
  try {
    return moistAirState(given, pressure, "ideal");
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
