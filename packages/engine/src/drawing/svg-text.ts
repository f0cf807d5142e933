import { textSizes } from "#chart/text-size";
import type { DisplayItem, DisplayList, Ink } from "#section/display";

/** What a stroke or a word looks like on white paper. */
interface Look {
  readonly colour: string;
  readonly width: number;
}

const looks: Readonly<Record<Ink, Look>> = {
  outline: { colour: "#1d2a33", width: 1.3 },
  fine: { colour: "#5b6870", width: 0.7 },
  hairline: { colour: "#d6d5cb", width: 0.6 },
  hidden: { colour: "#5b6870", width: 0.6 },
  water: { colour: "#2f6d86", width: 1.1 },
  moisture: { colour: "#3f7a92", width: 1.3 },
  steam: { colour: "#8a4b2a", width: 1.2 },
  heat: { colour: "#a3391f", width: 1.3 },
  air: { colour: "#6d7780", width: 0.9 },
  choice: { colour: "#0b6e6e", width: 1.6 },
  fail: { colour: "#b92f15", width: 1.2 },
  quiet: { colour: "#6a7479", width: 0.8 },
  strong: { colour: "#1d2a33", width: 1.5 },
};

const dashes = { short: "2.5 2.5", long: "7 3.5" } as const;

/**
 * A display list as the text of an SVG file, for print: one unit of a chart is a point; a drawing in millimetres is brought
 * to `width` points. Heavy inks stay heavy at every scale. A title is a line of words under a rule at the foot.
 */
export function svgText(list: DisplayList, width = list.box.width, title: readonly string[] = []): string {
  const scale = width / list.box.width;
  const foot = list.box.height * scale;
  const height = title.length === 0 ? foot : foot + 16 + titleLine * title.length;
  const x = (value: number) => rounded((value - list.box.x) * scale);
  const y = (value: number) => rounded((list.up ? list.box.y + list.box.height - value : value - list.box.y) * scale);
  const size = `width="${rounded(width)}" height="${rounded(height)}" viewBox="0 0 ${rounded(width)} ${rounded(height)}"`;
  const items = list.items.map((item) => itemText(item, x, y, scale));
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size} font-family="'IBM Plex Sans', 'Segoe UI', 'DejaVu Sans', sans-serif">
<title>${escaped(list.title)}</title>
<rect width="100%" height="100%" fill="#ffffff"/>
${[...items, ...titleText(title, foot, width)].join("\n")}
</svg>
`;
}

/** pt: height of a line of the title. */
const titleLine = 16;

/** The first line strong, what follows quiet. */
function titleText(title: readonly string[], foot: number, width: number): readonly string[] {
  if (title.length === 0) return [];
  const { outline, quiet } = looks;
  const lines = title.map((text, index) => {
    const [colour, weight] = index === 0 ? [outline.colour, ' font-weight="600"'] : [quiet.colour, ""];
    const y = rounded(foot + 8 + titleLine * (index + 0.8));
    return `<text x="12" y="${y}" font-size="${textSizes.small}" fill="${colour}"${weight}>${escaped(text)}</text>`;
  });
  const rule = `<path d="M12 ${rounded(foot + 4)}L${rounded(width - 12)} ${rounded(foot + 4)}" stroke="${outline.colour}" stroke-width="0.8"/>`;
  return [rule, ...lines];
}

function itemText(
  item: DisplayItem,
  x: (value: number) => number,
  y: (value: number) => number,
  scale: number,
): string {
  const { colour, width } = looks[item.ink];
  if (item.shape === "text") {
    const [left, base] = [x(item.x), y(item.y)];
    const turn = item.turn === undefined ? "" : ` transform="rotate(${rounded(-item.turn)} ${left} ${base})"`;
    const weight = item.ink === "strong" || item.ink === "choice" ? ' font-weight="600"' : "";
    const halo = ' paint-order="stroke" stroke="#ffffff" stroke-width="3" stroke-linejoin="round"';
    return `<text x="${left}" y="${base}" font-size="${textSizes[item.size]}" text-anchor="${item.anchor}" fill="${colour}"${weight}${halo}${turn}>${escaped(item.text)}</text>`;
  }
  const title = item.label === undefined ? "" : `<title>${escaped(item.label)}</title>`;
  const tone = item.shape === "line" ? item.tone : undefined;
  const paint =
    tone === undefined
      ? `fill="${fillOf(item.fill)}" stroke="${colour}" stroke-width="${width}"${faint(item.fill)}`
      : `fill="${fillOf(item.fill)}" fill-opacity="${rounded(tone)}"`;
  if (item.shape === "circle") {
    return `<circle cx="${x(item.x)}" cy="${y(item.y)}" r="${rounded(item.radius * scale)}" ${paint}>${title}</circle>`;
  }
  const begins = new Set([0, ...(item.breaks ?? [])]);
  const end = item.closed === true ? "Z" : "";
  const pairs = Array.from({ length: item.points.length / 2 }, (_, index) => {
    const [px, py] = [item.points[2 * index]!, item.points[2 * index + 1]!];
    return `${begins.has(index) ? `${index === 0 ? "" : end}M` : "L"}${x(px)} ${y(py)}`;
  });
  const dash = item.dash ?? (item.ink === "hidden" ? "short" : undefined);
  const broken = dash === undefined ? "" : ` stroke-dasharray="${dashes[dash]}"`;
  return `<path d="${pairs.join("")}${end}" ${paint}${broken}>${title}</path>`;
}

function fillOf(fill: Ink | "paper" | undefined): string {
  if (fill === undefined) return "none";
  return fill === "paper" ? "#ffffff" : looks[fill].colour;
}

/** Faces are tints, but for what is drawn solid. */
function faint(fill: Ink | "paper" | undefined): string {
  const isSolid = fill === undefined || fill === "paper" || fill === "outline" || fill === "strong";
  return isSolid ? "" : ' fill-opacity="0.13"';
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
