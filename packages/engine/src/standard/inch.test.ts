import { expect, it } from "vitest";
import { metresPerInch } from "#quantity/inch-pound";
import { parseQuantity } from "#quantity/parse";
import { inch } from "./inch.ts";

// NIST Special Publication 811, appendix B: exactly 2.54 cm.
it("is one inch, in tables, in factors and as typed", () => {
  expect(inch).toBe(2.54 / 100);
  expect(metresPerInch).toBe(inch);
  expect(parseQuantity("1 in", "length")).toMatchObject({ ok: true, value: inch });
});
