import { BeingMended } from '#components/site/BeingMended.tsx';
import { isBeingMended, mendedWords } from '#words/beingMended.ts';
import type { ComponentChildren } from 'preact';

/**
 * What the frame of a calculator shows while it is being mended: the notice above all else, and its first
 * words before every answer.
 */
export type MendedNotice = Readonly<{ box: ComponentChildren; title: string }>;

export const mendedNotice = (id: string): MendedNotice | undefined =>
  isBeingMended('calculators', id)
    ? { box: <BeingMended kind="calculators" id={id} />, title: mendedWords.title }
    : undefined;
