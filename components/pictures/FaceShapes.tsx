import type { FacePicture } from '#components/pictures/face/drawFace.ts';
import { hairClass, inkOnSkin, type SkinLab } from './faceInk.ts';
import { faceMarkup } from './faceMarkup.ts';

type Props = Readonly<{
  picture: FacePicture;
  /** Makes clip ids unique on the page: one prefix a figure. */
  prefix: string;
  /** Measured skin, L*a*b*; left out, the face is a line drawing in the theme's own colours. */
  skin?: SkinLab;
}>;

/**
 * The face as a group, for an SVG that draws more over it. Picture millimetres, y down; a mark (x, y up) lies
 * at (x, -y).
 */
export function FaceShapes({ picture, prefix, skin }: Props) {
  const { clips, paths } = faceMarkup(picture, prefix, skin && inkOnSkin(skin, picture.hairTone));
  return (
    <g class={skin ? 'f' : `f ${hairClass(picture)}`}>
      {clips.length > 0 && (
        <defs>
          {clips.map(({ id, d }) => (
            <clipPath key={id} id={id}>
              <path d={d} />
            </clipPath>
          ))}
        </defs>
      )}
      {paths.map(({ d, role, strokeMm, opacity, clipId, colour }, i) => (
        <path
          key={i}
          {...((colour === undefined || role === 'cloth') && { class: `f-${role}` })}
          {...(colour !== undefined && { color: colour })}
          {...(strokeMm !== undefined && { 'stroke-width': strokeMm })}
          {...(opacity !== undefined && { opacity })}
          {...(clipId !== undefined && { 'clip-path': `url(#${clipId})` })}
          d={d}
        />
      ))}
    </g>
  );
}
