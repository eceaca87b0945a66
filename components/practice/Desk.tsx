import { noProgress, type Progress } from '#lib/practice/progress.ts';
import type { Standing, Versioned } from '#lib/practice/standing.ts';
import { mendedWords } from '#words/beingMended.ts';
import { practiceWords } from '#words/practice.ts';
import { deskWords, dueWords, tallyWords } from '#words/practiceDesk.ts';
import { useEffect, useState } from 'preact/hooks';
import { CopyBox } from './CopyBox.tsx';
import { isAsked } from './isAsked.ts';
import { Tally } from './Tally.tsx';

type Listed = Versioned & Readonly<{ strand: string; name: string; summary: string }>;
type Row = Readonly<{ standing: Standing; isDue: boolean; others: string }>;

/**
 * The list of skills with what was done, what is due today, the mixed set, and the copy. Counts appear after
 * loading.
 */
export default function Desk({ skills }: Readonly<{ skills: readonly Listed[] }>) {
  const [progress, setProgress] = useState<Progress>(noProgress);
  const [rows, setRows] = useState<Readonly<Record<string, Row>> | undefined>();
  const [notice, setNotice] = useState('');

  useEffect(() => {
    let stop: (() => void) | undefined;
    void Promise.all([
      import('./keep.ts'),
      import('#lib/practice/standing.ts'),
      import('./isSkillDue.ts'),
      import('./versionNotes.ts'),
    ]).then(
      ([{ onKept, today }, { standingIn }, { isSkillDue }, { keptNote }]) => {
        stop = onKept((kept) => {
          const day = today();
          setProgress(kept.progress);
          setNotice(
            kept.newer
              ? practiceWords.newer
              : kept.kind === 'memory'
                ? practiceWords.notSaved
                : kept.setAside > 0
                  ? deskWords.setAside
                  : '',
          );
          setRows(
            Object.fromEntries(
              skills.map((skill) => {
                const standing = standingIn(kept.progress, skill);
                return [
                  skill.id,
                  {
                    standing,
                    isDue: isSkillDue(skill.id, standing.review, day),
                    others: keptNote(kept.progress, skill),
                  },
                ];
              }),
            ),
          );
        });
      },
      () => setNotice(deskWords.notFetched),
    );
    return () => stop?.();
    // oxlint-disable-next-line react-hooks/exhaustive-deps -- the list never changes.
  }, []);

  const due = rows ? Object.values(rows).filter((row) => row.isDue).length : 0;
  return (
    <div class="desk">
      <p class="desk-due plain" role="status">
        {rows && due > 0 ? dueWords(due) : deskWords.reviewLine}
      </p>
      {notice && <p class="notice plain">{notice}</p>}
      <div class="mixed-door">
        <a class="btn" href="/practice/mixed/">
          {deskWords.mixed}
        </a>
        <p>{deskWords.mixedLine}</p>
      </div>
      <h2>{deskWords.skills}</h2>
      {[...new Set(skills.map(({ strand }) => strand))].map((strand) => (
        <section class="listed" key={strand}>
          <h3>{strand}</h3>
          <ul class="desk-list">
            {skills
              .filter((skill) => skill.strand === strand)
              .map(({ id, name, summary }) => {
                const row = rows?.[id];
                return (
                  <li>
                    <a href={`/practice/${id}/`}>
                      <span class="desk-name">{name}</span>
                      <span class="desk-line">{summary}</span>
                      <span class="desk-count">
                        <span>{tallyWords(row?.standing.done ?? 0, row?.standing.right ?? 0)}</span>
                        <Tally count={row?.standing.right ?? 0} />
                        {row?.others && <span>{row.others}</span>}
                        {!isAsked(id) && <b class="desk-mended">{mendedWords.mark}</b>}
                        {row?.isDue && <b class="desk-now">{deskWords.dueNow}</b>}
                      </span>
                    </a>
                  </li>
                );
              })}
          </ul>
        </section>
      ))}
      <CopyBox progress={progress} />
    </div>
  );
}
