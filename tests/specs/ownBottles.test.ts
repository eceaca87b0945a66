import { describe, expect, test } from 'vitest';
import { mixByDrops, mixWith } from '#calculators/mixByDrops.ts';
import { startState } from '#calculators/startState.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { mixCaution, mixSays } from '#words/mixByDrops.ts';
import { joinedWords, ownRefusal, readyWords, sumWords } from '#words/ownBottles.ts';

const start = startState(mixByDrops);
const brown: OwnBottle = { slot: 'own4', name: 'Harbour brown', content: { from: 'shares', parts: { '77492': 50, '77491': 20, '77499': 30 } } };
const ochre: OwnBottle = { slot: 'own2', name: 'Quay ochre', content: { from: 'swatch', lab: { l: 46.8, a: 11.5, b: 37.8 }, finish: 'matt' } };

describe('own bottles in the mix', () => {
  test('[hand] a bottle of the palette, typed in again by its shares, gives the same answer', () => {
    const own = mixWith({ ...start, 'brown-yellow-heavy': 0, own4: 3 }, [ochre, brown]);
    const palette = mixWith(start, []);
    if (!own.ok || !palette.ok) throw new Error('refused');
    expect(mixSays(own)).toEqual(mixSays(palette));
    expect([own.drops, own.hasSwatch]).toEqual([4, false]);
  });
  test('[hand] drops of a bottle that is not on this device are refused by name, never left out', () => {
    const missing = mixWith({ ...start, own2: 1 }, [brown]);
    expect(missing).toEqual({ ok: false, reason: 'own-bottle-missing' });
    expect(mixSays(missing).doubt).toBe('Open its file, or set its drops to zero.');
  });
  test('[hand] a swatch says what it cannot say: white, fading, what goes first', () => {
    const mixed = mixWith({ ...start, own2: 2 }, [ochre]);
    if (!mixed.ok) throw new Error(mixed.reason);
    expect([mixed.drops, mixed.hasSwatch]).toEqual([6, true]);
    expect(mixSays(mixed).doubt).toContain('A swatch does not say what goes first.');
    expect(mixSays(mixed).doubt).not.toContain('If all yellow and red');
    expect(mixCaution(mixed)).toContain('Read its label');
  });
});

describe('words', () => {
  test('[hand] the sum of the shares is said, and per cent is recognised', () => {
    expect([sumWords(0), sumWords(10), sumWords(100), sumWords(12.5)]).toEqual([
      'Sum: 0. Give at least one pigment a part.', 'Sum: 10 parts. Only the ratio counts.', 'Sum: 100, so these are per cent.', 'Sum: 12.5 parts. Only the ratio counts.',
    ]);
  });
  test('[hand] a bottle is described by its shares, largest first, or by how it is known', () => {
    expect(readyWords(brown.content, true)).toBe('Yellow oxide 50 %, black oxide 30 %, red oxide 20 %.');
    expect(readyWords({ from: 'swatch' }, false)).toContain('trust it less');
    // 0.6 of a white that throws back 1.2.
    expect(readyWords({ from: 'two-swatches' }, true, { scatter: 0.6, tintMiss: 1.25 })).toContain('0.50 times the light of a drop of white');
  });
  test('[hand] every reason has a sentence of its own', () => {
    const said = ['no-shares', 'below-zero', 'no-smooth-spectrum', 'blue-or-violet', 'darker-than-its-shine', 'no-drops', 'tint-not-lighter', 'tint-whiter-than-white', 'tint-of-another-pigment'].map(ownRefusal);
    expect(new Set([...said, 'This cannot be mixed.']).size).toBe(10);
    expect(joinedWords({ ok: true, added: 1, same: 2 })).toBe('1 bottle added. 2 bottles of the file you have already.');
    expect(joinedWords({ ok: false, free: 1, wanted: 3 })).toContain('holds 3 bottles and there is room for 1');
  });
});
