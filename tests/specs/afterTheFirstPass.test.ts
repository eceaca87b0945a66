import { expect, test } from 'vitest';
import { afterTheFirstPass } from '#calculators/afterTheFirstPass.ts';
import { fromAddress, toAddress } from '#calculators/address.ts';
import { startState } from '#calculators/startState.ts';
import { afterTheFirstPassSays, skinCaution, stepWords } from '#words/afterTheFirstPass.ts';

const start = startState(afterTheFirstPass);
const at = (part: Partial<typeof start>) => afterTheFirstPass.solve({ ...start, ...part }).again;

test('[hand] the default brow: add at the arch top, whose lower edge is on its line; stop at the others, each with its reason', () => {
  const again = at({});
  if (!again.ok) throw new Error(again.reason);
  expect(
    Object.fromEntries(Object.entries(again.marks).map(([mark, step]) => [mark, stepWords(step)])),
  ).toEqual({
    frontTop: 'Stop: not shown',
    archTop: 'Add here, 1.5 mm',
    frontLower: 'Stop: not shown',
    archLower: 'Stop: not shown',
    tail: 'Stop: swollen',
  });
  const { answer, doubt } = afterTheFirstPassSays(again);
  expect(answer).toBe(
    'Add here, if the skin bears it: arch top 1.5 mm, to the outline and no further. Stop everywhere else.',
  );
  expect(doubt).toBe(
    'Short, but under a millimetre on swollen skin: tail. Look again when it has healed. Not shown: front top, front lower and arch lower. Five marks together: real from 0.89 mm.',
  );
});

test('[hand] both edges of the arch read lower by nearly the same: the sentence asks for another reading and adds nothing', () => {
  const again = at({ archLowerNow: 25.8 });
  if (!again.ok) throw new Error(again.reason);
  expect([stepWords(again.marks.archTop), stepWords(again.marks.archLower)]).toEqual([
    'Both moved: read again',
    'Both moved: read again',
  ]);
  const { answer, doubt } = afterTheFirstPassSays(again);
  expect(answer).toBe(
    'Both edges of the arch moved the same way: read them again, level first. Add nothing there until you have. Stop everywhere else.',
  );
  expect(answer + doubt).not.toContain('Add here');
  expect(doubt).toMatch(/^If both still read alike, the brow has shifted, not the pigment: leave it\. /);
  const tailToo = afterTheFirstPassSays(at({ archLowerNow: 25.8, skin: 'normal' })).answer;
  expect(tailToo).toBe(
    'Both edges of the arch moved the same way: read them again, level first. Add nothing there until you have. Elsewhere, add here, if the skin bears it: tail 0.9 mm, to the outline and no further. Stop everywhere else.',
  );
  expect(
    afterTheFirstPassSays(at({ archLowerNow: 25.8, frontTopNow: 26.5, frontLowerNow: 18.6 })).answer,
  ).toMatch(/^Both edges of the front and of the arch moved/);
});

test('[hand] an edge past its line stops the edge across from it, in words', () => {
  const again = at({ archTopNow: 30.5, archLowerNow: 26 });
  if (!again.ok) throw new Error(again.reason);
  expect([stepWords(again.marks.archTop), stepWords(again.marks.archLower)]).toEqual([
    'Stop: it would be thicker',
    'Stop: 1.0 mm over',
  ]);
  expect(afterTheFirstPassSays(again).answer).toMatch(/^Stop: nowhere may pigment be added/);
  expect(afterTheFirstPassSays(again).doubt).toContain(
    'Short, but the other edge is past its line: arch top. Filled, the brow would be thicker than she approved.',
  );
});

test('[hand] a link made when the figure began with the lower edge 1.2 over means the same after it', () => {
  const old = fromAddress(afterTheFirstPass, 'archTopNow=30');
  expect(old.refused).toEqual([]);
  expect(old.state).toEqual({ ...start, archTopNow: 30, archLowerNow: 25.8 });
  expect(toAddress(afterTheFirstPass, old.state)).toBe('archTopNow=30&archLowerNow=25.8');
  const now = { ...start, archTopNow: 30 };
  expect(toAddress(afterTheFirstPass, now)).toBe('archTopNow=30&archLowerNow=27');
  expect(fromAddress(afterTheFirstPass, toAddress(afterTheFirstPass, now)).state).toEqual(now);
  expect(toAddress(afterTheFirstPass, start)).toBe('');
  for (const query of ['', 'from=lesson', 'nothing=1'])
    expect(fromAddress(afterTheFirstPass, query).state, query).toEqual(start);
});

test('[hand] on normal skin the tail may be filled; a brow that meets its outline is finished; fewer readings show less', () => {
  expect(afterTheFirstPassSays(at({ skin: 'normal' })).answer).toContain('arch top 1.5 mm and tail 0.9 mm');
  const met = at({ frontTopNow: 25, archTopNow: 33, frontLowerNow: 17, archLowerNow: 27, tailNow: 64 });
  expect(afterTheFirstPassSays(met).answer).toMatch(/^Stop: nowhere/);
  expect(afterTheFirstPassSays(met).doubt).not.toMatch(/Past|Short/);
  const once = at({ readings: 1, error: 0.6 });
  expect(once.ok && once.marks.archTop.step).toEqual({ do: 'stop', because: 'not-shown' });
});

test('[hand] lying down or with raised brows nothing is compared, and both say why; the skin is told', () => {
  expect(afterTheFirstPassSays(at({ posture: 'lying' })).answer).toContain('sitting up');
  expect(afterTheFirstPassSays(at({ pose: 'raised' })).answer).toContain('at rest');
  expect(afterTheFirstPassSays({ ok: false, reason: 'approved-on-swollen-skin' }).answer).toContain(
    'swollen skin',
  );
  expect(skinCaution('normal')).toBeUndefined();
  expect(skinCaution('numb')).toContain('Numbed');
  expect(skinCaution('swollen')).toContain('perfecting visit');
});
