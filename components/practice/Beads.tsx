import { beadWords, type BeadState } from '#words/practice.ts';

/** Questions of a set as beads on the thread: full, half, empty. */
export function Beads({ states }: Readonly<{ states: readonly BeadState[] }>) {
  return (
    <ol class="beads">
      {states.map((state, i) => (
        <li class={state} aria-current={state === 'here' ? 'step' : undefined}>
          <span class="vh">{beadWords(i + 1, state)}</span>
        </li>
      ))}
    </ol>
  );
}
