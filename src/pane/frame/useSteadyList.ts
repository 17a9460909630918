import { useEffect, useLayoutEffect, useRef } from "react";
import type { RefObject } from "react";

/** The mark of an element that keeps its place: cards of a list and the sections that hold them. */
const STEADY = "[data-steady]";

/** As many visible elements as are remembered, should the first ones go. */
const ANCHORS = 12;

interface Anchor {
  readonly element: Element;
  readonly topPx: number;
}

/**
 * Keeps scroll place and focus while a live list changes under the user.
 *
 * What is at the top of the window stays where it is, unless the list stands at its very top, where what is new
 * should be seen. When the card that has the focus goes, the one that takes its place gets it; when the user has
 * gone elsewhere, nothing is done.
 */
export function useSteadyList(root: RefObject<HTMLElement>): void {
  const anchors = useRef<readonly Anchor[]>([]);
  const focused = useRef<{ readonly element: Element; readonly index: number } | null>(null);

  useEffect(() => {
    const list = root.current;
    if (list === null) return undefined;
    const remember = (): void => {
      anchors.current = visibleAnchors(list, scrollerOf(list));
    };
    const entered = ({ target }: FocusEvent): void => {
      const element = target as Element;
      const place = element.closest(STEADY);
      const index = place === null ? -1 : [...list.querySelectorAll(STEADY)].indexOf(place);
      focused.current = index < 0 ? null : { element, index };
    };
    // A card that is taken away loses the focus too: only when it is still there did the user leave it.
    const left = ({ target }: FocusEvent): void => {
      setTimeout(() => {
        if ((target as Element).isConnected && focused.current?.element === target) focused.current = null;
      }, 0);
    };
    // Scrolling does not bubble, so whichever ancestor scrolls is met on the way down.
    document.addEventListener("scroll", remember, { passive: true, capture: true });
    list.addEventListener("focusin", entered);
    list.addEventListener("focusout", left);
    return () => {
      document.removeEventListener("scroll", remember, { capture: true });
      list.removeEventListener("focusin", entered);
      list.removeEventListener("focusout", left);
    };
  }, [root]);

  useLayoutEffect(() => {
    const list = root.current;
    if (list === null) return;
    const scroller = scrollerOf(list);
    if (scroller.scrollTop > 0) {
      const anchor = anchors.current.find(({ element }) => element.isConnected);
      if (anchor !== undefined) scroller.scrollTop += anchor.element.getBoundingClientRect().top - anchor.topPx;
    }
    anchors.current = visibleAnchors(list, scroller);

    const before = focused.current;
    if (before !== null && !before.element.isConnected) {
      const places = list.querySelectorAll(STEADY);
      const place = places[Math.min(before.index, places.length - 1)];
      const target = place?.querySelector<HTMLElement>("button") ?? list.querySelector<HTMLElement>("[tabindex]");
      focused.current = null;
      if (document.activeElement === document.body || document.activeElement === null)
        target?.focus({ preventScroll: true });
    }
  });
}

/** The view scrolls by itself, or the pane as a whole where hardly any height is left. */
function scrollerOf(list: Element): Element {
  for (let element = list.parentElement; element !== null; element = element.parentElement) {
    if (/auto|scroll/.test(getComputedStyle(element).overflowY)) return element;
  }
  return document.documentElement;
}

function visibleAnchors(list: Element, scroller: Element): readonly Anchor[] {
  const topPx = scroller.getBoundingClientRect().top;
  const found: Anchor[] = [];
  for (const element of list.querySelectorAll(STEADY)) {
    const top = element.getBoundingClientRect().top;
    if (top >= topPx) found.push({ element, topPx: top });
    if (found.length === ANCHORS) break;
  }
  return found;
}
