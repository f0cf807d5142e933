import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chamberSoundLoss,
  panelSoundLoss,
  squareTurnSoundLoss,
  wallRadiation,
  wallSoundAbsorption,
} from "./sound-path.ts";

describe("sound on its way", () => {
  it("meets the worked example of a lined chamber", () => {
    // An open reference page on chamber attenuation: lining 0.65, 16 m² inside, outlet 0.3 m², 2 m at 45°: 17.3 dB.
    expect(chamberSoundLoss(0.3, 16, 0.65, 2, 45)).toBeCloseTo(17.3, 1);
  });

  it("loses more in a chamber with more lining, a smaller way out, a longer way and a wider angle", () => {
    const share = fc.double({ min: 0.02, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(share, fc.double({ min: 0.5, max: 6, noNaN: true }), (absorption, distance) => {
        const loss = chamberSoundLoss(0.4, 30, absorption, distance, 30);
        expect(chamberSoundLoss(0.4, 30, absorption + 0.05, distance, 30)).toBeGreaterThanOrEqual(loss);
        expect(chamberSoundLoss(0.3, 30, absorption, distance, 30)).toBeGreaterThanOrEqual(loss);
        expect(chamberSoundLoss(0.4, 30, absorption, 1.2 * distance, 30)).toBeGreaterThanOrEqual(loss);
        expect(chamberSoundLoss(0.4, 30, absorption, distance, 60)).toBeGreaterThanOrEqual(loss);
      }),
    );
  });

  it("lets out through walls never more than came in, and without absorption what the handbook's breakout gives", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 200, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (wall, open, absorption, loss) => {
          const level = wallRadiation(wall, open, absorption, loss);
          expect(level).toBeLessThan(0);
          // Breakout of ducts: 10 log(S/A) − TL (ASHRAE, from memory); absorption can only lower it.
          expect(level).toBeLessThanOrEqual(10 * Math.log10(wall / open) - loss + 1e-9);
        },
      ),
    );
    expect(wallRadiation(60, 4, 0, 50)).toBeCloseTo(10 * Math.log10(15) - 50, 2);
  });

  it("keeps more back by thicker panels, up to the thickest of the table", () => {
    for (const frequency of [63, 250, 1000, 8000]) {
      expect(panelSoundLoss(0.0762, frequency)).toBeGreaterThan(panelSoundLoss(0.0508, frequency));
      expect(panelSoundLoss(0.15, frequency)).toBe(panelSoundLoss(0.1016, frequency));
      expect(wallSoundAbsorption("perforated", 0.0762, frequency)).toBeGreaterThanOrEqual(
        wallSoundAbsorption("perforated", 0.0508, frequency),
      );
      expect(wallSoundAbsorption("solid", 0.0762, frequency)).toBeLessThan(0.1);
    }
    expect(squareTurnSoundLoss(0.5, 63)).toBe(0);
  });
});
