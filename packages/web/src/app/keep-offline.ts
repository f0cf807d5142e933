/** ms after which the page, with what it shows at first, has had its time. */
const patience = 4000;

/**
 * Lets the browser keep every file of the page, so that what is fetched when it is asked for comes as well when the server
 * has gone. A browser that does not is none the worse.
 */
export function keepOffline(browser: Navigator): void {
  if (!("serviceWorker" in browser)) return;
  setTimeout(() => void browser.serviceWorker.register("./offline.js").catch(() => undefined), patience);
}
