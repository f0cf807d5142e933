/** Acts of the page that have keys. */
export interface KeyActs {
  readonly save: () => void;
  readonly open: () => void;
  readonly search: () => void;
  readonly keys: () => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** The act that a key press asks for; undefined where the press belongs to a field that is being typed in. */
export function actOfKey(event: KeyboardEvent): keyof KeyActs | undefined {
  if (event.key === "?" && !event.ctrlKey && !event.metaKey) {
    return isTyping(event.composedPath()[0]) ? undefined : "keys";
  }
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const key = event.key.toLowerCase();
  if (key === "s") return "save";
  if (key === "o") return "open";
  if (key === "k") return "search";
  if (isTyping(event.composedPath()[0])) return undefined;
  if (key === "z") return event.shiftKey ? "redo" : "undo";
  return key === "y" ? "redo" : undefined;
}

function isTyping(target: EventTarget | undefined): boolean {
  if (!(target instanceof HTMLElement)) return false;
  return target.isContentEditable || (target instanceof HTMLInputElement && !["radio", "range"].includes(target.type));
}
