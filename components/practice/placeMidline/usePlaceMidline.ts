import type { PracticeLevel } from '#lib/face/disturbance.ts';
import type { Answered } from '#lib/practice/progress.ts';
import type { PlaceMidlineGiven } from '#skills/mapping/placeMidline.ts';
import { placeMidlineWords } from '#words/skills/placeMidline.ts';
import { useEffect, useRef, useState } from 'preact/hooks';
import { putDown } from '../putDown.ts';
import { today } from '../today.ts';
import { type Attempt, type Pin, fresh, usePins } from './usePins.ts';

export type Shown = Readonly<{ seed: number; level: PracticeLevel }>;
type Desk = typeof import('./desk.ts');

/** The face that stands in the page without scripts. */
export const firstFace: Shown = { seed: 1, level: 1 };
const skillId = 'place-the-midline';
const levels = [0, 1, 2, 3, 4] as const;
const levelFrom = (text: string): PracticeLevel | undefined => levels.find((level) => String(level) === text);

/** Nothing when it cannot be fetched: the answer is put down without it, and the next page takes it up. */
const loadKeeping = async () => {
  try {
    const [keeping, { standingIn }, { keptNote }, { practiceWords, reviewWords }] = await Promise.all([
      import('../keep.ts'),
      import('#lib/practice/standing.ts'),
      import('../versionNotes.ts'),
      import('./desk.ts'),
    ]);
    return { ...keeping, standingIn, keptNote, practiceWords, reviewWords };
  } catch {
    return undefined;
  }
};

/** `version` of the exercise today, and what a link to one of its faces carries for it. */
export type ExerciseVersion = Readonly<{ version: number; inLink: string }>;

/**
 * Everything the exercise remembers and does. The first render is the server's; address, drawing and storage
 * come after it.
 */
export function usePlaceMidline({ version, inLink }: ExerciseVersion) {
  const skill = { id: skillId, version };
  const [shown, setShown] = useState(firstFace);
  const [seedText, setSeedText] = useState(String(firstFace.seed));
  const [faults, setFaults] = useState<Readonly<{ seed?: string; level?: string }>>({});
  const [active, setActive] = useState<Pin>('top');
  const { attempt, now, write, isSettled, forget, ...pins } = usePins(setActive);
  const [desk, setDesk] = useState<Desk | undefined>();
  const [given, setGiven] = useState<PlaceMidlineGiven | undefined>();
  const [notice, setNotice] = useState('');
  const [linkNote, setLinkNote] = useState('');
  const skipped = useRef(0);
  const change = (part: Partial<Attempt>) => write({ ...now.current, ...part });

  /** Drawing and marking, fetched once. A failed fetch says so and can be tried again. */
  async function withDesk(): Promise<Desk | undefined> {
    try {
      const loaded = desk ?? (await import('./desk.ts'));
      setDesk(loaded);
      setNotice((before) => (before === placeMidlineWords.loadFailed ? '' : before));
      return loaded;
    } catch {
      setNotice(placeMidlineWords.loadFailed);
      return undefined;
    }
  }

  async function open(next: Shown) {
    setShown(next);
    setSeedText(String(next.seed));
    forget();
    const loaded = await withDesk();
    if (loaded) setGiven(loaded.deal(next.seed, next.level));
  }

  async function readAddress() {
    const loaded = await withDesk();
    if (!loaded) return;
    const asked = new URLSearchParams(location.search);
    const [seedAsked, levelAsked] = [asked.get('seed'), asked.get('level')];
    if (seedAsked !== null) setLinkNote(loaded.linkNote(asked.get('version')));
    const seed = loaded.readSeed(seedAsked);
    const level = levelAsked === null ? undefined : levelFrom(levelAsked);
    const badSeed = seedAsked !== null && seed === undefined;
    setFaults({
      ...(badSeed && { seed: placeMidlineWords.badFace }),
      ...(levelAsked !== null && level === undefined && { level: placeMidlineWords.badLevel }),
    });
    const linked = { seed: seed ?? firstFace.seed, level: level ?? firstFace.level };
    const { face, placed, said } = loaded.typedPins(version, linked, location.search);
    setNotice(said);
    if (face.seed !== firstFace.seed || face.level !== firstFace.level) await open(face);
    if (placed && now.current === fresh) forget(placed);
    if (badSeed) setSeedText(seedAsked.slice(0, 20));
  }

  // oxlint-disable-next-line react-hooks/exhaustive-deps -- the address is read once, on arrival.
  useEffect(() => void readAddress(), []);

  useEffect(() => {
    desk?.keepPins(version, shown, attempt, attempt === fresh);
  }, [attempt, shown, desk, version]);

  async function keep(solved: boolean, { firstCredit: credit, tries, hints, slip, isKept }: Attempt) {
    if (isKept) return;
    const answered: Answered = {
      skill: skill.id,
      version,
      seed: shown.seed,
      day: today(),
      atMs: Date.now(),
      rung: 'bare',
      credit,
      tries,
      hints,
      solved,
      ...(slip ? { slip } : {}),
    };
    putDown(answered);
    change({ isKept: true });
    const keeping = await loadKeeping();
    if (!keeping) return;
    const { daysUntil, keepAnswer, standingIn, keptNote, practiceWords, reviewWords } = keeping;
    const kept = await keepAnswer(answered);
    const next = standingIn(kept.progress, skill).review;
    change({ review: next ? reviewWords(daysUntil(next.due)) : '' });
    setNotice(
      kept.newer
        ? practiceWords.newer
        : kept.kind === 'memory'
          ? practiceWords.notSaved
          : keptNote(kept.progress, skill),
    );
  }

  /** A face that was tried and not solved is kept as such when the learner leaves it. */
  async function moveOn(next: Shown) {
    if (attempt.tries > 0) await keep(false, attempt);
    setFaults({});
    setLinkNote('');
    history.replaceState(null, '', `?seed=${next.seed}&level=${next.level}${inLink}`);
    await open(next);
  }

  /** True when the thread was judged; a refused number or a failed fetch stops it. */
  async function check(): Promise<boolean> {
    if (isSettled || attempt.drafts.top || attempt.drafts.foot) return false;
    const loaded = await withDesk();
    if (!loaded) return false;
    const face = given ?? loaded.deal(shown.seed, shown.level);
    setGiven(face);
    const judged = loaded.judge(face, attempt.across);
    if (!judged) return false;
    const slip = attempt.slip ?? (judged.marked.right ? undefined : judged.marked.slipId);
    const isFirst = attempt.tries === 0 && !attempt.isKept;
    const next: Attempt = {
      ...attempt,
      judged,
      tries: attempt.tries + 1,
      firstCredit: isFirst ? judged.marked.credit : attempt.firstCredit,
      ...(slip ? { slip } : {}),
    };
    write(next);
    if (judged.marked.right) void keep(true, next);
    return true;
  }

  async function showMarks(hasMarks: boolean) {
    change({ hasMarks, hints: 1 });
    const loaded = await withDesk();
    if (loaded && !given) setGiven(loaded.deal(shown.seed, shown.level));
  }

  async function another() {
    const loaded = await withDesk();
    if (!loaded) return;
    const keeping = await loadKeeping();
    const done = keeping ? keeping.standingIn((await keeping.keptNow()).progress, skill).done : 0;
    let seed = shown.seed;
    while (seed === shown.seed) seed = loaded.itemSeed('practice', '', skillId, done + ++skipped.current);
    await moveOn({ seed, level: shown.level });
  }

  async function showTyped() {
    const loaded = await withDesk();
    if (!loaded) return undefined;
    const seed = loaded.readSeed(seedText.trim());
    if (seed === undefined) return setFaults({ ...faults, seed: placeMidlineWords.badFaceTyped });
    await moveOn({ seed, level: shown.level });
  }

  const tryAgain = () => {
    const { judged: _, ...before } = now.current;
    write(before);
  };
  return {
    shown,
    seedText,
    setSeedText,
    faults,
    active,
    setActive,
    attempt,
    desk,
    given,
    notice,
    linkNote,
    ...pins,
    check,
    showMarks,
    another,
    showTyped,
    tryAgain,
    chooseLevel: (text: string) => moveOn({ seed: shown.seed, level: levelFrom(text) ?? shown.level }),
  };
}
