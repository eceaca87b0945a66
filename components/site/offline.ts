import { readyOffline } from '#words/offline.ts';

async function sayReady(line: HTMLElement): Promise<void> {
  const answer = await fetch('/offline.json');
  const list: unknown = answer.ok ? await answer.json() : undefined;
  if (typeof list !== 'object' || list === null || !('version' in list)) return;
  line.textContent = `${line.textContent} ${readyOffline(String(list.version))}`;
}

/**
 * Keeps the site on the device, after the page is loaded and idle, and says so in the foot.
 * Announced only on the visit that fills it: on later pages it is old news. A reader who asked to save data
 * is left alone.
 */
export function keepOffline(): void {
  const line = document.querySelector<HTMLElement>('[data-offline]');
  const savesData = Reflect.get(Reflect.get(navigator, 'connection') ?? {}, 'saveData') === true;
  if (!import.meta.env.PROD || !line || !('serviceWorker' in navigator) || savesData) return;
  if (!navigator.serviceWorker.controller) line.setAttribute('role', 'status');
  const fill = async () => {
    try {
      await navigator.serviceWorker.register('/sw.js');
      await navigator.serviceWorker.ready;
      await sayReady(line);
    } catch {
      // No storage, or a private window: the site works as before, with a signal.
    }
  };
  const whenIdle = () =>
    'requestIdleCallback' in window ? requestIdleCallback(fill, { timeout: 4000 }) : setTimeout(fill, 1500);
  if (document.readyState === 'complete') whenIdle();
  else addEventListener('load', whenIdle, { once: true });
}
