import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { closingLine, countTests } from "../../tools/test.mjs";
import { root } from "./project.ts";

function runTool(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: "utf8" });
  return { status, lines: `${stdout}${stderr}`.trimEnd().split("\n") };
}

describe("the count of tests", () => {
  const good = { status: "passed", assertionResults: [{}] };
  const report = { numPassedTests: 3, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0, testResults: [good] };

  it("passes on what vitest counted", () => {
    expect(countTests(report, 0)).toEqual({ passed: 3, failed: 0, skipped: 0 });
    expect(countTests({ ...report, numFailedTests: 2, numPendingTests: 1, numTodoTests: 1 }, 1)).toEqual({
      passed: 3,
      failed: 2,
      skipped: 2,
    });
  });

  it("counts a file that could not be run as a failure", () => {
    const broken = { status: "failed", assertionResults: [] };
    expect(countTests({ ...report, testResults: [good, broken] }, 1).failed).toBe(1);
  });

  it("fails a run that ended badly though its tests passed, and a run without tests", () => {
    expect(countTests(report, 1).failed).toBe(1);
    expect(countTests({ ...report, numPassedTests: 0, testResults: [] }, 0).failed).toBe(1);
  });

  it("is told in the closing line, skipped tests only where there are some", () => {
    expect(closingLine({ passed: 12, failed: 0, skipped: 0 })).toBe("12 passed, 0 failed");
    expect(closingLine({ passed: 12, failed: 1, skipped: 2 })).toBe("12 passed, 1 failed, 2 skipped");
  });
});

describe("the tools say what is wrong in one line", () => {
  it.each([
    [["start.mjs", "--port"], "--port takes a number from 0 to 65535, not nothing."],
    [["start.mjs", "--port=70000"], '--port takes a number from 0 to 65535, not "70000".'],
    [["start.mjs", "--faster"], 'npm start takes --no-open and --port N, not "--faster".'],
    [["bench.mjs", "--yaml"], 'npm run bench takes --json and words of suite names, not "--yaml".'],
    [["generate.mjs", "--all"], "npm run generate takes --check or nothing."],
  ])("%s", ([tool = "", ...args], line) => {
    expect(runTool(join("tools", tool), ...args)).toEqual({ status: 1, lines: [line] });
  });
});
