import { onDemand } from '#components/site/onDemand.ts';

const fetchDesk = onDemand(() => import('./showPhoto.tsx'));

/** The button that chooses a picture. What opens and reads one is fetched when it was chosen. */
export function startPhoto(part: HTMLElement): void {
  const chooser = part.querySelector('input');
  const says = part.querySelector('[role=alert]');
  const room = part.querySelector('[data-photo-room]');
  if (!chooser || !says || !room) return;
  const show = async (file: File): Promise<string> => {
    try {
      const { showPhoto } = await fetchDesk();
      return await showPhoto(file, room);
    } catch {
      return part.dataset['photo'] ?? '';
    }
  };
  const button = part.querySelector('button');
  button?.addEventListener('click', () => chooser.click());
  if (button) button.disabled = false;
  delete part.dataset['waits'];
  chooser.addEventListener('change', async () => {
    const [file] = chooser.files ?? [];
    // The same file can be chosen again after it was changed.
    chooser.value = '';
    if (file) says.textContent = await show(file);
  });
}
