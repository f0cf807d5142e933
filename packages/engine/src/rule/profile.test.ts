import { describe, expect, it } from "vitest";
import { everyRule, findingFor, shippedProfile, shippedProfiles } from "./base-unit.test-data.ts";
import { failsUnit } from "./finding.ts";
import { readProfile } from "./profile.ts";
import { rules } from "./rules.ts";

const head = "format: oncethrough profile 1\nprofile: trial\n";

describe("owner profiles", () => {
  it("are shipped in three kinds, all sound", () => {
    expect(shippedProfiles.problems).toEqual([]);
    expect([...shippedProfiles.byName.keys()].sort()).toEqual([
      "common practice",
      "low pressure drop laboratory",
      "strict once-through",
    ]);
  });

  it("say line, value and what is allowed where they are wrong", () => {
    const wrong = `${head}limits:\n  - { rule: cooling fase velocity, limit: 400 fpm, reason: x }\n  - { rule: cooling face velocity, limit: 4 psi, reason: x }\n  - { rule: hood open downward, limit: 1, reason: x }\n`;
    const { profile, problems } = readProfile(wrong, rules);
    expect(profile).toBeUndefined();
    expect(problems.map(({ line }) => line)).toEqual([4, 5, 6]);
    expect(problems[0]?.nearest).toBe("cooling face velocity");
    expect(problems[1]?.allowed).toContain("fpm");
    expect(problems[2]?.problem).toContain("no limit");
  });

  it("make a contested limit decide when they set it, and only then", () => {
    const patch = [["design: 14000 cfm", "design: 20000 cfm"]] as const;
    expect(findingFor("cooling face velocity", patch)?.outcome).toBe("advice");
    expect(findingFor("cooling face velocity", patch, shippedProfile("strict once-through"))?.outcome).toBe("fail");
  });

  it("let a rule go by name, and it fails the unit no more, but stays told", () => {
    const { profile } = readProfile(
      `${head}waivers:\n  - { rule: carry-over at the largest flow, by: the owner, reason: trial }\n`,
      rules,
    );
    const patch = [
      ["design: 14000 cfm", "design: 20000 cfm"],
      ["fins: 10 per in", "fins: 12 per in"],
    ] as const;
    const finding = findingFor("carry-over at the largest flow", patch, profile);
    expect(finding?.outcome).toBe("fail");
    expect(finding?.entry.waiver?.by).toBe("the owner");
    expect(finding !== undefined && failsUnit(finding)).toBe(false);
    const strict = findingFor("carry-over at the largest flow", patch, everyRule);
    expect(strict !== undefined && failsUnit(strict)).toBe(true);
  });

  it("leave rules out, with a reason", () => {
    const { profile } = readProfile(`${head}without:\n  - { rule: hood open downward, reason: trial }\n`, rules);
    expect(findingFor("hood open downward", [], profile)).toBeUndefined();
  });
});
