import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { run } from "../run.ts";
import { keptStreams } from "../test-streams.test-data.ts";
import type { DesignOutput } from "./design-output.ts";
import { designSchema } from "./design-schema.ts";

const duty = readFileSync(new URL("../../../../../examples/duties/harbour-aquarium.yaml", import.meta.url), "utf8");

async function design(words: readonly string[], text = duty) {
  const streams = keptStreams(text, { columns: 120 });
  const code = await run(["design", "-", ...words], streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("oncethrough design", () => {
  it("prints a whole job behind the duty's own bytes, and says beside it why each choice was made", async () => {
    const { written, complained } = await design([]);
    expect(written.startsWith(duty.trimEnd())).toBe(true);
    expect(written).toContain("- kind: chilled-water coil");
    expect(complained).toMatch(/cooling face velocity \d+ fpm against \d+ fpm/);
    expect(complained).toContain("duty.utilities.steam.condensateReturnPressure");
  });

  it("prints JSON as its schema says; a unit keeps every rule that decides", async () => {
    const { code, written } = await design(["--json"]);
    const output = JSON.parse(written) as DesignOutput;
    const validate = new Ajv2020().compile(designSchema());
    expect(validate(output), JSON.stringify(validate.errors)).toBe(true);
    expect(output.outcome).toBe("unit");
    expect(code).toBe(0);
  });

  it("answers a duty that contradicts itself with duties that work", async () => {
    const { code, written } = await design([], duty.replace("supply: 44 °F", "supply: 56 °F"));
    expect(code).toBe(1);
    expect(written).toContain("No unit holds this duty");
    expect(written).toContain("duty.utilities.chilledWater.supply");
  });

  it("knows its profiles, and says where a text is wrong", async () => {
    expect((await design(["--profile", "comon practice"])).complained).toContain('did you mean "common practice"');
    const { code, complained } = await design([], "format: oncethrough job 1\nduty: 7\n");
    expect(code).toBe(1);
    expect(complained).toContain("not sized; mend the text first");
  });
});
