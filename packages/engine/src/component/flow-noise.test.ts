import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sumOfLevels } from "./fan-sound.ts";
import { damperOpenShare, damperSoundPower, grilleSoundPower } from "./flow-noise.ts";
import { inOctaveBands } from "./sound-path.ts";

describe("flow noise of dampers", () => {
  it("follows the printed form in feet a minute", () => {
    // A printed guide to sound in ventilation systems writes the same law with fpm and a constant of −107 dB for K + 10
    // log F + 50 log U + 10 log S + 10 log D. Its rounding of 50 log 60 + 10 log 63 = 106.9 is the tolerance.
    const [feet, squareFeet, fpm, loss] = [1.5, 3, 1500, 2.5];
    const squeezed = fpm * ((loss - 1) / (Math.sqrt(loss) - 1));
    for (const frequency of [63, 500, 4000]) {
      const strouhal = (60 * frequency * feet) / squeezed;
      const spectrum = strouhal <= 25 ? -36.3 - 10.7 * Math.log10(strouhal) : -1.1 - 35.9 * Math.log10(strouhal);
      const size = 10 * Math.log10(squareFeet * feet);
      const printed = spectrum + 10 * Math.log10(frequency) + 50 * Math.log10(squeezed) + size - 107;
      const ours = damperSoundPower(frequency, loss, fpm * (0.3048 / 60), squareFeet * 0.3048 ** 2, feet * 0.3048);
      expect(Math.abs(ours - printed)).toBeLessThan(0.15);
    }
  });

  it("squeezes the air through half the face at a loss of one, less at more", () => {
    expect(damperOpenShare(1)).toBeCloseTo(0.5, 12);
    expect(damperOpenShare(24.9)).toBeCloseTo((Math.sqrt(24.9) - 1) / 23.9, 12);
  });

  it("grows with velocity and with closing, and doubles its power with area at the same height", () => {
    const velocity = fc.double({ min: 0.5, max: 20, noNaN: true });
    fc.assert(
      fc.property(velocity, fc.double({ min: 0.1, max: 1e4, noNaN: true }), (speed, loss) => {
        inOctaveBands((frequency) => {
          const level = damperSoundPower(frequency, loss, speed, 1, 1);
          expect(damperSoundPower(frequency, loss, 1.1 * speed, 1, 1)).toBeGreaterThan(level);
          expect(damperSoundPower(frequency, 1.1 * loss, speed, 1, 1)).toBeGreaterThan(level);
          expect(damperSoundPower(frequency, loss, speed, 2, 1) - level).toBeCloseTo(10 * Math.log10(2), 9);
          return level;
        });
      }),
    );
  });
});

describe("flow noise of grilles", () => {
  it("rises by 18 dB when velocity doubles, in the bands about its peak", () => {
    // Long, Architectural Acoustics, eq. 13.27: sixth power of velocity; the peak moves up one band with it.
    const whole = (velocity: number) => sumOfLevels(inOctaveBands((each) => grilleSoundPower(each, 10, velocity, 1)));
    // The shape is cut off at 63 and 8000 Hz, where it has fallen by 15 dB: a tenth of a dB is lost there.
    expect(whole(6) - whole(3)).toBeCloseTo(60 * Math.log10(2), 0);
    expect(Math.abs(whole(6) - whole(3) - 60 * Math.log10(2))).toBeLessThan(0.3);
  });

  it("has its shape about the band of the peak", () => {
    // Eqs. 13.31 and 13.32: 2 m/s is 6.56 ft/s, peak at 320 Hz, in the band of 250 Hz; one band up −0.98 dB from it.
    const at = (frequency: number) => grilleSoundPower(frequency, 10, 2, 1);
    expect(at(500) - at(250)).toBeCloseTo(0.15 - 1.13, 9);
    expect(at(125) - at(250)).toBeCloseTo(-0.15 - 1.13, 9);
  });
});
