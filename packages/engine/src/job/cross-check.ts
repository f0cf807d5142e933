import type { Duty } from "#duty/duty";
import { sitePressure } from "#duty/standard-conditions";
import { boilingProblem } from "#duty/utilities";
import type { WrittenSection } from "#unit/assemble";

/** A problem and the path at which it shows. */
export interface PlacedProblem {
  readonly path: string;
  readonly problem: string;
  readonly allowed: string;
}

/** What a kind of section needs of the duty. */
const needs: Readonly<Record<string, "steam" | "chilledWater" | "heatingWater">> = {
  "steam coil": "steam",
  "steam coil with face and bypass": "steam",
  "steam humidifier": "steam",
  "hot-water coil": "heatingWater",
  "chilled-water coil": "chilledWater",
};

const utilityWords = { steam: "steam", chilledWater: "chilled water", heatingWater: "heating water" } as const;

/** Duty and machine must fit each other: utilities for every coil, return air for every share below all. */
export function crossProblems(duty: Duty, sections: readonly WrittenSection[]): readonly PlacedProblem[] {
  return [
    ...utilityProblems(duty, sections),
    ...returnProblems(duty, sections),
    ...waterProblems(duty),
    ...boilingProblems(duty),
  ];
}

function utilityProblems(duty: Duty, sections: readonly WrittenSection[]): readonly PlacedProblem[] {
  const problems: PlacedProblem[] = [];
  sections.forEach(({ kind, name }, index) => {
    const utility = needs[kind.name];
    if (utility !== undefined && duty.utilities[utility] === undefined) {
      const words = utilityWords[utility];
      problems.push({
        path: `unit.sections[${index}]`,
        problem: `${name} needs ${words}, and the duty gives none`,
        allowed: `\`${words}\` under \`duty: utilities:\``,
      });
    }
    if (kind.name === "recovery coil" && duty.exhaust === undefined) {
      problems.push({
        path: `unit.sections[${index}]`,
        problem: `${name} needs an exhaust stream, and the duty gives none`,
        allowed: "`exhaust` under `duty:`",
      });
    }
  });
  return problems;
}

function returnProblems(duty: Duty, sections: readonly WrittenSection[]): readonly PlacedProblem[] {
  if (duty.outsideAirShare >= 1) return [];
  const problems: PlacedProblem[] = [];
  if (duty.returnAir === undefined) {
    problems.push({
      path: "duty.outsideAirShare",
      problem: "less than all the air comes from outside, but the duty gives no return air",
      allowed: "`return air` under `duty:`, or `outside air share: 100 %`",
    });
  }
  if (!sections.some(({ kind }) => kind.role === "mixing")) {
    problems.push({
      path: "duty.outsideAirShare",
      problem: "less than all the air comes from outside, but the unit has no mixing box",
      allowed: "a section of kind `mixing box`, or `outside air share: 100 %`",
    });
  }
  return problems;
}

function boilingProblems(duty: Duty): readonly PlacedProblem[] {
  const water = duty.utilities.heatingWater;
  const found = water && boilingProblem(water.supply, water.pressure, sitePressure(duty));
  return found === undefined ? [] : [{ path: "duty.utilities.heatingWater.supply", ...found }];
}

function waterProblems(duty: Duty): readonly PlacedProblem[] {
  const water = duty.utilities.chilledWater;
  const { coilLeaving, supply } = duty.setPoints;
  const coldest = Math.min(coilLeaving ?? Number.POSITIVE_INFINITY, supply ?? Number.POSITIVE_INFINITY);
  if (water === undefined || water.supply < coldest) return [];
  return [
    {
      path:
        coilLeaving !== undefined && coilLeaving <= coldest ? "duty.setPoints.coilLeaving" : "duty.setPoints.supply",
      problem: "the air is to leave colder than the chilled water arrives, which no coil can do",
      allowed: "a set point above the chilled-water supply, or colder water",
    },
  ];
}
