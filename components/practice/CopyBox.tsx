import { Icon } from '#components/site/Icon.tsx';
import { saveIcon } from '#components/site/answerIcons.ts';
import type { Progress } from '#lib/practice/progress.ts';
import { practiceWords } from '#words/practice.ts';
import { copyPreview, deskWords, refusedCopy } from '#words/practiceDesk.ts';
import { useState } from 'preact/hooks';

/** Save what is kept as a file; load one back after a preview. Loading only ever adds. */
export function CopyBox({ progress }: Readonly<{ progress: Progress }>) {
  const [said, setSaid] = useState('');
  const [waiting, setWaiting] = useState<Progress | undefined>();

  async function open(file: File | undefined) {
    setWaiting(undefined);
    if (!file) return;
    const { largestCopy, readCopy } = await import('./store.ts');
    const copy = file.size > largestCopy ? ({ ok: false, reason: 'too-large' } as const) : readCopy(await file.text(), progress);
    setSaid(copy.ok ? copyPreview(copy.total, copy.fresh, copy.dropped) : refusedCopy(copy.reason));
    if (copy.ok && copy.fresh > 0) setWaiting(copy.progress);
  }

  async function add() {
    if (!waiting) return;
    const { keepProgress } = await import('./keep.ts');
    await keepProgress(waiting);
    setWaiting(undefined);
    setSaid(deskWords.added);
  }

  return (
    <section class="copy-box js-only no-print" aria-labelledby="copy-title">
      <h2 id="copy-title">{deskWords.copyTitle}</h2>
      <p>{deskWords.copyLine}</p>
      <div class="btns">
        <button class="btn line" type="button" onClick={() => void import('./saveCopy.ts').then(({ saveCopy }) => saveCopy())}><Icon of={saveIcon} /> {practiceWords.saveCopy}</button>
        <label class="btn line file">
          {deskWords.load}
          <input class="vh" type="file" accept=".json,application/json" onChange={({ currentTarget }) => { void open(currentTarget.files?.[0]); currentTarget.value = ''; }} />
        </label>
      </div>
      <div role="status">
        {said && <p class="notice plain">{said}</p>}
      </div>
      {waiting && (
        <div class="btns">
          <button class="btn" type="button" onClick={add}>{deskWords.add}</button>
          <button class="btn text" type="button" onClick={() => { setWaiting(undefined); setSaid(''); }}>{deskWords.leave}</button>
        </div>
      )}
    </section>
  );
}
