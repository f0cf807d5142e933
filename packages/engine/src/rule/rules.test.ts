import { describe, expect, it } from "vitest";
import { fieldAt, findingFor } from "./base-unit.test-data.ts";
import { casingCases } from "./casing/casing-cases.test-data.ts";
import { mayDecide } from "./contract.ts";
import { coolingCases } from "./cooling/cooling-cases.test-data.ts";
import { damperCases } from "./damper/damper-cases.test-data.ts";
import { drainCases } from "./drain/drain-cases.test-data.ts";
import { energyCases } from "./energy/energy-cases.test-data.ts";
import { fanCases } from "./fan/fan-cases.test-data.ts";
import { filterCases } from "./filter/filter-cases.test-data.ts";
import { freezeCases } from "./freeze/freeze-cases.test-data.ts";
import { intakeCases } from "./intake/intake-cases.test-data.ts";
import { louverCases } from "./louver/louver-cases.test-data.ts";
import { panCases } from "./pan/pan-cases.test-data.ts";
import type { RuleCase } from "./rule-case.test-data.ts";
import { rules } from "./rules.ts";
import { serviceCases } from "./service/service-cases.test-data.ts";
import { shippingCases } from "./shipping/shipping-cases.test-data.ts";
import { sitingCases } from "./siting/siting-cases.test-data.ts";
import { soundCases } from "./sound/sound-cases.test-data.ts";
import { steamCases } from "./steam/steam-cases.test-data.ts";
import { supplyCases } from "./supply/supply-cases.test-data.ts";
import { vibrationCases } from "./vibration/vibration-cases.test-data.ts";

const cases: readonly RuleCase[] = [
  ...casingCases,
  ...coolingCases,
  ...damperCases,
  ...drainCases,
  ...energyCases,
  ...fanCases,
  ...filterCases,
  ...freezeCases,
  ...intakeCases,
  ...louverCases,
  ...panCases,
  ...serviceCases,
  ...shippingCases,
  ...sitingCases,
  ...soundCases,
  ...steamCases,
  ...supplyCases,
  ...vibrationCases,
];

describe.each(rules.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
  const own = cases.filter((each) => each.rule === id);

  it("has a case that is met and one that is missed", () => {
    expect(own.filter(({ is }) => is === "met").length).toBeGreaterThan(0);
    expect(own.filter(({ is }) => is === "missed").length).toBeGreaterThan(0);
  });

  const named = own.map(
    (each) => [each.is, each.patch.map(([, by]) => by.trim()).join("; ") || "as it is", each] as const,
  );
  it.each(named)("is %s with %s", (is, _, { patch, value, limit }) => {
    const finding = findingFor(id, patch);
    const missed = mayDecide(rule) || rule.byDefault === false ? "fail" : "advice";
    const wanted = { met: "pass", missed, "cannot tell": "cannot tell", "not asked": undefined }[is];
    expect(finding?.outcome).toBe(wanted);
    if (value !== undefined) expect(finding?.value).toBeCloseTo(value, 4);
    if (limit !== undefined) expect(finding?.limit).toBeCloseTo(limit, 4);
  });

  it("names fields that the job has, to mend it", () => {
    for (const mend of rule.mends) {
      const fields = fieldAt(mend, rule);
      expect(fields.length, `${mend.field} of ${JSON.stringify(mend.at)}`).toBeGreaterThan(0);
      for (const field of fields) expect(field, `${mend.field} of ${JSON.stringify(mend.at)}`).toBeDefined();
    }
  });
});

describe("the rules together", () => {
  it("have names of their own", () => {
    const ids = rules.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("have no case of a rule that is not there", () => {
    const ids = rules.map(({ id }) => id);
    expect(cases.filter(({ rule }) => !ids.includes(rule)).map(({ rule }) => rule)).toEqual([]);
  });
});
