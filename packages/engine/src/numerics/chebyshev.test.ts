import { describe, expect, it } from "vitest";
import { chebyshevFit, evaluateFit } from "./chebyshev.ts";

describe("Chebyshev fit", () => {
  it("gives back a polynomial of its own degree", () => {
    const cubic = (x: number) => 2 - 3 * x + 0.5 * x ** 2 + 0.1 * x ** 3;
    const fit = chebyshevFit(cubic, -2, 7, 3);
    for (let x = -2; x <= 7; x += 0.5) expect(Math.abs(evaluateFit(fit, x) - cubic(x))).toBeLessThan(1e-12);
  });

  it("errs no more than the theory of Chebyshev interpolation allows", () => {
    // |error| ≤ max|f⁽ⁿ⁺¹⁾| / (2ⁿ (n+1)!) on −1…1 (any textbook of numerical analysis); for eˣ and n = 8: 2.9e-8.
    const fit = chebyshevFit(Math.exp, -1, 1, 8);
    const bound = Math.E / (2 ** 8 * 362_880);
    let worst = 0;
    for (let x = -1; x <= 1; x += 0.01) worst = Math.max(worst, Math.abs(evaluateFit(fit, x) - Math.exp(x)));
    expect(worst).toBeLessThan(bound);
    expect(worst).toBeGreaterThan(bound / 10);
  });

  it("refuses an empty interval and a degree it cannot hold", () => {
    expect(() => chebyshevFit(Math.exp, 1, 1, 4)).toThrow(/empty/);
    expect(() => chebyshevFit(Math.exp, 0, 1, 40)).toThrow(/degree 40/);
  });
});
