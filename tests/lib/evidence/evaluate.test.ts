import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate, questionsOf, truthOf, type Truth } from '#lib/evidence/evaluate.ts';
import type { Answers, Condition, Rule } from '#lib/evidence/rule.ts';
import { mappingQuestions, mappingRules } from '#lib/mapping/rules.ts';

const asks = (question: string): Condition => ({ question, is: true });
const rule = (id: string, when: Condition, outcome: Rule['outcome']): Rule => ({
  id,
  when,
  outcome,
  facts: [],
  disputedBy: [],
  jurisdiction: 'anywhere',
});

describe('truthOf', () => {
  const truths: readonly Truth[] = ['yes', 'no', 'unknown'];
  const given: Answers = { yes: true, no: false };
  it('[table] follows Kleene’s strong tables for "all", "any" and "not"', () => {
    const all = [
      ['yes', 'no', 'unknown'],
      ['no', 'no', 'no'],
      ['unknown', 'no', 'unknown'],
    ];
    const any = [
      ['yes', 'yes', 'yes'],
      ['yes', 'no', 'unknown'],
      ['yes', 'unknown', 'unknown'],
    ];
    expect(truths.map((a) => truths.map((b) => truthOf({ all: [asks(a), asks(b)] }, given)))).toEqual(all);
    expect(truths.map((a) => truths.map((b) => truthOf({ any: [asks(a), asks(b)] }, given)))).toEqual(any);
    expect(truths.map((a) => truthOf({ not: asks(a) }, given))).toEqual(['no', 'yes', 'unknown']);
  });
  it('[hand] reads numbers at their limits, and no text as a number', () => {
    expect(truthOf({ question: 'n', below: 4 }, { n: 4 })).toBe('no');
    expect(truthOf({ question: 'n', below: 4 }, { n: 3.9 })).toBe('yes');
    expect(truthOf({ question: 'n', atLeast: 4 }, { n: 4 })).toBe('yes');
    expect(truthOf({ question: 'n', atLeast: 4 }, { n: 3.9 })).toBe('no');
    expect(truthOf({ question: 'n', atLeast: 4 }, { n: 'five' })).toBe('unknown');
    expect(truthOf({ question: 'n', atLeast: 4 }, { n: Number.NaN })).toBe('unknown');
    expect(truthOf({ all: [] }, {})).toBe('yes');
    expect(truthOf({ any: [] }, {})).toBe('no');
  });
});

describe('evaluate', () => {
  const rules = [
    rule('tell', asks('a'), 'tell'),
    rule('stop', { all: [asks('a'), asks('b')] }, 'refuse'),
    rule('again', asks('c'), 'measure-again'),
  ];
  it('[hand] gives the strongest outcome, hits strongest first, and what was not asked', () => {
    expect(evaluate(rules, { a: true, b: true, c: false })).toEqual({
      outcome: 'refuse',
      hits: ['stop', 'tell'],
      unasked: [],
      couldBecome: 'none',
    });
    expect(evaluate(rules, { a: true })).toEqual({
      outcome: 'tell',
      hits: ['tell'],
      unasked: ['b', 'c'],
      couldBecome: 'refuse',
    });
    expect(evaluate(rules, { a: false })).toEqual({
      outcome: 'none',
      hits: [],
      unasked: ['c'],
      couldBecome: 'measure-again',
    });
    expect(evaluate([], {})).toEqual({ outcome: 'none', hits: [], unasked: [], couldBecome: 'none' });
  });
  it('[property] answering more never takes back a rule that already speaks, and ends with nothing open', () => {
    const answer = fc.oneof(
      fc.boolean(),
      fc.integer({ min: 0, max: 12 }),
      fc.constantFrom(
        'not-shown',
        'few-see',
        'some-see',
        'most-see',
        'photo',
        'skin',
        'height',
        'width',
        'bridge',
      ),
    );
    const every = fc.record(Object.fromEntries(mappingQuestions.map((question) => [question, answer])));
    fc.assert(
      fc.property(every, fc.array(fc.constantFrom(...mappingQuestions)), (full, hidden) => {
        const part = Object.fromEntries(
          Object.entries(full).filter(([question]) => !hidden.some((name) => name === question)),
        );
        const some = evaluate(mappingRules, part);
        const whole = evaluate(mappingRules, full);
        expect(whole.hits).toEqual(expect.arrayContaining([...some.hits]));
        expect(some.unasked.every((question) => part[question] === undefined)).toBe(true);
      }),
    );
  });
});

describe('rules of the midline thread', () => {
  it('[hand] fire on the answers they are about', () => {
    const good: Answers<(typeof mappingQuestions)[number]> = {
      'midline-uses-brows': false,
      'midline-marks': 8,
      'marks-not-trusted': 0,
      'level-reference-named': true,
      'line-held-level': true,
      'mapped-at-rest': true,
      'mapped-upright': true,
      'mapped-on-normal-skin': true,
      'brows-still-settling': false,
      'same-pose': true,
      'same-posture': true,
      'same-skin': true,
      'eyes-closed-reading': true,
      'fronts-measured-from': 'bridge',
      'thread-checked': true,
      'front-anchor-named': true,
      'tail-past-the-line': false,
      'tail-tip-in-the-band': true,
      'thickness-measured': 'straight-across',
      'same-stations': true,
      'outline-told-bolder': true,
      'comparisons-counted': true,
      'own-pairs': 24,
      'pigment-ends': 'inside',
      'skin-swollen-now': false,
      'gap-mm': 2,
      band: 'most-see',
      'read-from': 'skin',
      'read-what': 'height',
      'photo-level-and-resting': false,
      'arches-planned': 'one',
      'arch-rule-named': true,
      'mirror-known': true,
      'approved-limits-written': true,
      'old-work-past-the-limits': false,
      'growth-told': true,
      'front-and-tail-opposite': false,
      'camera-distance-cm': 200,
      'nothing-under-a-part': false,
      'skin-changed-or-new-loss': false,
    };
    expect(evaluate(mappingRules, good)).toEqual({
      outcome: 'tell',
      hits: ['who-would-see-it'],
      unasked: [],
      couldBecome: 'none',
    });
    expect(evaluate(mappingRules, { ...good, 'midline-uses-brows': true }).outcome).toBe('refuse');
    expect(evaluate(mappingRules, { ...good, 'read-from': 'photo' }).hits).toContain(
      'from-a-photo-heights-only',
    );
    expect(
      evaluate(mappingRules, { ...good, 'read-from': 'photo', 'photo-level-and-resting': true }).hits,
    ).not.toContain('from-a-photo-heights-only');
    const photo = { ...good, 'read-from': 'photo', 'photo-level-and-resting': true } as const;
    expect(evaluate(mappingRules, photo).hits).toEqual(['who-would-see-it']);
    expect(evaluate(mappingRules, { ...photo, 'mirror-known': false }).hits).toContain('ask-if-mirrored');
    expect(evaluate(mappingRules, { ...photo, 'front-and-tail-opposite': true }).hits).toContain(
      'a-turn-fakes-widths',
    );
    expect(evaluate(mappingRules, { ...photo, 'camera-distance-cm': 149 }).hits).toContain(
      'near-cameras-shrink',
    );
    expect(evaluate(mappingRules, { ...photo, 'camera-distance-cm': 150 }).hits).not.toContain(
      'near-cameras-shrink',
    );
    expect(evaluate(mappingRules, { ...good, 'approved-limits-written': false }).hits).toContain(
      'approved-limits-stand-above-cover',
    );
    expect(evaluate(mappingRules, { ...good, 'old-work-past-the-limits': true }).hits).toContain(
      'never-chase-cover',
    );
    expect(evaluate(mappingRules, { ...good, 'growth-told': false }).hits).toContain(
      'a-brow-grows-at-every-refresh',
    );
    expect(evaluate(mappingRules, { ...good, band: 'not-shown' }).hits).toEqual([
      'not-shown-is-not-equal',
      'change-nothing-is-an-answer',
    ]);
    expect(evaluate(mappingRules, { ...good, 'nothing-under-a-part': true }).hits[0]).toBe(
      'nothing-under-it-nothing-drawn',
    );
    expect(evaluate(mappingRules, { ...good, 'skin-changed-or-new-loss': true })).toMatchObject({
      outcome: 'physician',
      hits: ['not-over-changed-skin', 'who-would-see-it'],
    });
    expect(evaluate(mappingRules, { ...good, 'arches-planned': 'two' })).toMatchObject({
      outcome: 'refuse',
      hits: ['one-arch-for-both-sides', 'who-would-see-it'],
    });
    expect(evaluate(mappingRules, { ...good, 'arch-rule-named': false })).toMatchObject({
      outcome: 'ask',
      hits: ['arch-rules-are-starting-points', 'who-would-see-it'],
    });
    expect(evaluate(mappingRules, { ...good, 'marks-not-trusted': 1 }).hits[0]).toBe(
      'which-mark-not-to-trust',
    );
  });
  it('[property] every question is asked by a rule, and every rule asks known questions', () => {
    const asked = mappingRules.flatMap(({ when }) => questionsOf<string>(when));
    expect([...new Set(asked)].toSorted()).toEqual([...mappingQuestions].toSorted());
  });
});
