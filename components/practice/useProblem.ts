import { itemSeed, readSeed } from '#lib/practice/itemSeed.ts';
import { stepsShown, type Rung } from '#lib/practice/ladder.ts';
import { mark, type Marked } from '#lib/practice/marking.ts';
import type { Answered } from '#lib/practice/progress.ts';
import { readDecimal } from '#lib/quantities/decimal.ts';
import { fixed } from '#words/number.ts';
import { practiceWords, refusedNumber, reviewWords, type BeadState } from '#words/practice.ts';
import { tied } from '#words/skills/say.ts';
import { isTypedKept } from '#components/site/typedToday.ts';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Bound, ProblemSettings } from './bound.ts';
import { putDown } from './putDown.ts';
import { today } from './today.ts';

export const setLength = 6;

type Judged = Readonly<{ reply: number | string; inWords: string; marked: Marked }>;
/** What one item has gone through; a new item starts from `fresh`. */
type Attempt = Readonly<{
  text: string;
  error?: string;
  judged?: Judged;
  tries: number;
  firstCredit: number;
  slip?: string;
  hints: number;
  isOpen: boolean;
  isKept: boolean;
  review: string;
}>;
const fresh: Attempt = {
  text: '',
  tries: 0,
  firstCredit: 0,
  hints: 0,
  isOpen: false,
  isKept: false,
  review: '',
};

/**
 * Storage lives in the browser only. It is fetched when a problem is first touched, so that it is there when
 * an answer comes.
 * Nothing when it cannot be fetched: the answer is put down without it, and the next page takes it up.
 */
const loadKeeping = async () => {
  try {
    const [keeping, { standingIn }, { keptNote }] = await Promise.all([
      import('./keep.ts'),
      import('#lib/practice/standing.ts'),
      import('./versionNotes.ts'),
    ]);
    return { ...keeping, standingIn, keptNote };
  } catch {
    return undefined;
  }
};

const typing = () => import('./typedAnswer.ts');

/** A link without a version is of the first: where that is today's, nothing needs to be fetched. */
const noteOnLink = (text: string | null, version: number): Promise<string> =>
  import('./versionNotes.ts').then(
    ({ linkNote }) => linkNote(text, version),
    () => practiceWords.linkNotRead,
  );

/**
 * What was typed or chosen before the script arrived, or restored by the browser: it is on the page but not
 * in the state.
 */
function typedEarlier(field: HTMLInputElement | null): string {
  if (!field) return '';
  const filled =
    field.type === 'radio' ? field.form?.querySelector<HTMLInputElement>('input:checked') : field;
  return filled?.value ?? '';
}

/**
 * Everything a problem remembers and does. The first render depends on the settings alone; address and
 * storage are read after it, and only for an untouched problem, so that nothing changes under the learner's
 * hands.
 */
export function useProblem<G>({ skill, main = false, inSet, seed: firstSeed }: Bound<G> & ProblemSettings) {
  const { words } = skill;
  const [index, setIndex] = useState(inSet?.index ?? 0);
  const [asked, setAsked] = useState(firstSeed);
  const [rung, setRung] = useState<Rung>(inSet?.rung ?? (main ? 'last-blank' : 'bare'));
  const [attempt, setAttempt] = useState(fresh);
  const [beads, setBeads] = useState<readonly BeadState[]>([]);
  const [notice, setNotice] = useState('');
  const [linkNote, setLinkNote] = useState('');
  const [keptNote, setKeptNote] = useState('');
  const heading = useRef<HTMLHeadingElement>(null);
  const field = useRef<HTMLInputElement>(null);
  const isTouched = useRef(false);
  const isReady = useRef(false);
  /** Something was typed into this problem, now or earlier today. */
  const hasTyped = useRef(false);
  /** A fetch that fails is tried again at the next touch. */
  const getReady = () => {
    if (isReady.current) return;
    isReady.current = true;
    void loadKeeping().then((keeping) => (isReady.current = keeping !== undefined));
  };
  const touch = () => {
    isTouched.current = true;
    getReady();
  };
  const change = (part: Partial<Attempt>) => {
    touch();
    setAttempt((before) => ({ ...before, ...part }));
  };

  const seed = asked ?? itemSeed(inSet ? 'mixed' : 'practice', '', skill.id, index);
  const dealt = useMemo(() => {
    const given = skill.given(seed);
    return {
      given,
      answer: skill.answer(given),
      slips: skill.slips.map(({ id, value, credit }) => ({ id, credit, value: value(given) })),
      steps: skill.steps(given).map(({ id, values }) => ({
        hint: words.steps[id]?.hint ?? '',
        done: tied(words.steps[id]?.done(values) ?? ''),
      })),
    };
  }, [skill, words, seed]);
  const { given, answer, slips, steps } = dealt;
  const unit = answer.kind === 'number' ? answer.unit : '';
  const shown = stepsShown(rung, steps.length);

  useEffect(() => {
    const typed = typedEarlier(field.current);
    if (typed) setText(typed);
    const takenUp = isTypedKept() ? takeUpTyped(typed) : undefined;
    if (inSet && !inSet.isFirst) heading.current?.focus();
    if (!main) return undefined;
    const link = new URLSearchParams(location.search);
    const wanted = readSeed(link.get('seed'));
    if (wanted !== undefined) {
      setAsked(wanted);
      if (link.has('version') || skill.version > 1)
        void noteOnLink(link.get('version'), skill.version).then(setLinkNote);
    }
    let stop: (() => void) | undefined;
    void Promise.all([loadKeeping(), takenUp]).then(([keeping]) => {
      stop = keeping?.onKept(({ progress, newer }) => {
        if (newer) setNotice(practiceWords.newer);
        setKeptNote(keeping.keptNote(progress, skill));
        const standing = keeping.standingIn(progress, skill);
        if (isTouched.current || standing.done === 0) return;
        isTouched.current = true;
        setRung(standing.rung);
        setIndex(standing.done);
      });
    });
    return () => stop?.();
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- what is kept is asked for once, on arrival.
  }, []);

  const isSettled = attempt.isKept || attempt.judged?.marked.right === true;
  useEffect(() => {
    if (!hasTyped.current) return;
    const { text } = attempt;
    typing().then(
      (by) => by.keepTypedAnswer(skill, text && !isSettled ? { seed, index, rung, text } : undefined),
      () => undefined,
    );
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- a problem keeps its skill.
  }, [attempt.text, isSettled, seed, index, rung]);

  /** What was typed earlier today comes back with its item, unless a link asks for another. */
  async function takeUpTyped(filledIn: string) {
    const by = await typing().catch(() => undefined);
    const found = by?.typedAnswer(skill);
    if (!by || !found || (isTouched.current && (found === 'lost' || found.text !== filledIn))) return;
    if (found === 'lost') return setNotice(by.typedWords.problemLost);
    const linked = main ? readSeed(new URLSearchParams(location.search).get('seed')) : undefined;
    if (found.seed !== (inSet ? seed : (linked ?? found.seed))) return;
    if (!inSet) {
      setAsked(found.seed);
      setIndex(found.index);
      setRung(found.rung);
    }
    setText(found.text);
  }

  async function keep(solved: boolean, { firstCredit: credit, tries, hints, slip, isKept }: Attempt) {
    if (isKept) return;
    const answered: Answered = {
      skill: skill.id,
      version: skill.version,
      seed,
      day: today(),
      atMs: Date.now(),
      rung,
      credit,
      tries,
      hints,
      solved,
      ...(slip ? { slip } : {}),
    };
    putDown(answered);
    change({ isKept: true });
    const bead = !solved ? 'none' : credit === 1 && hints === 0 ? 'full' : 'half';
    inSet?.onDone(bead);
    if (main) setBeads((before) => [...(before.length >= setLength ? [] : before), bead]);
    const keeping = await loadKeeping();
    if (!keeping) return;
    const { daysUntil, keepAnswer, standingIn } = keeping;
    const kept = await keepAnswer(answered);
    const next = standingIn(kept.progress, skill).review;
    change({ review: next ? reviewWords(daysUntil(next.due)) : '' });
    setNotice(kept.newer ? practiceWords.newer : kept.kind === 'memory' ? practiceWords.notSaved : '');
  }

  /** The reply as a value, or what is wrong with what was typed. */
  function read(): Readonly<{ reply: number | string } | { error: string }> {
    if (answer.kind === 'choice')
      return attempt.text === '' ? { error: practiceWords.choose } : { reply: attempt.text };
    const number = readDecimal(attempt.text, unit);
    return number.ok ? { reply: number.value } : { error: refusedNumber(number.reason, unit) };
  }

  function inWords(reply: number | string): string {
    if (typeof reply === 'string') return words.option(reply, given);
    return `${reply === Number(reply.toFixed(1)) ? fixed(reply) : String(reply).replace('-', '−')} ${unit}`;
  }

  function check() {
    const typed = read();
    if ('error' in typed) {
      change({ error: typed.error });
      field.current?.focus();
      return;
    }
    const marked = mark(answer, slips, typed.reply);
    const { error: _, ...before } = attempt;
    const slip = before.slip ?? (marked.right ? undefined : marked.slipId);
    const next: Attempt = {
      ...before,
      judged: { reply: typed.reply, inWords: inWords(typed.reply), marked },
      tries: before.tries + 1,
      firstCredit: before.tries === 0 && !before.isKept ? marked.credit : before.firstCredit,
      ...(slip ? { slip } : {}),
    };
    isTouched.current = true;
    setAttempt(next);
    if (marked.right) void keep(true, next);
  }

  function tryAgain() {
    setAttempt(({ judged: _, ...before }) => before);
    field.current?.focus();
  }

  function setText(text: string) {
    touch();
    hasTyped.current = true;
    setAttempt(({ error: _, ...before }) => ({ ...before, text }));
  }

  /** Opening the worked answer before being right ends the item: it counts as not solved. */
  function openWorked(isOpen: boolean) {
    if (isOpen === attempt.isOpen) return;
    change({ isOpen });
    if (isOpen && !attempt.judged?.marked.right && shown < steps.length) void keep(false, attempt);
  }

  async function newNumbers() {
    isTouched.current = true;
    if (attempt.tries > 0) await keep(attempt.judged?.marked.right === true, attempt);
    if (inSet) {
      inSet.onNext();
      return;
    }
    if (rung === 'worked') setRung('last-blank');
    else if (main && (attempt.isKept || attempt.tries > 0)) {
      const keeping = await loadKeeping();
      if (keeping) setRung(keeping.standingIn((await keeping.keptNow()).progress, skill).rung);
    }
    setAsked(undefined);
    setLinkNote('');
    setIndex(index + 1);
    setAttempt(fresh);
    heading.current?.focus();
  }

  return {
    ...dealt,
    seed,
    unit,
    rung,
    shown,
    attempt,
    beads,
    notice,
    versionNote: [linkNote, keptNote].filter(Boolean).join(' '),
    heading,
    field,
    getReady,
    change,
    setRung,
    setText,
    check,
    tryAgain,
    openWorked,
    newNumbers,
  };
}
