// On a calculator's own page: two buttons. What they do is fetched when one is pressed.

const part = document.querySelector<HTMLElement>('[data-mark-files]');
const chooser = part?.querySelector('input');
const says = part?.querySelector('[role=status]');

function say(sentence: string, link?: Readonly<{ href: string; label: string }>): void {
  says?.replaceChildren(sentence, ...(link ? [' ', Object.assign(document.createElement('a'), { href: link.href, textContent: link.label })] : []));
}

part?.querySelector('[data-save]')?.addEventListener('click', async () => (await import('./markFile.ts')).saveMarks(say));
part?.querySelector('[data-open]')?.addEventListener('click', () => chooser?.click());
chooser?.addEventListener('change', async () => {
  const [chosen] = chooser.files ?? [];
  // The same file can be chosen again after it was changed.
  if (chosen) await (await import('./markFile.ts')).openMarks(chosen, say);
  chooser.value = '';
});
