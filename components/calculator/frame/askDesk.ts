import type { State } from '#calculators/spec.ts';
import type { Desk } from './useCalculator.ts';

/** Takes a calculator's desk, whatever its state is made of. */
export type TakeDesk = <S extends State, R>(desk: Desk<S, R>) => void;

declare module 'preact' {
  namespace JSX {
    interface HTMLAttributes {
      /**
       * What stands outside an island asks it for its desk by the event of this name. Bytes on a lesson are
       * dear: nothing else is shared.
       */
      onAskDesk?: ((event: CustomEvent<TakeDesk>) => void) | undefined;
    }
  }
}

/** Runs `take` with the desk of the calculator on this page. False while the island has not started. */
export function askDesk(take: TakeDesk): boolean {
  let isAnswered = false;
  const detail: TakeDesk = (desk) => {
    isAnswered = true;
    take(desk);
  };
  document.querySelector('.calculator')?.dispatchEvent(new CustomEvent('AskDesk', { detail }));
  return isAnswered;
}
