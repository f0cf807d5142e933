import { useEffect, useRef } from "react";
import "./go-palette.css";

/** What keys do, by where the focus is. One list: what stands here is what the page takes. */
const keyTables = [
  {
    where: "Anywhere",
    keys: [
      ["Ctrl K", "search and go"],
      ["?", "this page"],
      ["Ctrl S", "save"],
      ["Ctrl O", "open"],
      ["Ctrl Z", "undo the last step"],
      ["Ctrl Shift Z, Ctrl Y", "do it again"],
      ["Ctrl P", "print the sheets"],
      ["Escape", "put away what lies over the page, give up what is being carried"],
    ],
  },
  {
    where: "In the row of sections",
    keys: [
      ["← →", "the section before, behind"],
      ["Home, End", "the first, the last"],
      ["Shift ←, Shift →", "move the section along the airway"],
      ["Insert, +", "add a section behind"],
      ["Shift Insert", "add a section before"],
      ["Delete", "remove the section"],
    ],
  },
  {
    where: "At the end of a section",
    keys: [
      ["← →", "an inch or a centimetre shorter, longer"],
      ["Shift ← →", "six inches or ten centimetres"],
    ],
  },
  {
    where: "At a design day on the chart",
    keys: [
      ["← →", "a step colder, warmer"],
      ["↑ ↓", "a step moister, drier"],
      ["with Shift", "five steps"],
      ["Enter", "see the machine on that day"],
    ],
  },
  {
    where: "In a field",
    keys: [
      ["Enter", "take what is typed; an empty field takes its default"],
      ["Escape", "as it was"],
    ],
  },
] as const;

/** The keys of the page. On a Mac, Ctrl is ⌘. */
export default function KeySheet({ onClose }: { onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog ref={dialog} className="dialog key-sheet" aria-label="keys of the page" onClose={onClose}>
      <h2>
        Keys <small>on a Mac, ⌘ for Ctrl</small>
      </h2>
      <div className="key-tables">
        {keyTables.map(({ where, keys }) => (
          <table key={where}>
            <caption>{where}</caption>
            <tbody>
              {keys.map(([key, does]) => (
                <tr key={key}>
                  <th scope="row">{key}</th>
                  <td>{does}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      </div>
      <p className="dialog-foot">
        <button type="button" onClick={onClose}>
          close
        </button>
      </p>
    </dialog>
  );
}
