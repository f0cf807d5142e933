/** What a line, an area or a word looks like, as far as an SVG file needs to say it. */
const looks = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linejoin",
  "stroke-linecap",
  "opacity",
  "font-size",
  "font-weight",
  "paint-order",
  "text-anchor",
] as const;

/** Values that go without saying. */
const usual: Readonly<Record<string, string>> = {
  "fill-opacity": "1",
  "stroke-dasharray": "none",
  "stroke-linejoin": "miter",
  "stroke-linecap": "butt",
  opacity: "1",
  "font-weight": "400",
  "paint-order": "normal",
  "text-anchor": "start",
};

/** Elements that show nothing themselves. */
const lookless: ReadonlySet<string> = new Set(["svg", "g", "title"]);

/** px of paper around the picture. */
const edge = 12;

/**
 * A picture of the page as an SVG file of its own, in ink on white paper whatever the page's theme is. What belongs to the
 * hand and not to the picture (`data-hand`) is left out.
 */
export function pictureFile(svg: SVGSVGElement, title: string): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const page = document.documentElement;
  const theme = page.dataset.theme ?? "system";
  page.dataset.theme = "light";
  writeLooks(svg, copy);
  const family = getComputedStyle(svg).fontFamily;
  page.dataset.theme = theme;
  for (const hand of [...copy.querySelectorAll("[data-hand]")]) hand.remove();
  const { width, height } = svg.getBoundingClientRect();
  const box = [-edge, -edge, Math.ceil(width) + 2 * edge, Math.ceil(height) + 2 * edge] as const;
  for (const name of [...copy.attributes].map((attribute) => attribute.name)) copy.removeAttribute(name);
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  copy.setAttribute("viewBox", box.join(" "));
  copy.setAttribute("width", String(box[2]));
  copy.setAttribute("height", String(box[3]));
  copy.setAttribute("font-family", family);
  copy.prepend(titleOf(title), paperOf(box));
  return `${new XMLSerializer().serializeToString(copy)}\n`;
}

/** Writes the computed looks of every element into its copy; classes and what scripts hang on elements go. */
function writeLooks(from: Element, to: Element): void {
  const style = getComputedStyle(from);
  const isWord = from.tagName === "text" || from.tagName === "tspan";
  if (!lookless.has(from.tagName)) {
    for (const name of looks) {
      const value = style.getPropertyValue(name);
      if (value === "" || value === usual[name] || (!isWord && name.startsWith("font"))) continue;
      if (name.startsWith("stroke-") && style.stroke === "none") continue;
      to.setAttribute(name, value.replaceAll("px", ""));
    }
  }
  if (from.tagName === "text") to.setAttribute("xml:space", "preserve");
  for (const name of ["class", "style", "role", "tabindex", "id"]) to.removeAttribute(name);
  for (const attribute of [...to.attributes])
    if (/^(aria|data)-(?!hand)/.test(attribute.name)) to.removeAttributeNode(attribute);
  const [children, copies] = [[...from.children], [...to.children]];
  for (const [index, child] of children.entries()) writeLooks(child, copies[index]!);
}

function titleOf(words: string): SVGTitleElement {
  const title = document.createElementNS("http://www.w3.org/2000/svg", "title");
  title.textContent = words;
  return title;
}

function paperOf([x, y, width, height]: readonly [number, number, number, number]): SVGRectElement {
  const paper = document.createElementNS("http://www.w3.org/2000/svg", "rect");
  for (const [name, value] of Object.entries({ x, y, width, height })) paper.setAttribute(name, String(value));
  paper.setAttribute("fill", "#ffffff");
  return paper;
}
