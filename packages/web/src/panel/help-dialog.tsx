import { type MouseEvent, useEffect, useMemo, useRef, useState } from "react";
import type { HelpHead, HelpTopic } from "#state/help-topic";
import "./help.css";
import { helpPage, topicsUnder } from "./help-texts.ts";

/** Pages in the trade's words: what matters for a section, which mistakes happen, how it is calculated. */
export default function HelpDialog({ topic, onClose }: { topic: HelpTopic; onClose: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const page = useRef<HTMLElement>(null);
  const [shown, show] = useState(topic);
  useEffect(() => dialog.current?.showModal(), []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page begins at its top
  useEffect(() => {
    page.current?.scrollTo(0, 0);
  }, [shown]);
  return (
    <dialog ref={dialog} className="dialog help" aria-label="help" onClose={onClose}>
      <nav aria-label="pages of help">
        <TopicList head="sections" title="Sections" shown={shown} onShow={show} />
        <TopicList head="methods" title="Methods" shown={shown} onShow={show} />
        <TopicList head="rules" title="Rules" shown={shown} onShow={show} />
      </nav>
      <article ref={page} aria-live="polite">
        <p className="help-close">
          <button type="button" onClick={onClose}>
            close
          </button>
        </p>
        <HelpText topic={shown} onShow={show} />
      </article>
    </dialog>
  );
}

interface ListProps {
  readonly head: HelpHead;
  readonly title: string;
  readonly shown: HelpTopic;
  readonly onShow: (topic: HelpTopic) => void;
}

function TopicList({ head, title, shown, onShow }: ListProps) {
  const topics = useMemo(() => topicsUnder(head), [head]);
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {topics.map(({ topic, title: words }) => (
          <li key={topic}>
            <button type="button" aria-current={topic === shown ? "page" : undefined} onClick={() => onShow(topic)}>
              {words}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function HelpText({ topic, onShow }: { topic: HelpTopic; onShow: (topic: HelpTopic) => void }) {
  const page = useMemo(() => helpPage(topic), [topic]);
  if (page === undefined) return <p>there is no page about this yet</p>;
  const follow = (event: MouseEvent) => {
    const aim = (event.target as Element).closest("a")?.getAttribute("href");
    if (aim == null) return;
    event.preventDefault();
    onShow(aim.slice(1) as HelpTopic);
  };
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the links inside take the keyboard themselves
    // biome-ignore lint/a11y/noStaticElementInteractions: it only hears its links
    // biome-ignore lint/security/noDangerouslySetInnerHtml: made from the program's own pages, nothing of a user's
    <div className="help-text" onClick={follow} dangerouslySetInnerHTML={{ __html: page.html }} />
  );
}
