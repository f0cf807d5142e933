import { marked } from "marked";
import type { HelpTopic } from "#state/help-topic";

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

const textOf = new Map<string, string>(
  Object.entries(texts).map(([path, text]) => [path.replace(/^.*\/docs\//, "").replace(/\.md$/, ""), text]),
);

/** Topics under a head, by title. */
export function topicsUnder(head: "sections" | "methods"): readonly { topic: HelpTopic; title: string }[] {
  return [...textOf]
    .filter(([topic]) => topic.startsWith(`${head}/`))
    .map(([topic, text]) => ({ topic: topic as HelpTopic, title: titleOf(text) }))
    .sort((one, other) => one.title.localeCompare(other.title));
}

/** The page of a topic; undefined where there is none. Links to other pages are kept as `#sections/…` and `#methods/…`. */
export function helpPage(topic: HelpTopic): HelpPage | undefined {
  const text = textOf.get(topic);
  if (text === undefined) return undefined;
  const html = marked.parse(withTopicLinks(text, topic), { async: false, gfm: true });
  return { topic, title: titleOf(text), html };
}

function titleOf(text: string): string {
  return /^# (.+)$/m.exec(text)?.[1] ?? "";
}

/** Links that the page can follow; what lies elsewhere in the project is told by its words alone. */
function withTopicLinks(text: string, topic: HelpTopic): string {
  const folder = topic.slice(0, topic.indexOf("/"));
  return text.replace(/\[([^\]]+)\]\(([^)]+)\)/g, (_, words: string, target: string) => {
    const [, up, name] = /^(?:\.\.\/(\w+)\/|\.?\/?)([\w-]+)\.md$/.exec(target) ?? [];
    const aim = name === undefined ? undefined : `${up ?? folder}/${name}`;
    return aim !== undefined && textOf.has(aim) ? `[${words}](#${aim})` : words;
  });
}
