import { expect, it } from "vitest";
import { svgText } from "./svg-text.ts";

const reference = {};

it("writes a list as SVG: y up is turned over, words are escaped, lines closed and filled", () => {
  const text = svgText(
    {
      title: "a & b",
      unit: "mm",
      up: true,
      box: { x: 0, y: 0, width: 1000, height: 500 },
      items: [
        {
          shape: "line",
          key: "l",
          ink: "strong",
          reference,
          points: [0, 0, 1000, 0, 1000, 500],
          closed: true,
          fill: "heat",
        },
        {
          shape: "circle",
          key: "c",
          ink: "choice",
          reference,
          x: 500,
          y: 500,
          radius: 50,
          fill: "paper",
          label: "<here>",
        },
        {
          shape: "text",
          key: "t",
          ink: "quiet",
          reference,
          x: 250,
          y: 250,
          text: "5 < 6",
          anchor: "end",
          size: "small",
          turn: 90,
        },
      ],
    },
    100,
  );
  expect(text).toContain('viewBox="0 0 100 50"');
  expect(text).toContain("<title>a &amp; b</title>");
  // 1000 mm on 100 pt: a tenth; the list's floor is the picture's lower edge.
  expect(text).toContain('d="M0 50L100 50L100 0Z" fill="#a3391f"');
  expect(text).toContain('cx="50" cy="0" r="5" fill="#ffffff"');
  expect(text).toContain("<title>&lt;here&gt;</title>");
  expect(text).toMatch(/x="25" y="25" .*text-anchor="end".*rotate\(-90 25 25\).*>5 &lt; 6<\/text>/);
});

it("writes a title under a rule at the foot, and makes room for it", () => {
  const list = {
    title: "view",
    unit: "mm",
    up: true,
    box: { x: 0, y: 0, width: 1000, height: 500 },
    items: [],
  } as const;
  const height = (text: string) => Number(/height="([\d.]+)"/.exec(text)?.[1]);
  const text = svgText(list, 400, ["AHU <1>", "do not scale"]);
  expect(text).toContain("AHU &lt;1&gt;");
  expect(text).toContain("do not scale");
  const bare = svgText(list, 400);
  expect(height(bare)).toBe(200);
  expect(height(text)).toBeGreaterThan(height(bare));
});
