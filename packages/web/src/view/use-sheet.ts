import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { SheetDesk, SheetStore } from "#state/sheet-store";

/** The sheet over the page. */
export const SheetContext = createContext<SheetStore | undefined>(undefined);

/** A part of the sheet's desk; the component follows it. */
export function useSheet<Part>(part: (desk: SheetDesk) => Part): Part {
  const store = useContext(SheetContext);
  if (store === undefined) throw new Error("a sheet is asked for outside its page");
  return useStore(store, part);
}
