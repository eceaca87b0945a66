import { readBottleFile, writeBottleFile } from '#calculators/bottleFile.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { ownWords } from '#words/ownBottles.ts';
import { shelfKey } from './OwnPanel.tsx';

const asideKey = `${shelfKey}-set-aside`;

/**
 * What is kept on this device. Spoilt contents are moved aside whole, those of a newer version stay where
 * they are; both are said.
 */
export function loadShelf(): Readonly<{ bottles: readonly OwnBottle[]; note: string }> {
  try {
    const text = localStorage.getItem(shelfKey);
    if (text === null) return { bottles: [], note: '' };
    const read = readBottleFile(text);
    if (read.ok) return { bottles: read.bottles, note: '' };
    if (read.reason === 'newer-schema') return { bottles: [], note: ownWords.newer };
    localStorage.setItem(asideKey, text);
    localStorage.removeItem(shelfKey);
    return { bottles: [], note: ownWords.setAside };
  } catch {
    return { bottles: [], note: ownWords.notKept };
  }
}

/** Keeps the bottles. Says what went wrong, or nothing. */
export function keepShelf(bottles: readonly OwnBottle[]): string {
  try {
    const before = localStorage.getItem(shelfKey);
    const read = before === null ? undefined : readBottleFile(before);
    if (read && !read.ok && read.reason === 'newer-schema') return ownWords.newer;
    if (bottles.length === 0) localStorage.removeItem(shelfKey);
    else localStorage.setItem(shelfKey, writeBottleFile(bottles));
    return '';
  } catch {
    return ownWords.notKept;
  }
}
