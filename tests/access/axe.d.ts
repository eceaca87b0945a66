import type axe from 'axe-core';

declare global {
  interface Window {
    /** There once axe has been put into the page. */
    axe: typeof axe;
  }
}
