/** Draws docs/validation/coils.svg: predicted against measured capacity of the coils with full geometry. */
import { coilCases, figureOf, measuredCoils, rival } from "./coil-cases.mjs";

/** @typedef {import("./coil-cases.mjs").CoilCase} CoilCase */

const ink = "#1d2a33";
const faint = "#6b757c";
const rule = "#b9bdbb";
const side = 380;
const panelTop = 64;

/**
 * @param {(text: string) => readonly import("./coil-cases.mjs").Row[]} runCases
 * @returns {string}
 */
export function coilScatter(runCases) {
  const coils = measuredCoils(coilCases(runCases, "cooling"));
  const panels = [
    { left: 64, title: "Total capacity", quantity: "total capacity", most: 45 },
    { left: 556, title: "Sensible capacity", quantity: "sensible capacity", most: 36 },
  ];
  const lines = [
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 980 560" width="980" height="560" font-family="IBM Plex Sans, DejaVu Sans, Arial, sans-serif" role="img" aria-labelledby="title">',
    '<title id="title">Predicted against measured capacity of two cooling coils at sixteen points; dashed lines at ten per cent</title>',
    '<rect width="980" height="560" fill="#fbfaf5"/>',
    ...panels.flatMap((panel) => drawPanel(panel, coils)),
    ...drawKey(),
    "</svg>",
  ];
  return `${lines.join("\n")}\n`;
}

/**
 * @param {{ left: number, title: string, quantity: string, most: number }} panel
 * @param {readonly CoilCase[]} coils
 */
function drawPanel({ left, title, quantity, most }, coils) {
  const bottom = panelTop + side;
  const x = (/** @type {number} */ value) => left + (side * value) / most;
  const y = (/** @type {number} */ value) => bottom - (side * value) / most;
  const ray = (/** @type {number} */ slope, /** @type {string} */ dash) => {
    const end = slope > 1 ? most / slope : most;
    return line(x(0), y(0), x(end), y(end * slope), slope === 1 ? ink : faint, dash);
  };
  const steps = Array.from({ length: Math.floor(most / 5) + 1 }, (_, k) => 5 * k);
  return [
    text(left, panelTop - 22, title, 15, ink, "start", 600),
    ...steps.flatMap((step) => [
      line(x(step), y(0), x(step), y(most), rule, "", 0.5),
      line(x(0), y(step), x(most), y(step), rule, "", 0.5),
      text(x(step), bottom + 18, String(step), 12, faint, "middle"),
      text(left - 8, y(step) + 4, String(step), 12, faint, "end"),
    ]),
    ray(1, ""),
    ray(1.1, "5 4"),
    ray(0.9, "5 4"),
    text(x(most) - 2, y(0.9 * most) + 56, "−10 %", 12, faint, "end"),
    text(x(most / 1.1) - 26, y(most) + 16, "+10 %", 12, faint, "end"),
    line(left, bottom, left + side, bottom, ink, ""),
    line(left, panelTop, left, bottom, ink, ""),
    text(left + side / 2, bottom + 38, "measured, kW (bars: ±4 %)", 12, ink, "middle"),
    `<text x="${left - 40}" y="${panelTop + side / 2}" font-size="12" fill="${ink}" text-anchor="middle" transform="rotate(-90 ${left - 40} ${panelTop + side / 2})">predicted, kW</text>`,
    ...coils.flatMap((coil) => {
      const own = figureOf(coil, quantity);
      const other = figureOf(coil, quantity + rival);
      const spread = own.uncertainty ?? 0;
      return [
        line(x(own.expected - spread), y(own.got), x(own.expected + spread), y(own.got), faint, ""),
        cross(x(own.expected), y(other.got)),
        dot(x(own.expected), y(own.got), coil),
      ];
    }),
  ];
}

/**
 * Rounds for eight rows, squares for four; filled where the coil was wet.
 *
 * @param {number} x
 * @param {number} y
 * @param {{ rows: number | null, surface: string }} coil
 */
function dot(x, y, { rows, surface }) {
  const fill = surface === "Dry" ? "#fbfaf5" : ink;
  const look = `fill="${fill}" stroke="${ink}" stroke-width="1.4"`;
  if (rows === 8) return `<circle cx="${round(x)}" cy="${round(y)}" r="4.5" ${look}/>`;
  return `<rect x="${round(x - 4)}" y="${round(y - 4)}" width="8" height="8" ${look}/>`;
}

/**
 * @param {number} x
 * @param {number} y
 */
function cross(x, y) {
  const [left, right, top, bottom] = [x - 3.5, x + 3.5, y - 3.5, y + 3.5].map(round);
  return `<path d="M${left} ${top} L${right} ${bottom} M${left} ${bottom} L${right} ${top}" stroke="#b4472e" stroke-width="1.2" fill="none"/>`;
}

function drawKey() {
  const y = 528;
  return [
    dot(70, y - 4, { rows: 8, surface: "Dry" }),
    dot(84, y - 4, { rows: 8, surface: "Wet" }),
    text(96, y, "8 rows, dry and wet", 12, ink, "start"),
    dot(240, y - 4, { rows: 4, surface: "Dry" }),
    dot(254, y - 4, { rows: 4, surface: "Wet" }),
    text(266, y, "4 rows, dry and wet: default model", 12, ink, "start"),
    cross(500, y - 4),
    text(512, y, "surface of Elmahdy and Mitalas, fitted to these coils", 12, ink, "start"),
  ];
}

/**
 * @param {number} x1
 * @param {number} y1
 * @param {number} x2
 * @param {number} y2
 * @param {string} stroke
 * @param {string} dash
 * @param {number} [width]
 */
function line(x1, y1, x2, y2, stroke, dash, width = 1) {
  const broken = dash === "" ? "" : ` stroke-dasharray="${dash}"`;
  return `<line x1="${round(x1)}" y1="${round(y1)}" x2="${round(x2)}" y2="${round(y2)}" stroke="${stroke}" stroke-width="${width}"${broken}/>`;
}

/**
 * @param {number} x
 * @param {number} y
 * @param {string} words
 * @param {number} size
 * @param {string} fill
 * @param {string} anchor
 * @param {number} [weight]
 */
function text(x, y, words, size, fill, anchor, weight = 400) {
  return `<text x="${round(x)}" y="${round(y)}" font-size="${size}" fill="${fill}" text-anchor="${anchor}" font-weight="${weight}">${words}</text>`;
}

/** @param {number} value */
function round(value) {
  return Number(value.toFixed(1));
}
