type Props = Readonly<{
  at: string;
  x: number;
  y: number;
  width: number;
  height: number;
  scale?: number;
  zeroX?: number;
}>;

/**
 * Millimetre paper under a figure whose unit is the millimetre: 1 mm and 10 mm squares, from `zeroX`,
 * enlarged `scale` times.
 */
export function MmPaper({ at, x, y, width, height, scale = 1, zeroX = 0 }: Props) {
  const ten = 10 * scale;
  return (
    <>
      <defs>
        <pattern id={`${at}-mm`} x={zeroX} width={scale} height={scale} patternUnits="userSpaceOnUse">
          <path class="mm-line" d={`M${scale} 0H0V${scale}`} />
        </pattern>
        <pattern id={`${at}-cm`} x={zeroX} width={ten} height={ten} patternUnits="userSpaceOnUse">
          <path class="cm-line" d={`M${ten} 0H0V${ten}`} />
        </pattern>
      </defs>
      <rect class="paper" x={x} y={y} width={width} height={height} />
      <rect x={x} y={y} width={width} height={height} fill={`url(#${at}-mm)`} />
      <rect x={x} y={y} width={width} height={height} fill={`url(#${at}-cm)`} />
    </>
  );
}
