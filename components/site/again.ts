/**
 * What a page fetches, under a name that each version has, once a part of it did not come. It shuts the fields
 * of such a part, and makes its press a way out of a broken version: where the network answers, the copy on the
 * device is dropped, and the page comes anew. What the reader kept lies elsewhere and stays. Without this script
 * the press loads the page again.
 */
const shut = (): void => {
  for (const field of document.querySelectorAll<HTMLInputElement>(
    '[data-gone] :is(input,select,textarea,button)',
  ))
    field.disabled = true;
};

async function dropCopy(): Promise<void> {
  // Not in the offline list: only the network has it.
  const answer = await fetch('/robots.txt', { cache: 'no-store' });
  if (!answer.ok) return;
  for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister();
  for (const name of await caches.keys()) await caches.delete(name);
}

shut();
addEventListener('astro:hydration-error', shut);
document.addEventListener('click', async (event) => {
  const press = event.target instanceof Element && event.target.closest('[data-again]');
  if (!press) return;
  event.preventDefault();
  await dropCopy().catch(() => undefined);
  location.reload();
});
