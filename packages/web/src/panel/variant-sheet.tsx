import type { DigestFigure } from "@oncethrough/engine/compare/digest";
import { Fragment, useEffect, useId, useRef, useState } from "react";
import { digestDifference, digestText } from "#state/digest-words";
import { nextVariantName } from "#state/variant-store";
import { TakeAway } from "#view/take-away.tsx";
import { useBench } from "#view/use-bench";
import { useVariants } from "#view/use-variants";
import { useWork } from "#view/use-work";
import type { Comparison } from "#work/task";
import "./variants.css";
import { WorkWords } from "./work-words.tsx";

/** Variants of the job side by side with the one on the bench: figures, what fails, what the texts say differently. */
export default function VariantSheet({ onClose }: { onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const text = useBench((bench) => bench.text);
  const system = useBench((bench) => bench.system);
  const { variants } = useVariants();
  const work = useWork({ kind: "comparison", system, texts: [text, ...variants.map((variant) => variant.text)] });
  return (
    <dialog ref={dialog} className="dialog variants" aria-label="variants" onClose={onClose}>
      <header>
        <h2>Variants</h2>
        <KeepHand />
        <button type="button" onClick={onClose}>
          close
        </button>
      </header>
      <WorkWords work={work} isStale={false} />
      {work.now?.is === "done" ? <VariantTable comparison={work.now.result} /> : null}
      <p className="quiet">
        variants are kept in this browser, by file; take one to the bench and save it to have it as a file
      </p>
    </dialog>
  );
}

/** Puts the job on the bench by, under a name. */
function KeepHand() {
  const id = useId();
  const text = useBench((bench) => bench.text);
  const { notice } = useBench((bench) => bench.actions);
  const { file, variants, keep } = useVariants();
  const [typed, setTyped] = useState("");
  const name = typed.trim() === "" ? nextVariantName(variants) : typed.trim();
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        const isStored = keep(file, { name, text });
        if (!isStored) notice({ text: `${name} is kept only until the page closes`, weight: "caution" });
        setTyped("");
      }}
    >
      <label htmlFor={id}>keep the job on the bench as</label>
      <input
        id={id}
        className="typed"
        value={typed}
        placeholder={nextVariantName(variants)}
        maxLength={60}
        onChange={(event) => setTyped(event.target.value)}
      />
      <button type="submit">keep</button>
    </form>
  );
}

function VariantTable({ comparison: { digests, inputs } }: { comparison: Comparison }) {
  const system = useBench((bench) => bench.system);
  const currency = useBench((bench) => bench.shop.books?.prices.currency ?? "USD");
  const bench = digests[0];
  const base = bench?.ok === true ? bench.digest : undefined;
  const lines = digests.find((each) => each.ok)?.digest.figures ?? [];
  const figureAt = (column: number, key: string): DigestFigure | undefined => {
    const digest = digests[column];
    return digest?.ok === true ? digest.digest.figures.find((figure) => figure.key === key) : undefined;
  };
  return (
    <div className="variant-table" data-part="">
      <TakeAway of="table" name="variants" />
      <table>
        <VariantHeads />
        <tbody>
          {lines.map(({ key, name }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              {digests.map((_, column) => {
                const figure = figureAt(column, key);
                const against = base?.figures.find((each) => each.key === key);
                return (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the columns are the texts in their order
                  <td key={column}>
                    <strong>{figure === undefined ? "—" : digestText(figure, system, currency)}</strong>{" "}
                    {column === 0 || figure === undefined || against === undefined ? null : (
                      <small>{digestDifference(figure, against, system, currency)}</small>
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
          <Against digests={digests} />
        </tbody>
        <Inputs inputs={inputs} columns={digests.length} />
      </table>
    </div>
  );
}

function VariantHeads() {
  const { variants, file, drop } = useVariants();
  const { replaceText } = useBench((bench) => bench.actions);
  return (
    <thead>
      <tr>
        <td />
        <th scope="col">on the bench</th>
        {variants.map(({ name, text }) => (
          <th key={name} scope="col">
            {name}
            <span className="variant-hands" data-hand="">
              <button type="button" aria-label={`take ${name} to the bench`} onClick={() => replaceText(name, text)}>
                take
              </button>
              <button type="button" aria-label={`drop ${name}`} onClick={() => drop(file, name)}>
                drop
              </button>
            </span>
          </th>
        ))}
      </tr>
    </thead>
  );
}

function Against({ digests }: Pick<Comparison, "digests">) {
  return (
    <tr>
      <th scope="row">what stands against it</th>
      {digests.map((each, column) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the columns are the texts in their order
        <td key={column} className="words">
          {!each.ok ? <span className="failing">◆ {each.problem}</span> : null}
          {each.ok && each.digest.against.length === 0 ? "nothing" : null}
          {each.ok
            ? each.digest.against.map((words) => (
                <span key={words} className="failing">
                  ◆ {words}
                </span>
              ))
            : null}
        </td>
      ))}
    </tr>
  );
}

function Inputs({ inputs, columns }: Pick<Comparison, "inputs"> & { columns: number }) {
  if (inputs.length === 0) return null;
  const owners = [...new Set(inputs.map(({ owner }) => owner))];
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={columns + 1} className="group">
          said differently
        </th>
      </tr>
      {owners.map((owner) => (
        <Fragment key={owner}>
          {inputs
            .filter((each) => each.owner === owner)
            .map(({ field, values }) => (
              <tr key={field}>
                <th scope="row">
                  <span className="quiet">{owner}</span> {field}
                </th>
                {values.map((value, column) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: the columns are the texts in their order
                  <td key={column} className={value === values[0] ? "quiet" : "differs"}>
                    {value ?? "by default"}
                  </td>
                ))}
              </tr>
            ))}
        </Fragment>
      ))}
    </tbody>
  );
}
