import type { DisplayList } from "@oncethrough/engine/section/display";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { PaintedList, type Placing, placedAt } from "./painted-list.tsx";

const drawing: DisplayList = {
  title: "a drawing",
  unit: "mm",
  up: true,
  box: { x: -100, y: -50, width: 1000, height: 500 },
  items: [
    {
      shape: "line",
      key: "wall",
      ink: "outline",
      reference: { section: "coil" },
      points: [0, 0, 800, 0, 800, 400],
      closed: true,
      fill: "paper",
      dash: "short",
      label: "wall",
    },
    { shape: "circle", key: "hub", ink: "fine", reference: {}, x: 400, y: 200, radius: 50 },
    {
      shape: "text",
      key: "name",
      ink: "strong",
      reference: {},
      x: 0,
      y: 450,
      text: "coil <1>",
      anchor: "middle",
      size: "small",
      turn: 30,
    },
  ],
};

function paint(list: DisplayList, placing: Placing): string {
  return renderToStaticMarkup(
    // biome-ignore lint/a11y/noSvgWithoutTitle: the markup is compared, nobody looks at it
    <svg>
      <PaintedList list={list} placing={placing} />
    </svg>,
  );
}

it("paints lines, circles and texts at their place, y up, with ink roles as classes", () => {
  const markup = paint(drawing, placedAt(drawing, 0.5, 10, 20));
  // The upper left corner of the box (−100, 450) lies at (10, 20): x = 60 + 0.5 x, y = 245 − 0.5 y.
  expect(markup).toBe(
    '<svg><g class="painted">' +
      '<path class="ink-outline fill-paper dash-short" d="M60 245L460 245L460 45Z" data-section="coil"><title>wall</title></path>' +
      '<circle class="ink-fine" cx="260" cy="145" r="25"></circle>' +
      '<text class="text-strong" x="60" y="20" font-size="11" text-anchor="middle" transform="rotate(-30 60 20)">coil &lt;1&gt;</text>' +
      "</g></svg>",
  );
});

it("paints charts with y down", () => {
  const chart: DisplayList = { ...drawing, up: false, box: { x: 0, y: 0, width: 100, height: 100 } };
  expect(placedAt(chart, 1, 10, 20)).toEqual({ scale: 1, x: 10, y: 20 });
  expect(paint(chart, placedAt(chart, 1, 10, 20))).toContain('d="M10 20L810 20L810 420Z"');
});
