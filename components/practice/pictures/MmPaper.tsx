type Props = Readonly<{ at: string; x: number; y: number; width: number; height: number; scale?: number; zeroX?: number }>;

/** Millimetre paper under a figure whose unit is the millimetre: 1 mm and 10 mm squares, from `zeroX`, enlarged `scale` times. */
export function MmPaper({ at, x, y, width, height, scale = 1, zeroX = 0 }: Props) {
  return (
    <>
      <defs>
        <pattern id={`${at}-mm`} width="1" height="1" patternUnits="userSpaceOnUse">
          <path class="mm-line" d="M1 0H0V1" />
        </pattern>
        <pattern id={`${at}-cm`} width="10" height="10" patternUnits="userSpaceOnUse" patternTransform={scale === 1 && zeroX === 0 ? undefined : `translate(${zeroX} 0) scale(${scale})`}>
          <rect width="10" height="10" fill={`url(#${at}-mm)`} />
          <path class="cm-line" d="M10 0H0V10" />
        </pattern>
      </defs>
      <rect class="paper" x={x} y={y} width={width} height={height} />
      <rect x={x} y={y} width={width} height={height} fill={`url(#${at}-cm)`} />
    </>
  );
}
