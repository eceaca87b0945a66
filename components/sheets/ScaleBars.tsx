import { barMm, type SheetScale } from '#calculators/sheets/paper.ts';
import { pictureTopMm, uprightMm } from './sheetSize.ts';

const ticks = Array.from({ length: 21 }, (_, i) => i * (barMm / 20));
const tickMm = (at: number): number => (at % 50 === 0 ? 3.4 : at % 10 === 0 ? 2.6 : 1.5);
const rounded = (mm: number): string => String(Number(mm.toFixed(4)));

/**
 * 50 and 100 mm both ways, one path a bar, scaled like the drawing beside them. A ruler on them says whether
 * the paper is true.
 */
export function ScaleBars({ scale: { across, up } }: Readonly<{ scale: SheetScale }>) {
  const x = (mm: number) => 0.5 + mm * across;
  const y = (mm: number) => pictureTopMm + 0.5 + mm * up;
  return (
    <g class="bars">
      <path
        d={`M${rounded(x(0))} 1H${rounded(x(barMm))}${ticks.map((mm) => `M${rounded(x(mm))} 1v${tickMm(mm)}`).join('')}`}
      />
      <text x={x(0)} y="8">
        0
      </text>
      <text x={x(50)} y="8" text-anchor="middle">
        50 mm
      </text>
      <text x={x(100)} y="8" text-anchor="middle">
        100 mm
      </text>
      <path
        d={`M${uprightMm} ${rounded(y(0))}V${rounded(y(barMm))}${ticks.map((mm) => `M${uprightMm} ${rounded(y(mm))}h${-tickMm(mm)}`).join('')}`}
      />
      <text x={uprightMm - 4.4} y={y(0) + 2.4} text-anchor="end">
        0
      </text>
      <text x={uprightMm - 4.4} y={y(50) + 1.1} text-anchor="end">
        50
      </text>
      <text x={uprightMm - 4.4} y={y(100) + 1.1} text-anchor="end">
        100
      </text>
    </g>
  );
}
