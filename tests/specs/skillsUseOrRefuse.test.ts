import { expect, test } from 'vitest';
import { mayRead } from '#lib/mapping/pose/mayRead.ts';
import { useOrRefuse } from '#skills/mapping/useOrRefuse.ts';
import { useOrRefuseWords } from '#words/skills/useOrRefuse.ts';
import { checkSeed } from './skillCheck.ts';

const seeds = Array.from({ length: 1000 }, (_, seed) => seed);

test('[property] every seed 0 to 999 has one right answer and names every wrong one', () => {
  for (const seed of seeds) checkSeed(useOrRefuse, useOrRefuseWords, seed);
});

test('[property] a picture lacks at most one thing that the number needs: with that one mended it may be used', () => {
  for (const seed of seeds) {
    const { wanted, picture } = useOrRefuse.given(seed);
    const may = mayRead(wanted, picture);
    if (may.use || may.why === 'widths-never') continue;
    const mend = {
      'not-at-rest': { atRest: true },
      'mirror-unknown': { mirrorKnown: true },
      'level-unknown': { levelKnown: true },
      'nod-unchecked': { nodChecked: true },
      'too-near': { cameraCm: 200 },
      'no-ruler': { hasRuler: true },
    } as const;
    expect(mayRead(wanted, { ...picture, ...mend[may.why] }), `seed ${seed}`).toEqual({ use: true });
  }
});

test('[property] "use" and every refusal come, four choices each time, "use" among them; nothing stands close to the limit of 150 cm', () => {
  const counts = new Map<string, number>();
  for (const seed of seeds) {
    const given = useOrRefuse.given(seed);
    const answer = useOrRefuse.answer(given);
    if (answer.kind !== 'choice') throw new Error('not a choice');
    counts.set(answer.correct, (counts.get(answer.correct) ?? 0) + 1);
    expect(answer.options).toHaveLength(4);
    expect(answer.options[0]).toBe('use');
    expect(Math.abs(given.picture.cameraCm - 150)).toBeGreaterThanOrEqual(20);
  }
  expect(counts.get('use')).toBeGreaterThan(200);
  for (const why of [
    'not-at-rest',
    'mirror-unknown',
    'widths-never',
    'level-unknown',
    'nod-unchecked',
    'too-near',
    'no-ruler',
  ])
    expect(counts.get(why) ?? 0, why).toBeGreaterThan(25);
});
