import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import { describe, expect, it, onTestFinished, vi } from "vitest";
import { projectRoot } from "../../tools/run.mjs";

/** Bytes of script and style, compressed, that the page asks for before it shows anything; fonts and later parts apart. */
const mostBytes = 300_000;

describe("the first load of the page", () => {
  it("is no more than 300 kB of script and style, compressed", { timeout: 300_000 }, async () => {
    const outDir = await mkdtemp(join(tmpdir(), "oncethrough-first-load-"));
    onTestFinished(() => rm(outDir, { recursive: true, force: true }));
    // Libraries come in the form that is shipped, not in the one that tests run.
    vi.stubEnv("NODE_ENV", "production");
    onTestFinished(() => void vi.unstubAllEnvs());
    const root = join(projectRoot, "packages", "web");
    const configFile = join(root, "vite.config.ts");
    await build({ root, configFile, mode: "production", logLevel: "error", build: { outDir, emptyOutDir: true } });
    const page = await readFile(join(outDir, "index.html"), "utf8");
    const files = [
      ...new Set([...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(([, file]) => file!)),
    ];
    const sizes = await Promise.all(
      files.map(async (file) => [file, gzipSync(await readFile(join(outDir, file))).length] as const),
    );
    const sum = sizes.reduce((all, [, size]) => all + size, 0);
    console.log(
      `first load: ${(sum / 1000).toFixed(1)} kB of at most ${mostBytes / 1000}: ${sizes.map(([file, size]) => `${file} ${size}`).join(", ")}`,
    );
    expect(files.some((file) => file.endsWith(".js"))).toBe(true);
    expect(files.some((file) => file.endsWith(".css"))).toBe(true);
    expect(sum).toBeLessThanOrEqual(mostBytes);
  });
});
