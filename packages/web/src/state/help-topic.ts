/** A page of help: a section kind's, duty's or cabinet's, or a method's. */
export type HelpTopic = `sections/${string}` | `methods/${string}`;

/** The topic of a section kind. */
export function topicOfKind(kind: string): HelpTopic {
  return `sections/${kind.replaceAll(" ", "-")}`;
}
