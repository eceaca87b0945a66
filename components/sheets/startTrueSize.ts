import type { Field, State, Value } from '#calculators/spec.ts';
import { askDesk } from '#components/calculator/frame/askDesk.ts';
import type { Desk } from '#components/calculator/frame/useCalculator.ts';

/**
 * The marks of a calculator as an address writes them. Its other fields say how to judge, which paper does
 * not.
 */
function marksQuery<S extends State, R>({ calculator: { fields }, state }: Desk<S, R>): string {
  const query = new URLSearchParams();
  const write = <T extends Value>({ key, control, write: textOf }: Field<T>, value: T) => {
    if (control.kind === 'mark') query.set(key, textOf(value));
  };
  for (const name in fields) write(fields[name], state[name]);
  return query.toString();
}

for (const link of document.querySelectorAll<HTMLAnchorElement>('[data-true-size]')) {
  // Before the link is followed, by whatever key or button; while the island still sleeps, the sheet shows
  // the start.
  const fill = () =>
    askDesk((desk) => {
      link.search = marksQuery(desk);
    });
  for (const kind of ['click', 'auxclick', 'contextmenu'] as const) link.addEventListener(kind, fill);
}
