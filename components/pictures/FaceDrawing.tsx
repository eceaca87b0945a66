import type { ComponentChildren } from 'preact';
import type { FacePicture } from '#components/pictures/face/drawFace.ts';
import { hexOf, type SkinLab } from './faceInk.ts';
import { FaceShapes } from './FaceShapes.tsx';

type Props = Readonly<{
  picture: FacePicture;
  prefix: string;
  /** What the picture shows, in words; without it the drawing is hidden from screen readers. */
  label?: string;
  skin?: SkinLab;
  /** Drawn over the face, in the same millimetres. */
  children?: ComponentChildren;
}>;

/** A practice face as one picture. Needs no script: everything is in the markup. */
export function FaceDrawing({ picture, prefix, label, skin, children }: Props) {
  const [left, top, width, height] = picture.viewBox;
  const named =
    label === undefined
      ? ({ 'aria-hidden': 'true' } as const)
      : ({ role: 'img', 'aria-label': label } as const);
  const isCrop = picture.view !== 'whole' && picture.view !== 'midline';
  return (
    <svg class="face-drawing" viewBox={picture.viewBox.join(' ')} {...named}>
      {skin && isCrop && <rect x={left} y={top} width={width} height={height} fill={hexOf(skin)} />}
      <FaceShapes picture={picture} prefix={prefix} {...(skin && { skin })} />
      {children}
    </svg>
  );
}
