import { onDemand } from '#components/site/onDemand.ts';
import { notFetched } from '#words/fetching.ts';

// On a calculator's own page: two buttons. What they do is fetched when one is pressed.

const part = document.querySelector<HTMLElement>('[data-mark-files]');
const chooser = part?.querySelector('input');
const says = part?.querySelector('[role=status]');
const files = onDemand(() => import('./markFile.ts'));

function say(sentence: string, link?: Readonly<{ href: string; label: string }>): void {
  says?.replaceChildren(
    sentence,
    ...(link
      ? [' ', Object.assign(document.createElement('a'), { href: link.href, textContent: link.label })]
      : []),
  );
}
const sayMissing = () => say(notFetched('What saves and opens files'));

part
  ?.querySelector('[data-save]')
  ?.addEventListener('click', () => files().then(({ saveMarks }) => saveMarks(say), sayMissing));
part?.querySelector('[data-open]')?.addEventListener('click', () => chooser?.click());
for (const button of part?.querySelectorAll('button') ?? []) button.disabled = false;
delete part?.dataset['waits'];
chooser?.addEventListener('change', () => {
  const [chosen] = chooser.files ?? [];
  // The same file can be chosen again after it was changed.
  chooser.value = '';
  if (chosen) files().then(({ openMarks }) => openMarks(chosen, say), sayMissing);
});
