type Props = Readonly<{ id: string; x: number; y: number; width: number; height: number }>;

/**
 * Millimetre paper under a figure that is in millimetres: 1 mm and 10 mm squares. Pattern ids are unique per
 * figure.
 */
export function Paper({ id, x, y, width, height }: Props) {
  return (
    <g>
      <defs>
        <pattern id={`${id}-mm`} width="1" height="1" patternUnits="userSpaceOnUse">
          <path class="paper-mm" d="M1 0H0V1" />
        </pattern>
        <pattern id={`${id}-cm`} width="10" height="10" patternUnits="userSpaceOnUse">
          <rect width="10" height="10" fill={`url(#${id}-mm)`} />
          <path class="paper-cm" d="M10 0H0V10" />
        </pattern>
      </defs>
      <rect x={x} y={y} width={width} height={height} fill={`url(#${id}-cm)`} />
    </g>
  );
}
