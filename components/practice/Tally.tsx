const bundle = 22;
const most = 25;

/**
 * Pencil strokes, five to a bundle; beyond 25 the number beside them says more. Decorative: the words stand
 * next to it.
 */
export function Tally({ count }: Readonly<{ count: number }>) {
  if (count === 0) return null;
  const shown = Math.min(count, most);
  const paths = Array.from({ length: shown }, (_, i) => {
    const x = Math.floor(i / 5) * bundle + 2;
    return i % 5 === 4 ? `M${x - 1} 14L${x + 14} 4` : `M${x + (i % 5) * 4} 2v14`;
  });
  return (
    <svg
      class="tally"
      viewBox={`0 0 ${Math.ceil(shown / 5) * bundle} 18`}
      width={Math.ceil(shown / 5) * bundle}
      height="18"
      aria-hidden="true"
      focusable="false"
    >
      <path class="on" d={paths.join('')} />
    </svg>
  );
}
