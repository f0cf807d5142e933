import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { QuantityKind } from "./kind.ts";
import { kindTable } from "./kind-table.ts";
import { allowedText, parseQuantity } from "./parse.ts";
import { printQuantity } from "./print.ts";

const kinds = Object.keys(kindTable) as QuantityKind[];

describe("what people type", () => {
  // Expected values by hand from the definitions: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, °C = (°F − 32) / 1.8,
  // 1 inch of water = 249.08891 Pa, 1 ft³/min = 4.719474432e-4 m³/s, 1 Btu = 1055.05585262 J.
  const typed: [string, QuantityKind, number][] = [
    ["24,000 CFM", "airflow", 11.326738636],
    ["24 000 cfm", "airflow", 11.326738636],
    ["24\u202f000\u00a0cfm", "airflow", 11.326738636],
    ["24000 cubic feet per minute", "airflow", 11.326738636],
    ["2.4e4 cu. ft/min", "airflow", 11.326738636],
    ["1000 scfm", "standardAirflow", 0.4719474432],
    ["1000 acfm", "actualAirflow", 0.4719474432],
    ["500 L/s", "airflow", 0.5],
    ["3600 m3/hr", "airflow", 1],
    ["500 fpm", "velocity", 2.54],
    ["500 ft/min", "velocity", 2.54],
    ["500 feet per minute", "velocity", 2.54],
    ["-40 °F", "temperature", -40],
    ["−40 °F", "temperature", -40],
    ["–40F", "temperature", -40],
    ["98 degF", "temperature", 36.6666666667],
    ["98 deg. F", "temperature", 36.6666666667],
    ["98 ℉", "temperature", 36.6666666667],
    ["98 degrees Fahrenheit", "temperature", 36.6666666667],
    ["20 º C", "temperature", 20],
    ["293.15 K", "temperature", 20],
    ["18 F°", "temperatureDifference", 10],
    ["18 °F", "temperatureDifference", 10],
    ["10 K", "temperatureDifference", 10],
    ["-9 F", "temperatureDifference", -5],
    ["6 in w.g.", "pressureDifference", 1494.53346],
    ["6 in. w.g.", "pressureDifference", 1494.53346],
    ["6 inches of water", "pressureDifference", 1494.53346],
    ["6 in. H₂O", "pressureDifference", 1494.53346],
    ['6" wg', "pressureDifference", 1494.53346],
    ["6” w.c.", "pressureDifference", 1494.53346],
    ["2.75 in.wg", "pressureDifference", 684.9945025],
    ["1/4 in.wg", "pressureDifference", 62.2722275],
    ["10 ft of water", "pressureDifference", 29890.6692],
    ["10 ft. head", "pressureDifference", 29890.6692],
    ["1 psi", "pressureDifference", 6894.7572931],
    ["15 psig", "gaugePressure", 103421.3593975],
    ["15 psi", "gaugePressure", 103421.3593975],
    ["100 kPa(g)", "gaugePressure", 100000],
    ["1 bar gauge", "gaugePressure", 100000],
    ["14.7 psia", "absolutePressure", 101352.932],
    ["29.92 inHg", "absolutePressure", 101320.748],
    ["29.92 in. Hg", "absolutePressure", 101320.748],
    ["101.325 kPa", "absolutePressure", 101325],
    ["0.101325 MPa abs", "absolutePressure", 101325],
    ["12 tons", "power", 42202.2341],
    ["12 tons of refrigeration", "power", 42202.2341],
    ["2 tons", "mass", 1814.36948],
    ["2 t", "mass", 2000],
    ["1.2 MBH", "power", 351.6852842],
    ["1.2 kBtu/hr", "power", 351.6852842],
    ["1200 BTUH", "power", 351.6852842],
    ["7 1/2 hp", "shaftPower", 5592.749],
    ["1,150 lbs/hr", "massFlow", 0.1448976],
    ["1150 pounds per hour", "massFlow", 0.1448976],
    ["120 gpm", "liquidFlow", 7.57082357e-3],
    ["80 gr/lb", "humidityRatio", 0.0114285714],
    ["80 grains per pound of dry air", "humidityRatio", 0.0114285714],
    ["11.43 g/kg", "humidityRatio", 0.01143],
    ["85 %", "share", 0.85],
    ["85%", "share", 0.85],
    ["85 per cent", "share", 0.85],
    ["5/8 in", "length", 0.015875],
    ["5/8-in.", "length", 0.015875],
    ["⅝ in", "length", 0.015875],
    ["3-1/2 in", "length", 0.0889],
    ["3 1/2 in", "length", 0.0889],
    ["3½ in", "length", 0.0889],
    ['3½"', "length", 0.0889],
    ["3'-6\"", "length", 1.0668],
    ["3' 6''", "length", 1.0668],
    ["3’-6 1/2”", "length", 1.0795],
    ["3 ft 6 in", "length", 1.0668],
    ["3 ft. 6-1/2 in.", "length", 1.0795],
    ["-3'-6\"", "length", -1.0668],
    ["3.5 ft", "length", 1.0668],
    ["1 067 mm", "length", 1.067],
    ["6200 ft", "length", 1889.76],
    ["0.0065 in", "smallLength", 1.651e-4],
    ["6.5 mil", "smallLength", 1.651e-4],
    ["165 µm", "smallLength", 1.65e-4],
    ["165 μm", "smallLength", 1.65e-4],
    ["12 per in", "pitch", 472.4409449],
    ["12 per inch", "pitch", 472.4409449],
    ["12 fpi", "pitch", 472.4409449],
    ["12 fins per inch", "pitch", 472.4409449],
    ["12/in", "pitch", 472.4409449],
    ["42 sq. ft", "area", 3.90192768],
    ["42 ft^2", "area", 3.90192768],
    ["42 sqft", "area", 3.90192768],
    ["0.00025 hr·ft²·°F/Btu", "foulingResistance", 4.402755e-5],
    ["0.00025 h-ft2-F/Btu", "foulingResistance", 4.402755e-5],
    ["5e-5 m²K/W", "foulingResistance", 5e-5],
    ["5×10⁻⁵ m²·K/W", "foulingResistance", 5e-5],
    ["5 x 10^-5 m2 K/W", "foulingResistance", 5e-5],
    ["1 Btu/(h·ft²·°F)", "heatTransferCoefficient", 5.678263],
    ["1 Btu/hr-ft2-F", "heatTransferCoefficient", 5.678263],
    ["1,180 RPM", "rotationalSpeed", 19.6666667],
    ["45°", "angle", 45],
    ["45 degrees", "angle", 45],
    ["30 psf", "massPerArea", 146.472829],
    ["65 dB(A)", "weightedSoundLevel", 65],
    ["460 VAC", "voltage", 460],
    ["$1,250.50", "money", 125050],
    ["-$1,250.50", "money", -125050],
    ["1250.5 USD", "money", 125050],
    ["1250.50", "money", 125050],
    ["€ 99", "money", 9900],
  ];
  it.each(typed)("%s is read as %s", (text, kind, value) => {
    const parsed = parseQuantity(text, kind);
    expect(parsed).toMatchObject({ ok: true });
    // The expected values stand there to seven digits or more.
    expect(parsed.ok && Math.abs(parsed.value / value - 1)).toBeLessThan(1e-6);
  });
});

describe("what is refused", () => {
  const refused: [string, QuantityKind, RegExp][] = [
    ["0.85", "share", /no unit/],
    ["24000", "airflow", /no unit/],
    ["5/8", "length", /no unit/],
    ["", "airflow", /nothing/],
    ["cfm", "airflow", /does not begin with a number/],
    ["about 5 cfm", "airflow", /does not begin with a number/],
    ["2,75 in.wg", "pressureDifference", /decimal point is written as a dot/],
    ["24,00 cfm", "airflow", /comma/],
    ["500 cfm", "velocity", /unit of airflow, not of velocity/],
    ["15 psig", "absolutePressure", /barometric/],
    ["15 psi", "absolutePressure", /gauge or absolute/],
    ["1 bar(g)", "absolutePressure", /barometric/],
    ["30 psia", "gaugePressure", /vacuum/],
    ["100 kPa abs", "gaugePressure", /vacuum/],
    ["15 psig", "pressureDifference", /gauge pressure/],
    ["15 psia", "pressureDifference", /absolute pressure/],
    ["100 scfm", "actualAirflow", /standard air/],
    ["100 acfm", "standardAirflow", /actual air/],
    ["12 F°", "temperature", /difference/],
    ["-500 °F", "temperature", /absolute zero/],
    ["-1 psia", "absolutePressure", /vacuum/],
    ["5 MBtu/h", "power", /thousand by some/],
    ["5 mW", "power", /small m/],
    ["16 ga", "smallLength", /sheet number/],
    ["65 dBA", "soundLevel", /A-weighted/],
    ["65 dB", "weightedSoundLevel", /dBA/],
    ["5 kg", "force", /mass/],
    ["3 ft 13 in", "length", /12 inches or more/],
    ["1e999 cfm", "airflow", /not finite/],
    ["1/0 in", "length", /not finite/],
    ["5 furlongs", "length", /not a unit known here/],
    ["5-8 in", "length", /not a unit known here/],
    ["5 to 8 in", "length", /not a unit known here/],
    ["$12.345", "money", /parts of a cent/],
    ["twelve dollars", "money", /not an amount/],
    ["$5 EUR", "money", /not an amount/],
    ["9e20 USD", "money", /too large/],
    ["9".repeat(400), "airflow", /too long/],
  ];
  it.each(refused)("%s as %s, with the reason", (text, kind, reason) => {
    const parsed = parseQuantity(text, kind);
    expect(parsed.ok ? parsed.value : parsed.problem).toMatch(reason);
    expect(parsed.ok ? "" : parsed.allowed).toBe(allowedText(kind));
  });

  it("names what a field allows, a long list by its first units", () => {
    expect(allowedText("share")).toBe("a share in %, such as 85 %");
    expect(allowedText("money")).toBe("an amount such as $1,250.50");
    expect(allowedText("gaugePressure")).toMatch(
      /^a gauge pressure in psig, kPa\(g\).* or another unit of gauge pressure/,
    );
  });
});

describe("whatever is typed", () => {
  const kind = fc.constantFrom(...kinds);
  const noise = fc.oneof(
    fc.string({ unit: "binary", maxLength: 200 }),
    fc.string({ unit: fc.constantFrom(..."0123456789.,-+/'\"eE° ²½×^µ−inftcfmpsgawKBuhlb%$()·"), maxLength: 40 }),
  );

  it("gives a finite number or a reason", () => {
    fc.assert(
      fc.property(noise, kind, (text, of) => {
        const parsed = parseQuantity(text, of);
        if (parsed.ok) expect(Number.isFinite(parsed.value)).toBe(true);
        else expect(parsed.problem.length > 0 && parsed.allowed.length > 0).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it("comes back through every unit of its kind to twelve digits", () => {
    fc.assert(
      fc.property(kind, fc.double({ min: 1e-6, max: 1e9, noNaN: true }), fc.nat(), (of, reading, which) => {
        const { units } = kindTable[of];
        const unit = units[which % units.length];
        if (unit === undefined || of === "money") return;
        const parsed = parseQuantity(`${reading} ${unit.name}`, of);
        expect(parsed.ok).toBe(true);
        const value = parsed.ok ? parsed.value : Number.NaN;
        const again = parseQuantity(`${value / unit.factor + unit.zero} ${unit.name}`, of);
        const scale = Math.max(Math.abs(value), Math.abs(unit.zero * unit.factor));
        expect(again.ok && Math.abs(again.value - value)).toBeLessThanOrEqual(1e-12 * scale);
      }),
    );
  });

  it("is printed so that it is read again to the printed digit", () => {
    const system = fc.constantFrom("ip" as const, "si" as const);
    fc.assert(
      fc.property(kind, system, fc.double({ min: 1e-12, max: 1e6, noNaN: true }), (of, shownIn, size) => {
        const value = of === "money" ? Math.round(size) : size;
        const text = printQuantity(value, of, shownIn);
        // What is as good as endless is told in words, and nobody types it.
        const { endless } = kindTable[of] as { readonly endless?: { readonly from: number; readonly words: string } };
        if (endless !== undefined && value >= endless.from) {
          expect(text).toBe(endless.words);
          return;
        }
        const parsed = parseQuantity(text, of);
        const { unit, decimals, significant } = kindTable[of][shownIn];
        const reading = Math.abs(value / unit.factor + unit.zero);
        const printed =
          reading >= 1e15
            ? reading * 1e-6
            : decimals === undefined
              ? reading * 10 ** (1 - significant)
              : 10 ** -decimals;
        const step = printed * unit.factor;
        expect(parsed.ok ? "" : `${text}: ${parsed.problem}`).toBe("");
        expect(parsed.ok && Math.abs(parsed.value - value)).toBeLessThanOrEqual(
          0.5 * step + 1e-12 * (value + Math.abs(unit.zero * unit.factor)),
        );
      }),
      { numRuns: 1000 },
    );
  });
});
