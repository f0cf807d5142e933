import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { EnquiryDesk, EnquiryStore } from "#state/enquiry-store";

/** The enquiry that is being answered. */
export const EnquiryContext = createContext<EnquiryStore | undefined>(undefined);

/** A part of the enquiry's desk; the component follows it. */
export function useEnquiry<Part>(part: (desk: EnquiryDesk) => Part): Part {
  const store = useContext(EnquiryContext);
  if (store === undefined) throw new Error("the enquiry is used outside its sheet");
  return useStore(store, part);
}
