import { lazy, Suspense } from "react";
import { DrawnOrSaid } from "#view/drawn-or-said.tsx";
import { useSheet } from "#view/use-sheet";
import type { JobDesk } from "./job-desk.ts";

const EnquirySheet = lazy(() => import("#panel/enquiry-sheet.tsx"));
const HelpDialog = lazy(() => import("#panel/help-dialog.tsx"));
const GoPalette = lazy(() => import("./go-palette.tsx"));
const OpenDialog = lazy(() => import("./open-dialog.tsx"));
const KeySheet = lazy(() => import("./key-sheet.tsx"));
const Tour = lazy(() => import("#panel/tour.tsx"));
const VariantSheet = lazy(() => import("#panel/variant-sheet.tsx"));

interface SheetsProps {
  readonly desk: JobDesk;
  readonly save: () => void;
}

/** The sheet that lies over the page, loaded when it is first asked for. */
export function Sheets(props: SheetsProps) {
  const sheet = useSheet((sheets) => sheets.sheet);
  return (
    <DrawnOrSaid what={`the sheet "${sheet?.name}"`} attempt={sheet}>
      <Suspense fallback={null}>
        <SheetInHand {...props} />
      </Suspense>
    </DrawnOrSaid>
  );
}

function SheetInHand({ desk, save }: SheetsProps) {
  const sheet = useSheet((sheets) => sheets.sheet);
  const putAway = useSheet((sheets) => sheets.putAway);
  const onUnit = (name: string, text: string) => {
    desk.openNew(name, text);
    putAway();
  };
  switch (sheet?.name) {
    case "open a job":
      return <OpenDialog desk={desk} onClose={putAway} />;
    case "a new unit":
      return <EnquirySheet onClose={putAway} onUnit={onUnit} />;
    case "search and go":
      return <GoPalette hands={{ save }} onClose={putAway} />;
    case "keys":
      return <KeySheet onClose={putAway} />;
    case "help":
      return <HelpDialog topic={sheet.topic} onClose={putAway} />;
    case "variants":
      return <VariantSheet onClose={putAway} />;
    case "tour":
      return <Tour onClose={putAway} />;
    case undefined:
      return null;
  }
}
