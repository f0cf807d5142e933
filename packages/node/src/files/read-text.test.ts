import { mkdir, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { readTextFile, readTextStream } from "./read-text.ts";
import { temporaryFolder } from "./temporary-folder.test-data.ts";

describe("reading a text file", () => {
  it("keeps every byte, byte order mark and line ends included", async () => {
    const path = join(await temporaryFolder(), "job.yaml");
    await writeFile(path, "\uFEFFduty:\r\n  tag: Δp\r\n");
    expect(await readTextFile(path)).toBe("\uFEFFduty:\r\n  tag: Δp\r\n");
  });

  it("says in one line what is the matter with a file that cannot be used", async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, "empty.yaml"), "");
    await writeFile(join(folder, "blank.yaml"), " \n\n");
    await writeFile(join(folder, "binary.yaml"), Buffer.from([0x7f, 0x45, 0x4c, 0x46, 0, 1, 2]));
    await writeFile(join(folder, "latin.yaml"), Buffer.from([0x74, 0xe9, 0x0a]));
    await writeFile(join(folder, "huge.yaml"), Buffer.alloc(4 * 1024 * 1024 + 1, "a"));
    await mkdir(join(folder, "folder.yaml"));
    const expected: Record<string, RegExp> = {
      "missing.yaml": /no such file$/,
      "empty.yaml": /it is empty$/,
      "blank.yaml": /it is empty$/,
      "binary.yaml": /not a text file \(it holds zero bytes\)$/,
      "latin.yaml": /not a text file in UTF-8$/,
      "huge.yaml": /larger than the 4 MB that are taken$/,
      "folder.yaml": /it is a folder, not a file$/,
      "huge.yaml/job.yaml": /a part of the path is a file/,
    };
    for (const [name, words] of Object.entries(expected)) {
      const path = join(folder, name);
      await expect(readTextFile(path), name).rejects.toThrow(words);
      await expect(readTextFile(path), name).rejects.toThrow(path);
    }
  });

  it("reads a file of exactly the limit", async () => {
    const path = join(await temporaryFolder(), "full.yaml");
    await writeFile(path, "a".repeat(1000));
    expect((await readTextFile(path, { most: 1000 })).length).toBe(1000);
    await expect(readTextFile(path, { most: 999 })).rejects.toThrow("999 bytes");
  });

  it.skipIf(process.platform === "win32")("stops at the limit when a device never ends", async () => {
    await expect(readTextFile("/dev/zero", { most: 100_000 })).rejects.toThrow("larger than");
  });

  it.skipIf(process.platform === "win32")("follows a link unless told not to", async () => {
    const folder = await temporaryFolder();
    await writeFile(join(folder, "real.yaml"), "a: 1\n");
    await symlink("real.yaml", join(folder, "link.yaml"));
    expect(await readTextFile(join(folder, "link.yaml"))).toBe("a: 1\n");
    await expect(readTextFile(join(folder, "link.yaml"), { refuseLink: true })).rejects.toThrow("link");
  });
});

describe("reading a stream", () => {
  it("joins pieces that cut a character in two", async () => {
    const bytes = Buffer.from("ΔT");
    const stream = Readable.from([bytes.subarray(0, 1), bytes.subarray(1)]);
    expect(await readTextStream(stream, "standard input")).toBe("ΔT");
  });

  it("refuses more than the limit, and nothing at all", async () => {
    await expect(readTextStream(Readable.from(["abc", "def"]), "standard input", 5)).rejects.toThrow(
      "standard input: it is larger than the 5 bytes",
    );
    await expect(readTextStream(Readable.from([]), "standard input")).rejects.toThrow("standard input: it is empty");
  });
});
