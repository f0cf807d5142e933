/** What the page's bench does inside the page: each function is sent there whole, and knows nothing from outside of it. */

/**
 * @typedef {{ begin: () => void, end: () => Promise<import("./page-bench.mjs").Redrawn> }} Watch
 */

/** Puts a watch on the page that tells when each of its parts was last painted anew after a key. */
export function installWatch() {
  const places = {
    airway: ".airway-stage",
    chart: ".chart-stage, .charts-in-hand",
    findings: ".findings-part",
    price: ".price-bar",
  };
  const quiet = 350;
  let [started, changed] = [0, 0];
  /** @type {Record<string, number>} */
  let painted = {};
  /** What finds smallest fixes follows from a worker in its own time. */
  const isFix = (/** @type {Node} */ node) =>
    (node instanceof Element ? node : node.parentElement)?.closest(".fix-hint, .mending-line") != null;
  const observer = new MutationObserver((records) => {
    /** @type {Set<string>} */
    const touched = new Set();
    for (const { target, addedNodes, removedNodes } of records) {
      const nodes = [...addedNodes, ...removedNodes];
      if (isFix(target) || (nodes.length > 0 && nodes.every(isFix))) continue;
      const element = target instanceof Element ? target : target.parentElement;
      for (const [name, selector] of Object.entries(places)) {
        if (element?.closest(selector) != null) touched.add(name);
      }
    }
    if (touched.size === 0) return;
    changed = performance.now();
    // The frame that shows a change is over when a message that was posted in it arrives.
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        for (const name of touched) painted[name] = performance.now() - started;
      };
      port2.postMessage(0);
    });
  });
  observer.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
  addEventListener("keydown", (event) => (started = event.timeStamp), { capture: true });
  /** @param {() => boolean} holds */
  const until = async (holds) => {
    while (!holds()) await new Promise((resolve) => setTimeout(resolve, 20));
  };
  const isJudged = () => document.querySelector('.findings-part[aria-busy="false"]') !== null;
  /** @type {any} */ (window).watch = {
    begin: () => {
      [started, changed, painted] = [0, 0, {}];
    },
    end: async () => {
      await until(() => changed > 0);
      await until(() => isJudged() && performance.now() - changed > quiet);
      const all = Math.max(...Object.values(painted));
      return { airway: 0, chart: 0, findings: 0, price: 0, ...painted, all };
    },
  };
}

/**
 * Takes another hour in hand in every frame for some seconds.
 *
 * @param {number} seconds
 * @returns {Promise<{ framesPerSecond: number, longestFrame: number }>}
 */
export async function scrubHours(seconds) {
  const slider = /** @type {HTMLInputElement} */ (document.querySelector(".hour-scrubber input"));
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
  const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
  let [frames, longest, hour] = [0, 0, 1200];
  await frame();
  const start = performance.now();
  let before = start;
  while (before - start < 1000 * seconds) {
    hour += 7;
    set?.call(slider, String(hour));
    slider.dispatchEvent(new Event("input", { bubbles: true }));
    await frame();
    const now = performance.now();
    longest = Math.max(longest, now - before);
    before = now;
    frames++;
  }
  return { framesPerSecond: (1000 * frames) / (before - start), longestFrame: longest };
}
