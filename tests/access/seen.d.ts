import type axe from 'axe-core';

declare global {
  interface Window {
    /** There once axe has been put into the page. */
    axe: typeof axe;
    /** What axe has looked at already, by the kind of look. */
    lookedAt?: Map<string, Set<Element>>;
    /** Which of its parts each element has been seen with. */
    partsSeen?: Map<Element, Set<string>>;
  }
}
