import { expect, test } from 'vitest';
import { afterFirstPass, browAfterFirstPass } from '#lib/mapping/again/afterFirstPass.ts';
import { nextStep } from '#lib/mapping/again/nextStep.ts';
import { shortOfOutlineMm, wayOut } from '#lib/mapping/again/shortOfOutline.ts';
import type { Brow } from '#lib/mapping/marks/brow.ts';
import { forBrowMarks } from '#lib/mapping/marks/browRecord.ts';
import { browMarks, type SkinState, type Taken } from '#lib/mapping/marks/markSet.ts';
import { intervalAround } from '#lib/quantities/interval.ts';
import { outline, choices } from './againOutline.ts';

const rest: Taken = { pose: 'rest', posture: 'sitting', skin: 'normal' };

const taken = (skin: SkinState) => ({ approved: rest, now: { ...rest, skin } });

const moved = (by: Partial<Record<keyof Brow, readonly [out: number, up: number]>>): Brow =>
  forBrowMarks((mark) => {
    const [out, up] = by[mark] ?? [0, 0];
    return { uMm: outline[mark].uMm + out, vMm: outline[mark].vMm + up };
  });

test('[hand] short of the outline: down from a top, up from a lower edge, inward from the tail', () => {
  expect(browMarks.map(wayOut)).toEqual(['down', 'up', 'up', 'down', 'outward']);
  const inside = moved({
    frontLower: [9, 1.5],
    frontTop: [9, -1.5],
    archTop: [-9, -1.5],
    archLower: [9, 1.5],
    tail: [-1.5, 9],
  });
  for (const mark of browMarks) {
    expect(shortOfOutlineMm(mark, outline[mark], inside[mark]), mark).toBeCloseTo(1.5, 12);
    expect(shortOfOutlineMm(mark, inside[mark], outline[mark]), mark).toBeCloseTo(-1.5, 12);
  }
});

test('[hand] one brow: every kind of answer, on normal and on swollen skin', () => {
  const pigment = moved({ archTop: [0, -1.5], tail: [-0.95, 0], frontLower: [0, -1.2], frontTop: [0, 0.7] });
  const answer = browAfterFirstPass(outline, pigment, taken('swollen'), choices);
  if (!answer.ok) throw new Error(answer.reason);
  expect(answer.realFromMm).toBeCloseTo(0.894, 2);
  expect(answer.marks.archTop.step).toEqual({ do: 'add-here', addMm: expect.closeTo(1.5, 12) });
  expect(answer.marks.tail.step).toEqual({ do: 'stop', because: 'swollen' });
  expect(answer.marks.frontLower.step).toEqual({ do: 'stop', because: 'over' });
  expect(answer.marks.frontTop.step).toEqual({ do: 'stop', because: 'not-shown' });
  expect(answer.marks.archLower.step).toEqual({ do: 'stop', because: 'not-shown' });
  for (const skin of ['normal', 'numb'] as const) {
    const other = browAfterFirstPass(outline, pigment, taken(skin), choices);
    expect(other.ok && other.marks.tail.step, skin).toEqual({
      do: 'add-here',
      addMm: expect.closeTo(0.95, 12),
    });
  }
});

test('[hand] both edges of the arch read lower by nearly the same: nothing is added, both are read again', () => {
  // Top 1.5 short and lower edge 1.2 over: filled, the arch would run from 25.8 to 33.0, 7.2 mm, where 6.0
  // was approved.
  const steps = (by: Parameters<typeof moved>[0], skin: SkinState = 'swollen') => {
    const answer = browAfterFirstPass(outline, moved(by), taken(skin), choices);
    if (!answer.ok) throw new Error(answer.reason);
    return answer.marks;
  };
  for (const skin of ['normal', 'numb', 'swollen'] as const) {
    const both = steps({ archTop: [0, -1.5], archLower: [0, -1.2] }, skin);
    expect([both.archTop.step, both.archLower.step], skin).toEqual([
      { do: 'read-again' },
      { do: 'read-again' },
    ]);
    const up = steps({ frontTop: [0, 1.3], frontLower: [0, 1.3] }, skin);
    expect([up.frontTop.step, up.frontLower.step], skin).toEqual([
      { do: 'read-again' },
      { do: 'read-again' },
    ]);
  }
  // Half as far is still nearer to "moved as well" than to "stayed"; less than half is not.
  expect(steps({ archTop: [0, -1.6], archLower: [0, -0.8] }).archTop.step.do).toBe('read-again');
  expect(steps({ archTop: [0, -1.6], archLower: [0, -0.7] }).archTop.step.do).toBe('add-here');
  // Apart in opposite ways is not a shift: short at both edges, both are filled; a shift too small to be
  // shown is nothing.
  expect([
    steps({ archTop: [0, -1.5], archLower: [0, 1.5] }).archTop.step.do,
    steps({ archTop: [0, -1.5], archLower: [0, 1.5] }).archLower.step.do,
  ]).toEqual(['add-here', 'add-here']);
  expect(steps({ archTop: [0, -0.8], archLower: [0, -0.8] }).archTop.step).toEqual({
    do: 'stop',
    because: 'not-shown',
  });
});

test('[hand] filling that would make the brow thicker than approved stops: top 2.5 short, lower edge 1.0 over', () => {
  const answer = browAfterFirstPass(
    outline,
    moved({ archTop: [0, -2.5], archLower: [0, -1] }),
    taken('normal'),
    choices,
  );
  expect(answer.ok && answer.marks.archTop.step).toEqual({ do: 'stop', because: 'thicker' });
  expect(answer.ok && answer.marks.archLower.step).toEqual({ do: 'stop', because: 'over' });
});

test('[hand] the limits: exactly zero inside is not shown; exactly 1 mm on swollen skin may be added', () => {
  expect(nextStep({ short: intervalAround(1, 0.5, 2) }, 'normal', 1)).toEqual({
    do: 'stop',
    because: 'not-shown',
  });
  expect(nextStep({ short: intervalAround(-1, 0.5, 2) }, 'normal', 1)).toEqual({
    do: 'stop',
    because: 'not-shown',
  });
  expect(nextStep({ short: intervalAround(1, 0.49, 2) }, 'swollen', 1)).toEqual({ do: 'add-here', addMm: 1 });
  expect(nextStep({ short: intervalAround(0.99, 0.4, 2) }, 'swollen', 1)).toEqual({
    do: 'stop',
    because: 'swollen',
  });
  expect(nextStep({ short: intervalAround(-0.5, 0.2, 2) }, 'swollen', 1)).toEqual({
    do: 'stop',
    because: 'over',
  });
  expect(nextStep({ short: intervalAround(-5, 0.2, 2) }, 'normal', 1)).toEqual({
    do: 'stop',
    because: 'over',
  });
});

test('[hand] another pose, another posture or an outline approved on swollen skin is refused; numb and swollen later are not', () => {
  const with_ = (approved: Taken, now: Taken) => {
    const answer = afterFirstPass(
      { right: outline, left: outline },
      { right: outline, left: outline },
      { approved, now },
      choices,
    );
    return answer.ok ? 'ok' : answer.reason;
  };
  expect(with_(rest, { ...rest, pose: 'raised' })).toBe('pose-differs');
  expect(with_(rest, { ...rest, posture: 'lying' })).toBe('posture-differs');
  expect(with_({ ...rest, skin: 'swollen' }, { ...rest, skin: 'swollen' })).toBe('approved-on-swollen-skin');
  expect(with_({ ...rest, skin: 'numb' }, rest)).toBe('ok');
  for (const skin of ['normal', 'numb', 'swollen'] as const)
    expect(with_(rest, { ...rest, skin })).toBe('ok');
  expect(
    browAfterFirstPass(outline, outline, { approved: rest, now: { ...rest, posture: 'lying' } }, choices),
  ).toEqual({ ok: false, reason: 'posture-differs' });
});
