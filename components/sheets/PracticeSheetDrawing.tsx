import type { SheetScale } from '#calculators/sheets/paper.ts';
import { drawFace } from '#components/pictures/face/drawFace.ts';
import { FaceShapes } from '#components/pictures/FaceShapes.tsx';
import type { PracticeLevel } from '#lib/face/disturbance.ts';
import { placeMidline } from '#skills/mapping/placeMidline.ts';
import { practiceSheetWords } from '#words/sheets.ts';
import { ScaleBars } from './ScaleBars.tsx';
import { drawingHeightMm, pictureTopMm, sheetWidthMm } from './sheetSize.ts';

/**
 * A practice face without marks between the scale bars, in millimetres of paper. The same number and level as
 * in the exercise "Place the midline" is the same face.
 */
export function PracticeSheetDrawing({
  seed,
  level,
  scale,
  id,
}: Readonly<{ seed: number; level: PracticeLevel; scale: SheetScale; id: string }>) {
  const picture = drawFace(placeMidline.given(seed, level).face, 'midline', seed);
  const [left, top, width, height] = picture.viewBox;
  const box = { x: 0.2, y: pictureTopMm, width: width * scale.across, height: height * scale.up };
  return (
    <svg
      class="true-size"
      viewBox={`0 0 ${sheetWidthMm} ${drawingHeightMm}`}
      role="img"
      aria-label={practiceSheetWords.picture}
    >
      <ScaleBars scale={scale} />
      <svg {...box} viewBox={`${left} ${top} ${width} ${height}`} preserveAspectRatio="none">
        <FaceShapes picture={picture} prefix={id} />
      </svg>
      <rect class="sheet-edge" {...box} />
    </svg>
  );
}
