const asleep = 'astro-island[ssr]:not([data-gone])';
const failed = 'astro:hydration-error';

/**
 * While a figure in view waits for its script, one line says so and the figure carries `data-near`, so that its
 * fields look quiet. What cannot wait for this script itself is done by components/site/first.ts.
 */
export function sayComing(): void {
  const line = document.querySelector<HTMLElement>('[data-coming]')!;
  const say = () => {
    line.textContent = document.querySelector(`${asleep}[data-near]`) ? `${line.dataset['coming']}` : '';
  };
  const watch = new IntersectionObserver((seen) => {
    for (const { target, isIntersecting } of seen)
      target.parentElement?.toggleAttribute('data-near', isIntersecting);
    // What comes in time needs no word.
    setTimeout(say, 800);
  });
  for (const part of document.querySelectorAll(`${asleep}>*`)) watch.observe(part);
  addEventListener('astro:hydrate', say, true);
  addEventListener(failed, say, true);
  const giveUp = (part: Element) => part.dispatchEvent(new Event(failed, { bubbles: true }));
  // Scripts that are no island's take this mark away: where one stands when all is loaded, its script did not come.
  addEventListener('load', () => document.querySelectorAll('[data-waits]').forEach(giveUp));
  // An island that breaks off while it starts is told to nobody: it has all it needs, and sleeps on.
  addEventListener('unhandledrejection', () => {
    for (const island of document.querySelectorAll<HTMLElement & { hydrator?: unknown }>(asleep))
      if (island.hydrator) giveUp(island);
  });
}
