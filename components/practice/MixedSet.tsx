import { mixedSet } from '#lib/practice/mixedSet.ts';
import type { Versioned } from '#lib/practice/standing.ts';
import { practiceWords, questionOf, setDone, type BeadState } from '#words/practice.ts';
import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Beads } from './Beads.tsx';
import type { ProblemSettings } from './bound.ts';
import { islandName } from './islandName.ts';
import WhichMarkNotToTrust from './islands/WhichMarkNotToTrust.tsx';

type Island = ComponentType<ProblemSettings>;
/** Each skill comes when its turn is near; the first question of a first set is on the page from the start. */
const islands = import.meta.glob<Readonly<{ default: Island }>>([
  './islands/*.tsx',
  '!./islands/WhichMarkNotToTrust.tsx',
]);
const setLength = 6;

/**
 * Six questions of different skills. Those that are asked come with their versions, in the order of a first
 * set. The first render is the same for everyone; storage is read after it.
 */
export default function MixedSet({ skills }: Readonly<{ skills: readonly Versioned[] }>) {
  const dealSet = (done: number, due: readonly string[]) =>
    mixedSet(
      skills.map(({ id }) => id),
      due,
      done,
      setLength,
    );
  const [items, setItems] = useState(() => dealSet(0, []));
  const [at, setAt] = useState(0);
  const [beads, setBeads] = useState<readonly BeadState[]>([]);
  const [round, setRound] = useState(0);
  const [fetched, setFetched] = useState<Readonly<Record<string, Island>>>({
    'which-mark-not-to-trust': WhichMarkNotToTrust,
  });
  const [isMissing, setIsMissing] = useState(false);
  const hasBegun = useRef(false);
  const end = useRef<HTMLDivElement>(null);

  useEffect(() => {
    let stop: (() => void) | undefined;
    void Promise.all([
      import('./keep.ts'),
      import('#lib/practice/standing.ts'),
      import('#lib/practice/schedule.ts'),
    ]).then(
      ([{ onKept, today }, { standingIn }, { isDue }]) => {
        stop = onKept(({ progress }) => {
          if (hasBegun.current) return;
          hasBegun.current = true;
          const day = today();
          setItems(
            dealSet(
              progress.answers.length,
              skills.filter((skill) => isDue(standingIn(progress, skill).review, day)).map(({ id }) => id),
            ),
          );
          setAt(0);
        });
      },
      // Without it the set that stands on the page is as good as any.
      () => undefined,
    );
    return () => stop?.();
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- a set is dealt once a round.
  }, [round]);

  const isOver = at === setLength;
  useEffect(() => {
    if (isOver) end.current?.focus();
  }, [isOver]);

  const fetchNear = () => {
    setIsMissing(false);
    items.slice(at, at + 2).forEach(({ id }, ahead) => {
      if (fetched[id]) return;
      const fetchIsland = islands[`./islands/${islandName(id)}.tsx`];
      fetchIsland?.().then(
        ({ default: island }) => setFetched((before) => ({ ...before, [id]: island })),
        () => ahead === 0 && setIsMissing(true),
      );
    });
  };
  // oxlint-disable-next-line react-hooks/exhaustive-deps -- what has come needs no second fetch.
  useEffect(fetchNear, [items, at]);

  const next = () => {
    hasBegun.current = true;
    setAt(at + 1);
    setBeads((before) => (before.length > at ? before : [...before, 'none']));
    scrollTo(0, 0);
  };
  const item = items[at];
  const Island = item && fetched[item.id];
  const right = beads.filter((bead) => bead === 'full' || bead === 'half').length;
  const again = () => {
    hasBegun.current = false;
    setBeads([]);
    setItems(dealSet(items[0]?.index ?? 0, []));
    setAt(0);
    setRound(round + 1);
  };

  return (
    <div
      onInput={() => {
        hasBegun.current = true;
      }}
    >
      <div class="prac-top">
        <p class="kicker">{questionOf(Math.min(at + 1, setLength), setLength)}</p>
        <Beads
          states={Array.from({ length: setLength }, (_, i) => beads[i] ?? (i === at ? 'here' : 'todo'))}
        />
      </div>
      {item && Island ? (
        <Island
          key={`${round} ${at} ${item.id} ${item.index}`}
          at="mixed"
          level={2}
          inSet={{
            index: item.index,
            isFirst: at === 0 && round === 0,
            rung: item.rung,
            onDone: (bead) => setBeads((before) => (before.length > at ? before : [...before, bead])),
            onNext: next,
          }}
        />
      ) : item ? (
        <div class="problem waiting" role="status">
          {isMissing && <p class="notice plain">{practiceWords.notFetched}</p>}
          {isMissing && (
            <button class="btn" type="button" onClick={fetchNear}>
              {practiceWords.tryAgain}
            </button>
          )}
        </div>
      ) : (
        <div class="set-end" ref={end} tabIndex={-1}>
          <p class="set-done plain">{setDone(right, setLength)}</p>
          <button class="btn" type="button" onClick={again}>
            {practiceWords.newSet}
          </button>
        </div>
      )}
    </div>
  );
}
