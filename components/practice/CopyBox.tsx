import { Icon } from '#components/site/Icon.tsx';
import { saveIcon } from '#components/site/icons.ts';
import { onDemand } from '#components/site/onDemand.ts';
import type { Progress } from '#lib/practice/progress.ts';
import { notFetched } from '#words/fetching.ts';
import { copyPreview, deskWords, refusedCopy } from '#words/practiceDesk.ts';
import { useState } from 'preact/hooks';
import { SaveCopy } from './SaveCopy.tsx';

const reader = onDemand(() => import('./store.ts'));
const keeper = onDemand(() => import('./keep.ts'));

/** Save what is kept as a file; load one back after a preview. Loading only ever adds. */
export function CopyBox({ progress }: Readonly<{ progress: Progress }>) {
  const [said, setSaid] = useState('');
  const [waiting, setWaiting] = useState<Progress | undefined>();

  async function open(file: File | undefined) {
    setWaiting(undefined);
    if (!file) return;
    const by = await reader().catch(() => undefined);
    if (!by) return setSaid(notFetched('What reads a copy'));
    const text = file.size > by.largestCopy ? undefined : await file.text().catch(() => '');
    const copy =
      text === undefined ? ({ ok: false, reason: 'too-large' } as const) : by.readCopy(text, progress);
    setSaid(copy.ok ? copyPreview(copy.total, copy.fresh, copy.dropped) : refusedCopy(copy.reason));
    if (copy.ok && copy.fresh > 0) setWaiting(copy.progress);
  }

  async function add() {
    if (!waiting) return;
    const by = await keeper().catch(() => undefined);
    if (!by) return setSaid(notFetched('What keeps answers'));
    await by.keepProgress(waiting);
    setWaiting(undefined);
    setSaid(deskWords.added);
  }

  return (
    <section class="copy-box js-only no-print" aria-labelledby="copy-title">
      <h2 id="copy-title">{deskWords.copyTitle}</h2>
      <p>{deskWords.copyLine}</p>
      <div class="btns">
        <SaveCopy>
          <Icon of={saveIcon} />{' '}
        </SaveCopy>
        <label class="btn line file">
          {deskWords.load}
          <input
            class="vh"
            type="file"
            accept=".json,application/json"
            onChange={({ currentTarget }) => {
              void open(currentTarget.files?.[0]);
              currentTarget.value = '';
            }}
          />
        </label>
      </div>
      <div role="status">{said && <p class="notice plain">{said}</p>}</div>
      {waiting && (
        <div class="btns">
          <button class="btn" type="button" onClick={add}>
            {deskWords.add}
          </button>
          <button
            class="btn text"
            type="button"
            onClick={() => {
              setWaiting(undefined);
              setSaid('');
            }}
          >
            {deskWords.leave}
          </button>
        </div>
      )}
    </section>
  );
}
