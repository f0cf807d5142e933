import { lazy, Suspense } from "react";
import { useSheet } from "#view/use-sheet";
import type { JobDesk } from "./job-desk.ts";
import { OpenDialog } from "./open-dialog.tsx";

const EnquirySheet = lazy(() => import("#panel/enquiry-sheet.tsx"));
const HelpDialog = lazy(() => import("#panel/help-dialog.tsx"));

/** The sheet that lies over the page, loaded when it is first asked for. */
export function Sheets({ desk }: { desk: JobDesk }) {
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
    case "help":
      return (
        <Suspense fallback={null}>
          <HelpDialog topic={sheet.topic} onClose={putAway} />
        </Suspense>
      );
  }
}
