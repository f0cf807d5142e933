import { describe, expect, it } from "vitest";
import { requirements } from "./requirements.ts";
import { rules } from "./rules.ts";

/** Rows of each group of the list of requirements. */
const rows = {
  DUT: 13,
  INT: 14,
  LVR: 9,
  DMP: 13,
  FLT: 17,
  STM: 23,
  CLG: 34,
  FAN: 26,
  VIB: 10,
  CAS: 21,
  COD: 10,
  SND: 5,
  SHP: 8,
};

describe("the list of requirements", () => {
  it("has every row of every group", () => {
    for (const [group, count] of Object.entries(rows)) {
      const ids = requirements.filter(({ id }) => id.startsWith(`${group}-`)).map(({ id }) => id);
      expect(ids).toEqual(
        Array.from({ length: count }, (_, index) => `${group}-${String(index + 1).padStart(2, "0")}`),
      );
    }
    expect(requirements).toHaveLength(Object.values(rows).reduce((sum, count) => sum + count, 0));
  });

  it("leaves no row without a rule or another answer with its reason", () => {
    const covered = new Set(rules.flatMap(({ covers }) => covers));
    const open = requirements.filter(
      ({ id, other, why }) => !covered.has(id) && (other === undefined || why === undefined),
    );
    expect(open.map(({ id }) => id)).toEqual([]);
  });

  it("knows every row that a rule says it answers", () => {
    const ids = new Set(requirements.map(({ id }) => id));
    const unknown = rules.flatMap(({ id, covers }) =>
      covers.filter((row) => !ids.has(row)).map((row) => `${id}: ${row}`),
    );
    expect(unknown).toEqual([]);
  });
});
