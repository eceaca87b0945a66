import { sayComing } from './coming.ts';
import { keepOffline } from './offline.ts';
import { switchTheme } from './switchTheme.ts';

sayComing();
keepOffline();

for (const button of document.querySelectorAll('[data-theme-switch]'))
  button.addEventListener('click', switchTheme);

const dialog = document.querySelector<HTMLDialogElement>('#find');
const openSearch = () => {
  if (!dialog || dialog.open) return;
  dialog.showModal();
  // The sentence comes with the page: it is needed where nothing else can be fetched.
  import('./startSearch.ts').then(
    ({ startSearch }) => startSearch(dialog),
    () => dialog.querySelector('#find-count')?.replaceChildren(`${dialog.dataset['missing']}`),
  );
};
for (const button of document.querySelectorAll('[data-search-open]'))
  button.addEventListener('click', openSearch);
document.addEventListener('keydown', (event) => {
  const isTyping =
    event.target instanceof HTMLElement && event.target.closest('input, textarea, select, [contenteditable]');
  const wantsSearch =
    (event.key === '/' && !isTyping) || (event.key === 'k' && (event.ctrlKey || event.metaKey));
  if (!wantsSearch || event.altKey) return;
  event.preventDefault();
  openSearch();
});

const menu = document.querySelector<HTMLDetailsElement>('details.menu');
menu?.addEventListener('keydown', (event) => {
  if (event.key !== 'Escape') return;
  menu.open = false;
  menu.querySelector('summary')?.focus();
});
