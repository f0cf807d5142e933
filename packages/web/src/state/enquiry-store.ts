import type { Catalogue } from "@oncethrough/engine/catalogue/read-catalogue";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { DraftStorage } from "./draft.ts";
import { type Answer, answered, blankText, type Enquiry, enquiryOf } from "./enquiry.ts";

/** The enquiry on the page and what can be done with it. */
export interface EnquiryDesk {
  readonly enquiry: Enquiry;
  /** Texts before each act, latest last. */
  readonly past: readonly string[];
  readonly answer: (answers: readonly Answer[]) => void;
  readonly undo: () => void;
  /** Begins with a blank duty; the present one can be brought back by `undo`. */
  readonly clear: () => void;
  /** The enquiry has become a job: the next one begins blank. */
  readonly finish: () => void;
}

/** The store of the enquiry. */
export type EnquiryStore = StoreApi<EnquiryDesk>;

const key = "oncethrough-enquiry";

/** An enquiry that outlives the page: what was answered is kept at every answer, and is there again. */
export function createEnquiryStore(catalogue: Catalogue, storage: DraftStorage): EnquiryStore {
  const store = createStore<EnquiryDesk>()((set, get) => {
    const become = (enquiry: Enquiry) => {
      const { text } = get().enquiry;
      set({ enquiry, past: enquiry.text === text ? get().past : [...get().past, text] });
    };
    return {
      enquiry: enquiryOf(kept(storage) ?? blankText, catalogue),
      past: [],
      answer: (answers) => become(answered(get().enquiry, answers, catalogue)),
      undo: () => {
        const last = get().past.at(-1);
        if (last !== undefined) set({ enquiry: enquiryOf(last, catalogue), past: get().past.slice(0, -1) });
      },
      clear: () => become(enquiryOf(blankText, catalogue)),
      finish: () => set({ enquiry: enquiryOf(blankText, catalogue), past: [] }),
    };
  });
  store.subscribe(({ enquiry }) => keep(storage, enquiry.text));
  return store;
}

function kept(storage: DraftStorage): string | undefined {
  try {
    return storage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

function keep(storage: DraftStorage, text: string): void {
  try {
    if (text === blankText) storage.removeItem(key);
    else storage.setItem(key, text);
  } catch {
    // Without room the enquiry lives as long as the page.
  }
}
