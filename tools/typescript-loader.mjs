/**
 * Lets Node run the project's TypeScript sources as they stand: `node --import ./tools/typescript-loader.mjs file.ts`,
 * or `import "./typescript-loader.mjs"` before a dynamic import of a source. Packages resolve to their sources.
 */
import { readFile } from "node:fs/promises";
import { register } from "node:module";
import { fileURLToPath } from "node:url";
import { isMainThread } from "node:worker_threads";

if (isMainThread) register(import.meta.url);

/** @type {import("node:module").ResolveHook} */
export function resolve(specifier, context, nextResolve) {
  return nextResolve(specifier, { ...context, conditions: [...context.conditions, "source"] });
}

/** @type {import("node:module").LoadHook} */
export async function load(url, context, nextLoad) {
  if (!/^file:.*\.ts$/.test(url)) return nextLoad(url, context);
  const { default: typescript } = await import("typescript");
  const fileName = fileURLToPath(url);
  const { outputText } = typescript.transpileModule(await readFile(fileName, "utf8"), {
    fileName,
    compilerOptions: {
      target: typescript.ScriptTarget.ES2023,
      module: typescript.ModuleKind.ESNext,
      verbatimModuleSyntax: true,
      inlineSourceMap: true,
    },
  });
  return { format: "module", source: outputText, shortCircuit: true };
}
