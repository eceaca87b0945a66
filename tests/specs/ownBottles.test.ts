import { describe, expect, test } from 'vitest';
import { mixByDrops, mixWith } from '#calculators/mixByDrops.ts';
import { oldHueCases } from '#lib/colour/old/oldHueCases.ts';
import { ownHueMoves } from '#calculators/ownHueMoves.ts';
import { startState } from '#calculators/startState.ts';
import { whichHue } from '#calculators/whichHue.ts';
import { whyItHealed, whyWith } from '#calculators/whyItHealed.ts';
import type { OwnBottle } from '#lib/colour/own/ownBottle.ts';
import { mixCaution, mixSays } from '#words/mixByDrops.ts';
import { whichHueCaution, whichHueSays } from '#words/whichHue.ts';
import { whyCaution, whySays } from '#words/whyItHealed.ts';
import { joinedWords, ownRefusal, readyWords, sumWords } from '#words/ownBottles.ts';

const start = startState(mixByDrops);
const brown: OwnBottle = {
  slot: 'own4',
  name: 'Harbour brown',
  content: { from: 'shares', parts: { '77492': 50, '77491': 20, '77499': 30 } },
};
const ochre: OwnBottle = {
  slot: 'own2',
  name: 'Quay ochre',
  content: { from: 'swatch', lab: { l: 46.8, a: 11.5, b: 37.8 }, finish: 'matt' },
};

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

describe('own bottles backwards', () => {
  const why = startState(whyItHealed);
  test('[hand] a mix with a bottle of the palette, typed in again by its shares, fits the same healings', () => {
    expect(whyWith({ ...why, 'brown-yellow-heavy': 0, own4: 3 }, [ochre, brown])).toEqual(
      whyItHealed.solve(why),
    );
  });
  test('[hand] a bottle that is not on this device is asked for; one known by its swatch is said to lose by a guess', () => {
    expect(whySays(whyWith({ ...why, own2: 1 }, [brown]), 2)).toEqual({
      answer: 'A bottle of your own is not here.',
      doubt: 'Open its file, or set its drops to zero.',
    });
    const mixed = whyWith({ ...why, own2: 2 }, [ochre]);
    expect(mixed.ok && mixed.hasSwatch).toBe(true);
    expect(whyCaution(mixed)).toMatch(
      /^Raised, itchy.*A swatch does not say what goes first\. Its loss is a guess\.$/,
    );
    expect(whyCaution(whyItHealed.solve(why))).not.toContain('swatch');
  });
});

describe('own bottles over an old hue', () => {
  const orange: OwnBottle = {
    slot: 'own1',
    name: 'Quay orange',
    content: { from: 'shares', parts: { '77492': 60, '77491': 35, '77891': 5 } },
  };
  test('[property] iron black of one’s own moves every case as the iron black of the table does, to a tenth', () => {
    const black: OwnBottle = {
      slot: 'own3',
      name: 'Night black',
      content: { from: 'shares', parts: { '77499': 10 } },
    };
    for (const shown of oldHueCases) {
      const [found] = ownHueMoves(shown, [black]);
      expect(
        found?.move.map((value) => Number(value.toFixed(1)) || 0),
        `${shown.old} on ${shown.skin[0]}`,
      ).toEqual(shown.moves[4]);
    }
  });
  test('[hand] each bottle has a row, and the best is named as its owner named it', () => {
    const [shown] = oldHueCases;
    const moves = ownHueMoves(shown, [
      ochre,
      orange,
      { ...brown, content: { from: 'shares', parts: { '77492': 0 } } },
    ]);
    expect(moves.map(({ id, hasSwatch }) => `${id} ${hasSwatch}`).toSorted()).toEqual([
      'own1 false',
      'own2 true',
    ]);
    const result = whichHue.solve({ skin: 'l72', old: 'grey-blue' });
    const rows = [
      { id: 'own2', name: 'Quay ochre', cosine: 1, move: [-1, 2, 3] as const, hasSwatch: true },
      ...result.rows,
    ];
    expect(whichHueSays({ ...result, rows }).answer).toBe(
      '“Quay ochre” points back most nearly (cosine 1.00).',
    );
    expect([whichHueCaution(rows), whichHueCaution(result.rows)]).toEqual([
      'A swatch does not say how much white is in it. Read its label.',
      undefined,
    ]);
  });
});

describe('words', () => {
  test('[hand] the sum of the shares is said, and per cent is recognised', () => {
    expect([sumWords(0), sumWords(10), sumWords(100), sumWords(12.5)]).toEqual([
      'Sum: 0. Give at least one pigment a part.',
      'Sum: 10 parts. Only the ratio counts.',
      'Sum: 100, so these are per cent.',
      'Sum: 12.5 parts. Only the ratio counts.',
    ]);
  });
  test('[hand] a bottle is described by its shares, largest first, or by how it is known', () => {
    expect(readyWords(brown.content, true)).toBe('Yellow oxide 50 %, black oxide 30 %, red oxide 20 %.');
    expect(readyWords({ from: 'swatch' }, false)).toContain('trust it less');
    // 0.6 of a white that throws back 1.2.
    expect(readyWords({ from: 'two-swatches' }, true, { scatter: 0.6, tintMiss: 1.25 })).toContain(
      '0.50 times the light of a drop of white',
    );
  });
  test('[hand] every reason has a sentence of its own', () => {
    const said = [
      'no-shares',
      'below-zero',
      'no-smooth-spectrum',
      'blue-or-violet',
      'darker-than-its-shine',
      'no-drops',
      'tint-not-lighter',
      'tint-whiter-than-white',
      'tint-of-another-pigment',
    ].map(ownRefusal);
    expect(new Set([...said, 'This cannot be mixed.']).size).toBe(10);
    expect(joinedWords({ ok: true, added: 1, same: 2 })).toBe(
      '1 bottle added. 2 bottles of the file you have already.',
    );
    expect(joinedWords({ ok: false, free: 1, wanted: 3 })).toContain(
      'holds 3 bottles and there is room for 1',
    );
  });
});
