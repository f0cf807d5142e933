import { defineConfig } from "vitest/config";

/** Packages resolve to their TypeScript sources under the `source` condition, so tests need no build. */
const sourceConditions = { conditions: ["source"] };

export default defineConfig({
  ssr: { resolve: sourceConditions },
  resolve: sourceConditions,
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["packages/*/src/**/*.test.{ts,tsx}", "tests/reference/**/*.test.ts", "tests/house/**/*.test.ts"],
          testTimeout: 90_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          testTimeout: 180_000,
          hookTimeout: 120_000,
          // A page on a busy machine may take its time; what never comes still ends the test.
          expect: { poll: { timeout: 60_000 } },
        },
      },
    ],
  },
});
