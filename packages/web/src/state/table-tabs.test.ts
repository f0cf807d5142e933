import { describe, expect, it } from "vitest";
import { tableTabs } from "./table-tabs.ts";

describe("a table for a spreadsheet", () => {
  it("gives numbers without separators and true minus signs, their units in a column beside them", () => {
    const text = tableTabs([
      ["figure", "value", "apart"],
      ["total capacity", "1,626.2 MBH", "+3.1 %"],
      ["leaving dry bulb", "−4.0 °F", "−0.4 K"],
      ["price", "$125,493", ""],
    ]);
    expect(text).toBe(
      [
        "figure\tvalue\tunit\tapart\tunit",
        "total capacity\t1626.2\tMBH\t3.1\t%",
        "leaving dry bulb\t-4.0\t°F\t-0.4\tK",
        "price\t125493\t$\t\t",
        "",
      ].join("\n"),
    );
  });

  it("leaves words that begin with a number as they are, and never breaks a line", () => {
    const text = tableTabs([
      ["what"],
      ["8 rows, 12 per in, 92 circuits, typical plain 5/8 in"],
      ["two\nlines\tof words"],
    ]);
    expect(text).toBe("what\n8 rows, 12 per in, 92 circuits, typical plain 5/8 in\ntwo lines of words\n");
  });

  it("gives bare numbers one column", () => {
    expect(
      tableTabs([
        ["rows", "each"],
        ["8", "1,200"],
      ]),
    ).toBe("rows\teach\n8\t1200\n");
  });
});
