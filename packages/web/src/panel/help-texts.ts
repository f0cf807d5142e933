import { marked } from "marked";
import type { HelpHead, HelpTopic } from "#state/help-topic";
import rulesText from "../../../../docs/rules.md?raw";
import { sourceText, withSourceLinks } from "./help-sources.ts";

/** A page of help as it is shown. */
export interface HelpPage {
  readonly topic: HelpTopic;
  readonly title: string;
  /** Made from the program's own text. */
  readonly html: string;
}

const texts: Readonly<Record<string, string>> = {
  ...import.meta.glob<string>("../../../../docs/sections/*.md", { query: "?raw", import: "default", eager: true }),
  ...import.meta.glob<string>("../../../../docs/methods/*.md", { query: "?raw", import: "default", eager: true }),
};

/** A family of rules under the name by which the list's own headings are linked. */
function familyOf(part: string): readonly [topic: string, text: string] {
  const title = part.slice(0, part.indexOf("\n"));
  return [
    `rules/${title
      .toLowerCase()
      .replace(/[^\w ]/g, "")
      .replaceAll(" ", "-")}`,
    `# ${title}${part.slice(title.length)}`,
  ];
}

const textOf = new Map<string, string>([
  ...Object.entries(texts).map(([path, text]) => [path.replace(/^.*\/docs\//, "").replace(/\.md$/, ""), text] as const),
  ...rulesText.split(/^## /m).slice(1).map(familyOf),
]);

/** Topics under a head, by title. */
export function topicsUnder(head: HelpHead): readonly { topic: HelpTopic; title: string }[] {
  return [...textOf]
    .filter(([topic]) => topic.startsWith(`${head}/`))
    .map(([topic, text]) => ({ topic: topic as HelpTopic, title: titleOf(text) }))
    .sort((one, other) => one.title.localeCompare(other.title));
}

/** The page of a topic; undefined where there is none. Links to other pages are kept as `#sections/…`, `#sources/…`. */
export function helpPage(topic: HelpTopic): HelpPage | undefined {
  const own = textOf.get(topic);
  const text = own ?? publicationText(topic);
  if (text === undefined) return undefined;
  const linked = own === undefined ? text : withSourceLinks(withTopicLinks(own, topic));
  const html = marked.parse(linked, { async: false, gfm: true });
  return { topic, title: titleOf(text), html };
}

/** What is known of a publication, and which pages rest on it. */
function publicationText(topic: HelpTopic): string | undefined {
  const key = /^sources\/(.+)$/.exec(topic)?.[1];
  if (key === undefined) return undefined;
  const citing = [...textOf].filter(([, text]) => withSourceLinks(text).includes(`(#${topic})`));
  return sourceText(
    key,
    citing.map(([page, text]) => ({ topic: page, title: titleOf(text) })),
  );
}

function titleOf(text: string): string {
  return /^# (.+)$/m.exec(text)?.[1] ?? "";
}

/** Links that the page can follow; what lies elsewhere in the project is told by its words alone. */
function withTopicLinks(text: string, topic: HelpTopic): string {
  const folder = topic.slice(0, topic.indexOf("/"));
  return text.replace(/\[([^\]]+)\]\(([^)]+)\)/g, (_, words: string, target: string) => {
    const family = /^(?:\.\.\/)?rules\.md#([\w-]+)$/.exec(target)?.[1];
    if (family !== undefined && textOf.has(`rules/${family}`)) return `[${words}](#rules/${family})`;
    const [, up, name] = /^(?:\.\.\/(\w+)\/|\.?\/?)([\w-]+)\.md$/.exec(target) ?? [];
    const aim = name === undefined ? undefined : `${up ?? folder}/${name}`;
    return aim !== undefined && textOf.has(aim) ? `[${words}](#${aim})` : words;
  });
}
