import type { IconPaths } from './icons.ts';

/** A decorative line icon; the control that holds it carries the words. */
export function Icon({ of }: { of: IconPaths }) {
  return (
    <svg class="icon" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      {of.map((path) =>
        path.endsWith(' solid') ? <path d={path.slice(0, -6)} fill="currentColor" /> : <path d={path} />,
      )}
    </svg>
  );
}
