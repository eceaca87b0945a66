import type { State } from '#calculators/spec.ts';
import { Icon } from '#components/site/Icon.tsx';
import { cautionIcon, linkIcon, printIcon } from '#components/site/icons.ts';
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { notFetched } from '#words/fetching.ts';
import { pullWords } from '#words/pull.ts';
import { onDemand } from '#components/site/onDemand.ts';
import { StepBack } from '../fields/StepBack.tsx';
import type {} from './askDesk.ts';
import type { MendedNotice } from '../mendedNotice.tsx';
import type { Desk } from './useCalculator.ts';

type Props<S extends State, R> = Readonly<{
  desk: Desk<S, R>;
  id: string;
  /** The calculator's own page: copied links lead there, from wherever they were copied. */
  address: string;
  picture: ComponentChildren;
  side: ComponentChildren;
  says: Readonly<{ answer: string; doubt: string }>;
  caution?: string | undefined;
  /** What the sums need and could not be fetched: said in place of the answer. */
  missing?: string | false | undefined;
  /** What was given, in words, for paper: there the fields are left out. */
  given?: string | undefined;
  /**
   * A tall picture: the sentence stands beside it, above the fields, so that it is seen without scrolling.
   */
  tall?: boolean;
  /** The picture has marks that are pulled. */
  pulled?: boolean;
  /** While the calculator is being mended: then no answer stands as advice. */
  mended?: MendedNotice | undefined;
  children?: ComponentChildren;
}>;

const stay = onDemand(() => import('./stayInView.ts'));

/**
 * The frame of every calculator: refused parts of a link, picture, fields, sentence, copy link, print, start
 * again.
 */
export function Frame<S extends State, R>({
  desk,
  id,
  address,
  picture,
  side,
  says,
  caution,
  missing,
  given,
  tall = false,
  pulled = false,
  mended,
  children,
}: Props<S, R>) {
  const [copied, setCopied] = useState('');
  const lacks = missing || desk.missing;
  const back = <StepBack {...desk} all={pulled ? 'marks' : 'numbers'} />;
  return (
    <div
      class="calculator"
      id={id}
      onAskDesk={({ detail: take }) => take(desk)}
      onFocusOut={desk.hold.letGo}
      onFocusIn={({ currentTarget }) =>
        void (
          innerWidth < 761 &&
          stay()
            .then((by) => by.stayInView(currentTarget))
            .catch(Boolean)
        )
      }
    >
      {mended?.box}
      {desk.refused}
      <div class={tall ? 'fig tall' : 'fig'}>
        <div class="pic">
          {picture}
          {pulled && (
            <div class="calc-tools pull no-print">
              <p class="hint plain" role="status">
                {desk.stop || pullWords}
              </p>
              {back}
            </div>
          )}
        </div>
        {given && <p class="on-paper plain small">{given}</p>}
        {/* The sentence stands above the fields on a phone: after them it would push them down as it arrives. */}
        <div class="says" role="status">
          {mended && (
            <p>
              <b>{mended.title}</b>
            </p>
          )}
          <p>{lacks ? notFetched(lacks) : [mended ? says.answer : <b>{says.answer}</b>, ' ', says.doubt]}</p>
          {!lacks && caution && (
            <p class="says-caution">
              <Icon of={cautionIcon} /> {caution}
            </p>
          )}
        </div>
        <div class="side no-print">{side}</div>
      </div>
      <div class="calc-tools no-print">
        <button
          class="btn line needs-js"
          type="button"
          onClick={() => desk.copyLink(address).then(setCopied)}
        >
          <Icon of={linkIcon} /> Copy link
        </button>
        <button class="btn line needs-js" type="button" onClick={() => print()}>
          <Icon of={printIcon} /> Print
        </button>
        {!pulled && back}
        <span role="status" class="plain small quiet">
          {copied}
        </span>
      </div>
      {children}
    </div>
  );
}
