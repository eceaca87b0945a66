import { FaceShapes } from '#components/pictures/FaceShapes.tsx';
import { Paper } from '#components/pictures/Paper.tsx';
import { drawFace } from '#components/pictures/face/drawFace.ts';
import type { PlaceMidlineGiven } from '#skills/mapping/placeMidline.ts';
import type { ComponentChildren } from 'preact';
import { EdgeRuler } from './EdgeRuler.tsx';
import { placeView, rulerFootY, rulerTopY } from './placeView.ts';

type Props = Readonly<{ given: PlaceMidlineGiven; id: string; label?: string; children?: ComponentChildren }>;

/**
 * The practice face on millimetre paper between two rulers. Drawn at build for the first face, in the browser
 * for all others.
 */
export function PracticeStill({ given, id, label, children }: Props) {
  const named =
    label === undefined
      ? ({ 'aria-hidden': 'true' } as const)
      : ({ role: 'img', 'aria-label': label } as const);
  const { x, y, width, height } = placeView;
  return (
    <svg class="face-drawing plot map" viewBox={`${x} ${y} ${width} ${height}`} {...named}>
      <Paper id={`${id}-paper`} {...placeView} />
      <g transform={`translate(${given.shiftMm} 0)`}>
        <FaceShapes picture={drawFace(given.face, 'midline', given.seed)} prefix={id} />
      </g>
      <EdgeRuler y={rulerTopY} up />
      <EdgeRuler y={rulerFootY} />
      {children}
    </svg>
  );
}
