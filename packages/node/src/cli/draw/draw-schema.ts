import { listOf, number, published, record, text } from "../schema/describe.ts";

const item = record(
  {
    shape: { enum: ["line", "circle", "text"] },
    key: text("stable over edits"),
    ink: text("role of the line or word, as outline, fine, water, fail"),
    reference: record(
      { section: text(), part: text("key or name of the part"), figure: text() },
      "section",
      "part",
      "figure",
    ),
    label: text("spoken"),
    points: listOf(number("mm"), "of a line: x1, y1, x2, y2, …"),
    closed: { type: "boolean" },
    fill: text("ink of the face, or paper"),
    dash: { enum: ["short", "long"] },
    x: number("of a circle's middle or a word's foot"),
    y: number("mm"),
    radius: number("mm"),
    text: text(),
    anchor: { enum: ["start", "middle", "end"] },
    size: { enum: ["small", "normal", "large"] },
    turn: number("degrees anticlockwise"),
  },
  "label",
  "points",
  "closed",
  "fill",
  "dash",
  "x",
  "y",
  "radius",
  "text",
  "anchor",
  "size",
  "turn",
);

const point = (words: string) => record({ x: number(words), y: number(words), z: number(words) });

const solid = record(
  {
    shape: { enum: ["box", "cylinder", "prism"] },
    key: text(),
    part: text("key in the tree of parts"),
    section: text("left out for what belongs to the whole unit"),
    name: text(),
    kind: text(),
    material: text(),
    wet: { type: "boolean" },
    layer: { enum: ["casing", "insides", "service space"] },
    place: point("mm, corner of a box nearest the origin"),
    size: point("mm, sides of a box"),
    axis: { enum: ["x", "y", "z"] },
    centre: point("mm, middle of a cylinder"),
    radius: number("mm"),
    length: number("mm"),
    outline: listOf(number("mm"), "mm, of a prism: pairs of its two other axes"),
    from: number("mm along the prism's axis"),
    to: number("mm along the prism's axis"),
  },
  "section",
  "material",
  "place",
  "size",
  "axis",
  "centre",
  "radius",
  "length",
  "outline",
  "from",
  "to",
);

/** The published schema of `oncethrough draw --json`. */
export function drawSchema(): object {
  return published("draw", "A view of a unit as a display list, as printed by `oncethrough draw --json`", {
    ...record(
      {
        format: { const: "oncethrough drawing 1" },
        tag: text("of the unit"),
        view: text(),
        list: record({
          title: text(),
          unit: { const: "mm" },
          up: { type: "boolean", description: "y grows upwards" },
          box: record({ x: number("mm"), y: number("mm"), width: number("mm"), height: number("mm") }),
          items: listOf(item),
        }),
        solids: listOf(solid, "with --solids: the tree of parts as boxes, cylinders and prisms, mm"),
      },
      "solids",
    ),
  });
}
