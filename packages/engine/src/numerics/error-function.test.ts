import { erf } from "mathjs";
import { describe, expect, it } from "vitest";
import { errorFunction } from "./error-function.ts";

describe("error function", () => {
  it("agrees with the general-purpose library mathjs to the last digits", () => {
    for (let x = -7; x <= 7; x += 0.13) expect(errorFunction(x)).toBeCloseTo(erf(x), 13);
  });

  it("is odd and passes through zero", () => {
    expect(errorFunction(0)).toBe(0);
    expect(errorFunction(-1.3)).toBe(-errorFunction(1.3));
  });
});
