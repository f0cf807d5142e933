import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "#files/temporary-folder.test-data";
import { commands } from "./command-table.ts";
import { exitCodeMeanings } from "./exit-code.ts";
import { explain, run } from "./run.ts";
import { keptStreams } from "./test-streams.test-data.ts";

async function typed(words: readonly string[], input = "") {
  const streams = keptStreams(input);
  const code = await run(words, streams);
  return { code, written: streams.written(), complained: streams.complained() };
}

describe("help", () => {
  it("lists every command with its meaning, and the exit codes", async () => {
    const { code, written, complained } = await typed(["--help"]);
    expect(code).toBe(0);
    expect(complained).toBe("");
    for (const { name, meaning } of commands) expect(written).toMatch(new RegExp(`^ +${name} .*${meaning}`, "m"));
    for (const { code: number } of exitCodeMeanings) expect(written).toMatch(new RegExp(`^ +${number} `, "m"));
    expect((await typed(["help"])).written).toBe(written);
    expect((await typed([])).complained).toBe(written);
    expect((await typed([])).code).toBe(2);
  });

  it("shows each command with its options and examples, within 100 columns", async () => {
    for (const { name, options, operands, examples } of commands) {
      const { code, written } = await typed([name, "--help"]);
      expect(code).toBe(0);
      const plain = written.replace(/\s+/g, " ");
      for (const { flags, meaning } of options) expect(plain).toContain(`${flags} ${meaning}`);
      for (const { name: operand, meaning } of operands) expect(plain).toContain(`${operand} ${meaning}`);
      for (const { line } of examples) expect(plain).toContain(line);
      for (const line of written.split("\n")) expect(line.length, line).toBeLessThanOrEqual(100);
      expect((await typed(["help", name])).written).toBe(written);
    }
  });

  it("prints its version", async () => {
    expect((await typed(["--version"])).written).toMatch(/^oncethrough \d+\.\d+\.\d+\n$/);
  });
});

describe("wrong use", () => {
  it("is answered in one line with exit code 2 and nothing on standard output", async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, "binary.yaml"), Buffer.from([1, 0, 2]));
    await writeFile(join(folder, "empty.yaml"), "");
    await writeFile(join(folder, "huge.yaml"), "a".repeat(4 * 1024 * 1024 + 1));
    await mkdir(join(folder, "catalogue"));
    const at = (name: string) => join(folder, name);
    const cases: [string[], RegExp][] = [
      [["rte"], /unknown command 'rte' \(did you mean rate\?\)/],
      [["rate"], /missing required argument 'job'/],
      [["rate", "a", "b"], /too many arguments/],
      [["rate", "a", "--unit", "si"], /unknown option '--unit' \(did you mean --units\?\)/],
      [["rate", "a", "--units", "metric"], /'metric' is invalid. Allowed choices are ip, si/],
      [["air", "--dry-bulb"], /argument missing/],
      [["schema", "jab"], /there is no schema "jab" \(did you mean "job"\?\); allowed: job, rate/],
      [["serve", "--port", "99999"], /--port "99999" is not a port; allowed: 0 to 65535/],
      [["serve", at("missing")], /missing: there is no such file/],
      [["serve", "--catalogue", at("catalogue")], /it holds no catalogue file/],
      ...["rate", "read", "coil"].flatMap((command): [string[], RegExp][] => [
        [[command, at("missing.yaml")], /missing\.yaml: there is no such file/],
        [[command, folder], /it is a folder, not a file/],
        [[command, at("binary.yaml")], /not a text file/],
        [[command, at("empty.yaml")], /it is empty/],
        [[command, at("huge.yaml")], /larger than the 4 MB/],
        [[command, "-"], /standard input: it is empty/],
        [[command, at("missing.yaml"), "--catalogue", at("none")], /no such/],
      ]),
    ];
    for (const [words, complaint] of cases) {
      const { code, written, complained } = await typed(words);
      const said = `${words.join(" ")} → ${complained}`;
      expect(code, said).toBe(2);
      expect(complained, said).toMatch(complaint);
      expect(complained, said).toMatch(/^oncethrough: [^\n]*\n$/);
      expect(written, said).toBe("");
    }
  });

  it("calls a fault of the program a fault, in one line, with exit code 70", () => {
    const streams = keptStreams();
    expect(explain(new TypeError("x is not\na function"), streams)).toBe(70);
    expect(streams.complained()).toBe(
      "oncethrough: a fault of the program, not of the input: TypeError: x is not a function\n",
    );
  });
});
