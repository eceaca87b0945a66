/**
 * The first script of every page, inside it, before anything is drawn: a chosen theme never flashes, and a
 * figure whose own script is not here yet never shows a typed number beside an answer that does not belong to
 * it. Small by need; its hash stands in the content policy.
 *
 * A figure sleeps while its `astro-island` carries `ssr`. Fields of a form with `data-early` keep what is typed
 * meanwhile: the island takes it up. Not where the address holds numbers: they change what is asked.
 */
type Island = HTMLElement & { pressed?: HTMLFormElement };

const { dataset } = document.documentElement;
dataset['js'] = '';
// Storage can be denied; the page then follows the system's theme.
try {
  dataset['theme'] = localStorage['tautline-theme'] || '';
} catch {
  // Nothing was chosen.
}

const isLinked = location.search;

/** Puts the numbers of the start back: in place of a typed one, or of those that a browser restored. */
const restore = (island: Element): void =>
  island
    .querySelectorAll<HTMLInputElement>(`select,textarea,input${isLinked ? '' : ':not([data-early] *)'}`)
    .forEach((field) => {
      field.checked = field.defaultChecked;
      // A list has no value of the start, but an option that is marked.
      field.value = field.defaultValue ?? field.querySelector<HTMLOptionElement>('[selected]')?.value;
    });

/** What happens in a part that sleeps, or to an element, seen before it arrives there. */
const on = (kind: string, act: (part: Island, target: HTMLFormElement) => void): void =>
  addEventListener(
    kind,
    (event) => {
      // Each of these kinds happens to an element.
      const target = event.target as HTMLFormElement;
      act(target.closest<Island>('[ssr]') ?? target, target);
    },
    true,
  );

on('input', (island) => island.matches('[ssr]') && restore(island));
on('submit', (island, form) => {
  island.pressed = form;
});
on('astro:hydrate', (island) => {
  restore(island);
  // The first effects of the island take up what was typed: a task after the next frame.
  if (!isLinked) requestAnimationFrame(() => setTimeout(() => island.pressed?.requestSubmit()));
});
/** Puts the words for it in front, and fetches the way out of a broken version, under a name that each version has. */
on('astro:hydration-error', (island) => {
  island.dataset['gone'] = '';
  const words = document.querySelector<HTMLTemplateElement>('#gone')!;
  island.prepend(words.content.cloneNode(true));
  // As a sum, or the bundler looks for the file.
  import(/* @vite-ignore */ String('/again.js'));
});
