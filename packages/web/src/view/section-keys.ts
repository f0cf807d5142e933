/** What a key press does to the section in hand. */
export type SectionAct = "earlier" | "later" | "add before" | "add behind" | "remove";

/** The act that a key press in the row of sections asks for; undefined where it asks for none. */
export function sectionActOf(event: {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}): SectionAct | undefined {
  if (event.altKey || event.ctrlKey || event.metaKey) return undefined;
  switch (event.key) {
    case "ArrowLeft":
      return event.shiftKey ? "earlier" : undefined;
    case "ArrowRight":
      return event.shiftKey ? "later" : undefined;
    case "Insert":
      return event.shiftKey ? "add before" : "add behind";
    case "+":
      return "add behind";
    case "Delete":
    case "Backspace":
      return "remove";
    default:
      return undefined;
  }
}
