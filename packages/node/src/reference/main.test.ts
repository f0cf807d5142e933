import { mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { runReference } from "./main.ts";

let folder: string;

async function run(...words: string[]) {
  let output = "";
  let errors = "";
  const code = await runReference(words, {
    folder,
    ownCases: [join(folder, "own.json"), join(folder, "other.json")],
    output: (text) => {
      output += text;
    },
    errors: (text) => {
      errors += text;
    },
  });
  return { code, output, errors };
}

const file = (name: string, content: unknown) =>
  writeFile(join(folder, name), typeof content === "string" ? content : JSON.stringify(content));

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "reference-"));
  await file("own.json", { rows: [{ T_C: 20, W_s: 0.014761 }] });
  await file("other.json", { fans: [] });
  await file("broken.json", "{ ]");
  await file("list.json", "[1, 2]");
  await file("empty.json", "  ");
  await file("binary.json", "\u0000\u0001");
});

describe("npm run reference", () => {
  it("prints a line per case and figure, and statistics", async () => {
    await file("grid.json", {
      points: [
        { T_C: 20, p_kPa: 101.325, RH: 0.5, W: 0.0073, tdp_C: null, note: "extra" },
        { T_C: 30, p_kPa: 101.325, RH: 0.5, W: 0.0133747, tdp_C: 18.4512, uncertainty: { W: 1e-5 } },
      ],
    });
    const { code, output, errors } = await run("grid.json");
    expect(code).toBe(0);
    expect(errors).toBe("");
    const lines = output.trimEnd().split("\n");
    expect(lines[0]).toBe("grid.json");
    expect(lines[1]).toMatch(/^ {2}T_C 20, p_kPa 101.325, RH 0.5 {2}W +expected +0.0073 {2}got +0.007\d+ {2}error/);
    expect(lines[2]).toMatch(/RH 0.5 {2}W .*within ±0.00001$/);
    expect(lines[3]).toMatch(/tdp_C +expected +18.4512 .* °C$/);
    expect(lines[4]).toBe("  2 cases, 3 figures; 0 not run; 1 of 1 within the stated uncertainty");
    expect(lines[5]).toMatch(
      /^ {2}W \(kg\/kg\): 2 figures; mean error .*; rms .*; worst .* at T_C 20, .*1 of 1 within/,
    );
  });

  it("lists cases that it cannot run, with the reason", async () => {
    await file("odd.json", {
      points: [
        { T_C: "warm", p_kPa: 101.325, RH: 0.5, W: 0.01 },
        { T_C: 20, RH: 0.5, W: 0.01 },
        { T_C: 20, p_kPa: 101.325, RH: 0.5, W: "a little" },
        { T_C: 999, p_kPa: 101.325, RH: 0.5, W: 0.01 },
        { T_C: 20, p_kPa: 101.325, RH: 0.5 },
        { T_C: 20, p_kPa: 101.325, W: 0.0073, twb_C: 13.8 },
        "nothing",
      ],
    });
    const { code, output } = await run("odd.json");
    expect(code).toBe(0);
    expect(output).toContain('not run: T_C is not a number ("warm")');
    expect(output).toContain("not run: p_kPa is not given");
    expect(output).toContain('W: not run: the figure given is not a number ("a little")');
    expect(output).toContain("not run: saturation pressure: temperature 999 °C is outside −100…200 °C");
    expect(output).toContain("not run: it holds no figure that the program gives");
    expect(output).toMatch(/T_C 20, p_kPa 101.325, W 0.0073 +twb_C +expected +13.8/);
    expect(output).toMatch(/point 7 +not run: it is not an object/);
    expect(output).toContain("7 cases, 1 figure; 6 not run");
  });

  it("gives JSON with the same keys for every row", async () => {
    await file("words.json", { worked_examples: [{ id: "A", inputs: "30 °C air", outputs: "much" }] });
    const { code, output } = await run("own.json", "words.json", "--json");
    expect(code).toBe(0);
    const rows = JSON.parse(output) as Record<string, unknown>[];
    const keys = ["file", "case", "quantity", "unit", "expected", "got", "error", "uncertainty", "within"];
    for (const row of rows) expect(Object.keys(row).filter((key) => key !== "reason")).toEqual(keys);
    expect(rows.map((row) => row.file)).toEqual(["own.json", "words.json"]);
    expect(rows[0]).toMatchObject({ case: "T_C 20", quantity: "W_s", unit: "kg/kg", expected: 0.014761, within: null });
    expect(rows[1]).toMatchObject({ case: "A", quantity: "not run", expected: null, got: null });
    expect(rows[1]?.reason).toMatch(/told in words/);
  });

  it("runs its own cases when no file is named and passes over other kinds", async () => {
    const { code, output, errors } = await run();
    expect([code, errors]).toEqual([0, ""]);
    expect(output).toContain("own.json");
    expect(output).not.toContain("other.json");
  });

  it("says in one line what is the matter with a file, runs the others and ends with 2", async () => {
    for (const [name, words] of [
      ["broken.json", /^reference: broken.json: it is not JSON: .*\n$/],
      ["list.json", /^reference: list.json: it holds no JSON object at its top\n$/],
      ["other.json", /^reference: other.json: it is of no known format \(.*\)\n$/],
      ["empty.json", /it is empty\n$/],
      ["binary.json", /not a text file.*\n$/],
      ["absent.json", /there is no such file\n$/],
    ] as const) {
      const { code, output, errors } = await run(name, "own.json");
      expect(code).toBe(2);
      expect(errors).toMatch(words);
      expect(errors.trimEnd()).not.toContain("\n");
      expect(output).toContain("own.json");
    }
    const { code, errors } = await run("--tables");
    expect([code, errors]).toEqual([2, "reference: there is no option --tables; it takes files and --json\n"]);
  });

  it("reads water, steam and glycol with what is given", async () => {
    await file("steam.json", {
      steam: [
        { p_bar_g: 0, T_C: 99.9743 },
        { T_C: 100, hfg_kJ_kg: 2256.4 },
        { p_kPa_abs: 0.1, hfg_kJ_kg: 2500 },
      ],
      liquid_water: [
        { T_C: 25, p_kPa: 3000, rho_kg_m3: 998.4 },
        { T_C: 150, p_kPa: 300, rho_kg_m3: 917 },
      ],
    });
    const steam = await run("steam.json");
    expect(steam.output).toMatch(/steam p_bar_g 0 +T_C +expected +99.9743/);
    expect(steam.output).toMatch(/steam T_C 100 +hfg_kJ_kg/);
    expect(steam.output).toContain("absolute pressure 100 Pa is outside");
    expect(steam.output).toMatch(/water T_C 25, p_kPa 3000 +rho_kg_m3 +expected +998.4 +got +998.3/);
    expect(steam.output).toContain("at 150 °C and 300000 Pa it would be steam");
    await file("glycol.json", {
      points: [
        { fluid: "PG", x_mass_pct: 30, T_C: 20, rho: 1023.8 },
        { fluid: "beer", x_mass_pct: 5, T_C: 20, rho: 1010 },
      ],
      freeze_points: [
        { fluid: "EG", x_mass_pct: 30, Tfreeze_C: -14.58 },
        { fluid: "EG", x_mass_pct: 80, Tfreeze_C: -40 },
      ],
    });
    const glycol = await run("glycol.json");
    expect(glycol.output).toMatch(/fluid PG, x_mass_pct 30, T_C 20 +rho +expected +1023.8/);
    expect(glycol.output).toContain('fluid "beer" is neither EG nor PG');
    expect(glycol.output).toMatch(/freeze point fluid EG, x_mass_pct 30 +Tfreeze_C +expected +-14.58/);
    expect(glycol.output).toContain("mass fraction 0.8 is outside 0…0.6");
  });

  it("runs coils with what is given, other values and other words", async () => {
    const geometry = {
      rows: 6,
      finned_height_m: 0.6096,
      Pt_m: 0.0381,
      Pl_m: 0.033,
      circuits: 16,
      finned_length_m: 0.6,
      tube_od_m: 0.015875,
      tube_wall_m: 0.0005,
      fins_per_inch: 10,
      fin_thickness_m: 0.00016,
    };
    const inputs = {
      T_air_in_C: 30,
      RH: 0.6,
      face_velocity_fpm: 450,
      T_fluid_in_C: 4,
      V_fluid_m3h: 6,
      fluid: "PG 30 %",
    };
    await file("cooling.json", {
      cases: [
        { id: "A", geometry, inputs, outputs: { Q_kW: 18, T_wb_out_C: 17 }, uncertainty: { Q_kW: 0.5 } },
        { id: "B", geometry: { ...geometry, circuits: 7 }, inputs, outputs: { Q_kW: 18 } },
        { id: "C", geometry: { ...geometry, circuits: undefined }, inputs, outputs: { Q_kW: 18 } },
        { id: "D", inputs, outputs: { Q_kW: 18 } },
        { id: "E", type: "worked example", inputs: "30 °C air", outputs: { Q_kW: 18 } },
        { id: "F", geometry, inputs: { ...inputs, fluid: "brine" }, outputs: { Q_kW: 18 } },
        { id: "G", geometry, inputs: { ...inputs, RH: "half" }, outputs: { Q_kW: 18 } },
        { id: "H", geometry, inputs: { ...inputs, T_air_in_C: 900 }, outputs: { Q_kW: 18 } },
        { id: "I", geometry, inputs, outputs: { colour: "blue" } },
        { id: "J", geometry, inputs, outputs: { some_routine: { Q: 19 } } },
      ],
    });
    const { code, output, errors } = await run("cooling.json");
    expect([code, errors]).toEqual([0, ""]);
    expect(output).toMatch(
      /A +total capacity .* ±0.5; Wang-Chi-Chang 2000 outside its range by 20 % \(transverse pitch\)\n/,
    );
    expect(output).toMatch(/A +leaving wet bulb +expected +17 /);
    expect(output).toMatch(/A +total capacity \(Elmahdy-Mitalas surface\) +expected +18/);
    expect(output).toMatch(/B +not run: 7 circuits do not divide 6 rows of 16 tubes/);
    expect(output).toMatch(/C +not run: circuits is not given/);
    expect(output).toMatch(/D +not run: neither a geometry nor resistances are given/);
    expect(output).toMatch(/E +not run: its inputs are told in words \(30 °C air\); worked example/);
    expect(output).toMatch(/F +not run: fluid "brine" is not water, EG or PG with a share/);
    expect(output).toMatch(/G +not run: the moisture of the air is not given/);
    expect(output).toMatch(/H +not run: .*900/);
    expect(output).toMatch(/I +not run: it holds no figure that the program gives/);
    expect(output).toMatch(/J +total capacity against some_routine +expected +19/);
    await file("words.json", { meta: { description: "Heating coils" }, cases: [{ id: "A", inputs: "hot water" }] });
    expect((await run("words.json")).output).toMatch(/A +not run: its inputs are told in words \(hot water\)/);
    const json = JSON.parse((await run("cooling.json", "--json")).output) as Record<string, unknown>[];
    expect(json.some((row) => "note" in row)).toBe(false);
  });

  it("runs heating coils by fitted coefficients, steam, stall and steam vectors", async () => {
    await file("heating.json", {
      cases: [
        {
          id: "counter",
          inputs: {
            m_air_kg_s: 1,
            T_air_in_C: 0,
            m_water_kg_s: 1,
            T_water_in_C: 50,
            UA_air: "2 m_a^0.5",
            UA_water: "2 m_w^0.8 kW/K",
            eps: "counterflow",
            cp_air: 1,
            cp_water: 4190,
          },
          outputs: { NTU: 1, Q_kW: 30 },
        },
        { id: "odd", inputs: { m_air_kg_s: 1, T_air_in_C: 0, UA_air: "much" }, outputs: { Q_kW: 3 } },
        {
          id: "steam",
          inputs: { steam: "at 2 bar", p_barg: 1, m_air_kg_s: 2, T_air_in_C: 0, T_air_out_C: 20 },
          outputs: { steam_kg_s: 0.018 },
        },
        {
          id: "stall",
          inputs: { T1: 0, T2: 40, T_steam: 120, T_back: 100 },
          outputs: { TDC: 1.5, for_setpoint_30: { Ts_at_30_C: 90, load_pct: 75 } },
        },
      ],
      steam_coil_vectors: {
        points: [
          { rows: 1, fpi: 8, T_in: -20, p_barg: 0.345, m_air: 2.5909, UA: 610.01, T_air_out: 6.7922, Q_kW: 69.833 },
          { rows: 1, fpi: 8, T_in: -20, p_barg: 0.345, Q_kW: 69.833 },
        ],
      },
    });
    const { code, output } = await run("heating.json");
    expect(code).toBe(0);
    expect(output).toMatch(/counter +transfer units +expected +1 +got +1 /);
    expect(output).toMatch(/odd +not run: T_water_in_C is not given/);
    expect(output).toMatch(/steam +condensate +expected +0.018 +got +0.0182/);
    expect(output).toMatch(/stall +temperature design constant +expected +1.5 +got +1.5 /);
    expect(output).toMatch(/stall +steam temperature for 30 °C +expected +90 +got +90 /);
    expect(output).toMatch(/p_barg 0.345 +leaving dry bulb of steam-coil vector +expected +6.7922 +got +6.79/);
    expect(output).toMatch(/not run: m_air is not given/);
  });
});
