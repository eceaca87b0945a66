import { copyOfProgress, today } from './keep.ts';

/** Hands the reader a file with everything that is kept. */
export async function saveCopy(): Promise<void> {
  const address = URL.createObjectURL(new Blob([await copyOfProgress()], { type: 'application/json' }));
  const link = Object.assign(document.createElement('a'), {
    href: address,
    download: `tautline-practice-${today()}.json`,
  });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
