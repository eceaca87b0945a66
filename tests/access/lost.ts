/**
 * Runs in the page: controls that no edge, ground or underline sets apart, and lines drawn in the colour of
 * the page.
 */
export function lost(): string[] {
  const page = getComputedStyle(document.body).backgroundColor;
  const unseen: string[] = [];
  for (const element of document.querySelectorAll<HTMLElement>(
    'input:not([type=hidden]), select, textarea, button.btn',
  )) {
    if (!element.checkVisibility({ opacityProperty: true }) || element.getBoundingClientRect().width < 2)
      continue;
    const look = getComputedStyle(element);
    const hasEdge =
      parseFloat(look.borderTopWidth) > 0 && look.borderTopStyle !== 'none' && look.borderTopColor !== page;
    if (!hasEdge && look.appearance === 'none' && !element.matches('[type=range]'))
      unseen.push(`${element.tagName.toLowerCase()} ${element.getAttribute('aria-label') ?? element.id}`);
  }
  for (const shape of document.querySelectorAll<SVGElement>(
    'main svg :is(path, line, circle, rect, polyline, text)',
  )) {
    if (shape.closest('pattern, defs, clipPath, mask')) continue;
    const { stroke, fill } = getComputedStyle(shape);
    const isPaper = (colour: string) => colour === 'none' || colour === page;
    if (shape.tagName === 'text' && isPaper(fill)) unseen.push(`text ${shape.textContent?.slice(0, 20)}`);
    if (shape.tagName === 'line' && isPaper(stroke)) unseen.push(`line ${shape.getAttribute('class')}`);
  }
  return unseen.slice(0, 10);
}
