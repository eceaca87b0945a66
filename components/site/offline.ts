/**
 * Keeps the site on the device. What stands is said in the foot, by a part that is fetched then. A reader who
 * asked to save data is left alone.
 */
export function keepOffline(): void {
  const { serviceWorker, connection }: Navigator & { connection?: { saveData?: boolean } } = navigator;
  if (!import.meta.env.PROD || !serviceWorker || connection?.saveData) return;
  const say = async (refused?: unknown) => (await import('./sayOffline.ts')).sayOffline(refused);
  const fill = async () => {
    try {
      serviceWorker.onmessage = say;
      await serviceWorker.register('/sw.js');
      await serviceWorker.ready;
      await say();
    } catch {
      // No storage, or a private window: the site works as before, with a signal.
    }
  };
  // What belongs to the page comes first.
  addEventListener('load', () => setTimeout(fill, 1500));
}
