/** What lies between the margins of an A4 sheet, CSS pixels. */
export const paperPx = {
  width: Math.floor(((210 - 2 * 14) / 25.4) * 96),
  height: Math.floor(((297 - 2 * 14) / 25.4) * 96),
} as const;

/** Runs in the page, as on screen: marks the words that must be there on paper too. */
export function markLines(): void {
  for (const part of document.querySelectorAll('main :is(h1, h2, p), main .says b')) {
    if (
      part.checkVisibility() &&
      !part.closest('.no-print, nav, .crumb, .prac-top, .face-strip, details:not([open])')
    )
      part.setAttribute('data-line', '');
  }
}

/** Runs in the page, as for paper: what is lost there, and controls that are not. */
export function offPaper(): string[] {
  const lost = [...document.querySelectorAll('[data-line]')].filter((part) => {
    const { width, height } = part.getBoundingClientRect();
    return !/^\s*$/.test(part.textContent ?? '') && (!part.checkVisibility() || width < 2 || height < 2);
  });
  const words = document.body.innerText;
  return [
    ...lost.slice(0, 5).map((part) => `not on paper: ${part.textContent?.trim().slice(0, 40)}`),
    ...['Copy link', 'Reset the marks', 'Reset the numbers', 'Skip to the page', 'Search lessons']
      .filter((control) => words.includes(control))
      .map((control) => `on paper: ${control}`),
  ];
}
