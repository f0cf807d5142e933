import bibliographyText from "../../../../reference/bibliography.json?raw";

/** What the bibliography says of a publication. */
export interface Publication {
  readonly title: string;
  readonly author: string;
  readonly year: number | null;
  readonly kind: string;
  /** What of it was read, and how sure that is. */
  readonly note: string;
}

/** The bibliography: publications by the key under which they are cited. */
export const bibliography = JSON.parse(bibliographyText) as Readonly<Record<string, Publication>>;

/** Keys that are words of their own and no publications. */
const unpublished: ReadonlySet<string> = new Set(["definition", "common-practice", "from-memory", "derived-here"]);

const keys = Object.keys(bibliography)
  .filter((key) => !unpublished.has(key))
  .sort((one, other) => other.length - one.length);
const cited = new RegExp(`(?<![\\w-])\`?(${keys.join("|")})\`?(?![\\w-])`, "g");

/** A text of help with every cited publication as a link to what is known of it. */
export function withSourceLinks(text: string): string {
  return text.replace(cited, "[$1](#sources/$1)");
}

/** The page of a publication, with the pages that cite it; undefined for a key that there is not. */
export function sourceText(key: string, citing: readonly { readonly topic: string; readonly title: string }[]) {
  const known = unpublished.has(key) ? undefined : bibliography[key];
  if (known === undefined) return undefined;
  const who = [known.author, known.year ?? "", known.kind].filter((each) => each !== "").join(", ");
  const lines = citing.map(({ topic, title }) => `- [${title}](#${topic})`);
  return [`# ${known.title}`, who, known.note, "## Cited by", ...lines].join("\n\n");
}
