import { createStore, type StoreApi } from "zustand/vanilla";
import type { HelpTopic } from "./help-topic.ts";

/** A sheet that lies over the page until it is put away. */
export type Sheet =
  | { readonly name: "open a job" }
  | { readonly name: "a new unit" }
  | { readonly name: "search and go" }
  | { readonly name: "keys" }
  | { readonly name: "variants" }
  | { readonly name: "tour" }
  | { readonly name: "help"; readonly topic: HelpTopic };

/** Which sheet lies over the page. */
export interface SheetDesk {
  readonly sheet: Sheet | undefined;
  readonly lay: (sheet: Sheet) => void;
  readonly putAway: () => void;
}

/** The store of the sheet; at most one lies there. */
export type SheetStore = StoreApi<SheetDesk>;

/** A page with no sheet over it. */
export function createSheetStore(): SheetStore {
  return createStore<SheetDesk>()((set) => ({
    sheet: undefined,
    lay: (sheet) => set({ sheet }),
    putAway: () => set({ sheet: undefined }),
  }));
}
