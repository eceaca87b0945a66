import { onDemand } from '#components/site/onDemand.ts';
import { notFetched } from '#words/fetching.ts';
import { practiceWords } from '#words/practice.ts';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

const saver = onDemand(() => import('./saveCopy.ts'));

/** The button that hands out everything that is kept as a file. `children`: its icon. */
export function SaveCopy({ children }: Readonly<{ children?: ComponentChildren }>) {
  const [isMissing, setMissing] = useState(false);
  const save = () =>
    saver()
      .then(({ saveCopy }) => {
        setMissing(false);
        return saveCopy();
      })
      .catch(() => setMissing(true));
  return (
    <>
      <button class="btn line" type="button" onClick={save}>
        {children}
        {practiceWords.saveCopy}
      </button>
      {isMissing && (
        <p class="notice plain" role="alert">
          {notFetched('What saves a copy')}
        </p>
      )}
    </>
  );
}
