import { expect, test } from 'vitest';
import { afterTheFirstPass } from '#calculators/afterTheFirstPass.ts';
import { startState } from '#calculators/startState.ts';
import { afterTheFirstPassSays, skinCaution, stepWords } from '#words/afterTheFirstPass.ts';

const start = startState(afterTheFirstPass);
const at = (part: Partial<typeof start>) => afterTheFirstPass.solve({ ...start, ...part }).again;

test('[hand] the default brow shows every answer: add at the arch top, stop at the others, each with its reason', () => {
  const again = at({});
  if (!again.ok) throw new Error(again.reason);
  expect(Object.fromEntries(Object.entries(again.marks).map(([mark, step]) => [mark, stepWords(step)]))).toEqual({
    frontTop: 'Stop: not shown', archTop: 'Add here, 1.5 mm', frontLower: 'Stop: not shown', archLower: 'Stop: 1.2 mm over', tail: 'Stop: swollen',
  });
  const { answer, doubt } = afterTheFirstPassSays(again);
  expect(answer).toBe('Add here: arch top 1.5 mm, up to the outline and no further. Stop everywhere else.');
  expect(doubt).toBe('Past the outline: arch lower 1.2 mm. Pigment is not taken out; leave it, and say so to her. Short, but under a millimetre on swollen skin: tail. Look again when it has healed. Not shown: front top and front lower. Five marks together: real from 0.89 mm.');
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
  expect(afterTheFirstPassSays({ ok: false, reason: 'approved-on-swollen-skin' }).answer).toContain('swollen skin');
  expect(skinCaution('normal')).toBeUndefined();
  expect(skinCaution('numb')).toContain('Numbed');
  expect(skinCaution('swollen')).toContain('perfecting visit');
});
