import { lazy, Suspense } from "react";
import { useSheet } from "#view/use-sheet";
import type { JobDesk } from "./job-desk.ts";
import { OpenDialog } from "./open-dialog.tsx";

const EnquirySheet = lazy(() => import("#panel/enquiry-sheet.tsx"));
const HelpDialog = lazy(() => import("#panel/help-dialog.tsx"));
const GoPalette = lazy(() => import("./go-palette.tsx"));
const KeySheet = lazy(() => import("./key-sheet.tsx"));

/** The sheet that lies over the page, loaded when it is first asked for. */
export function Sheets({ desk, save }: { desk: JobDesk; save: () => void }) {
  const sheet = useSheet((sheets) => sheets.sheet);
  const putAway = useSheet((sheets) => sheets.putAway);
  if (sheet === undefined) return null;
  const onUnit = (name: string, text: string) => {
    desk.openNew(name, text);
    putAway();
  };
  switch (sheet.name) {
    case "open a job":
      return <OpenDialog desk={desk} onClose={putAway} />;
    case "a new unit":
      return (
        <Suspense fallback={null}>
          <EnquirySheet onClose={putAway} onUnit={onUnit} />
        </Suspense>
      );
    case "search and go":
      return (
        <Suspense fallback={null}>
          <GoPalette hands={{ save }} onClose={putAway} />
        </Suspense>
      );
    case "keys":
      return (
        <Suspense fallback={null}>
          <KeySheet onClose={putAway} />
        </Suspense>
      );
    case "help":
      return (
        <Suspense fallback={null}>
          <HelpDialog topic={sheet.topic} onClose={putAway} />
        </Suspense>
      );
  }
}
