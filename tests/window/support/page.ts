/**
 * A page by jsdom, for a test that also reads the project's files: named as the test's environment it would have every URL beside a
 * module be one of a server. To be imported before anything that looks for a page.
 */
import { builtinEnvironments } from 'vitest/runtime';

await builtinEnvironments.jsdom.setup(globalThis, {});
// jsdom has no screen to ask, and nothing scrolls.
Element.prototype.scrollIntoView = () => undefined;
globalThis.matchMedia = (media) => ({ ...new EventTarget(), media, matches: false, onchange: null, addListener: () => undefined, removeListener: () => undefined, addEventListener: () => undefined, removeEventListener: () => undefined, dispatchEvent: () => false });
globalThis.IS_REACT_ACT_ENVIRONMENT = true;

declare global {
  var IS_REACT_ACT_ENVIRONMENT: boolean;
}
