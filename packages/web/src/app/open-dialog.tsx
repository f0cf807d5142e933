import { useEffect, useRef, useState } from "react";
import { useBench } from "#view/use-bench";
import { chooseFile } from "./file-picker.ts";
import type { JobDesk } from "./job-desk.ts";

/** Where a job can be opened from: the folder that is served, the examples, any file. */
export default function OpenDialog({ desk, onClose }: { desk: JobDesk; onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const { notice } = useBench((bench) => bench.actions);
  const [names, setNames] = useState<readonly string[]>([]);
  useEffect(() => {
    dialog.current?.showModal();
    desk.server?.jobNames().then(setNames, () => setNames([]));
  }, [desk]);
  const fromFile = async () => {
    try {
      const file = await chooseFile(window);
      if (file !== undefined) desk.openChosen(file);
    } catch (error) {
      notice({ text: error instanceof Error ? error.message : String(error), weight: "caution" });
    }
    onClose();
  };
  return (
    <dialog ref={dialog} className="dialog" aria-label="open a job" onClose={onClose}>
      <h2>Open a job</h2>
      <Recent desk={desk} onOpened={onClose} />
      <Choices name="in the folder" paths={names} onChoose={(name) => desk.openServed(name).then(onClose)} />
      <Choices
        name="examples"
        paths={desk.examples.map((example) => example.path)}
        onChoose={(path) => void desk.openExample(path).then(onClose)}
      />
      <p>
        <button type="button" onClick={fromFile}>
          a file of this computer …
        </button>{" "}
        <span className="quiet">or drop one on the page</span>
      </p>
      <p className="dialog-foot">
        <button type="button" onClick={onClose}>
          cancel
        </button>
      </p>
    </dialog>
  );
}

/** Where a job of that origin is kept, in the words of the page. */
const origins = { server: "in the folder", example: "example", disk: "a file of this computer, to be chosen again" };

/** Jobs that were on the bench lately; a file of the computer has to be chosen again, the browser does not keep it. */
function Recent({ desk, onOpened }: { desk: JobDesk; onOpened: () => void }) {
  const now = useBench((bench) => bench.file);
  const [recent] = useState(() =>
    desk.recent().filter(({ name, origin }) => name !== now.name || origin !== now.origin),
  );
  if (recent.length === 0) return null;
  return (
    <>
      <h3>lately</h3>
      <ul className="choices">
        {recent.map(({ name, origin }) => (
          <li key={origin + name}>
            <button
              type="button"
              disabled={origin === "disk"}
              onClick={() => {
                const opening = origin === "server" ? desk.openServed(name) : desk.openExample(name);
                void opening.then(onOpened);
              }}
            >
              {name.split("/").at(-1)}
            </button>{" "}
            <span className="quiet">{origins[origin]}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

interface ChoicesProps {
  readonly name: string;
  readonly paths: readonly string[];
  readonly onChoose: (path: string) => void;
}

function Choices({ name, paths, onChoose }: ChoicesProps) {
  if (paths.length === 0) return null;
  return (
    <>
      <h3>{name}</h3>
      <ul className="choices">
        {paths.map((path) => (
          <li key={path}>
            <button type="button" onClick={() => onChoose(path)}>
              {path.split("/").at(-1)}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
