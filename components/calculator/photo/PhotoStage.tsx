import { photoWords, squareLabel } from '#words/photoDesk.ts';
import { useEffect, useRef } from 'preact/hooks';
import { edgeDots, type Place } from './dotsOf.ts';

export const targets = ['card', 'skin'] as const;
export type Target = (typeof targets)[number];

type Props = Readonly<{
  picture: ImageBitmap;
  places: Readonly<Record<Target, Place>>;
  placed: Readonly<Record<Target, boolean>>;
  active: Target;
  size: number;
  onMove: (target: Target, to: Place) => void;
  /** By so much from where it is: keys may come faster than the picture is drawn. */
  onStep: (target: Target, across: number, down: number) => void;
  onPick: (target: Target) => void;
}>;

const mostAcross = 1200;
const stepPercent = 0.5;
const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
  Enter: [0, 0],
  ' ': [0, 0],
};

/** The picture with its two squares: tap a place for the active one, or move one by the arrow keys. */
export function PhotoStage({ picture, places, placed, active, size, onMove, onStep, onPick }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const scale = Math.min(1, mostAcross / picture.width);
  const [width, height] = [Math.round(picture.width * scale), Math.round(picture.height * scale)];
  // oxlint-disable-next-line react-hooks/exhaustive-deps -- the size follows from the picture.
  useEffect(() => canvas.current?.getContext('2d')?.drawImage(picture, 0, 0, width, height), [picture]);

  const tap = (event: MouseEvent & { currentTarget: SVGSVGElement }) => {
    const box = event.currentTarget.getBoundingClientRect();
    onMove(active, {
      x: (100 * (event.clientX - box.left)) / box.width,
      y: (100 * (event.clientY - box.top)) / box.height,
    });
  };
  const key = (target: Target) => (event: KeyboardEvent) => {
    const arrow = arrows[event.key];
    if (!arrow) return;
    event.preventDefault();
    const by = stepPercent * (event.shiftKey ? 10 : 1);
    onStep(target, arrow[0] * by, arrow[1] * by);
  };
  const half = (edgeDots(picture, size) * scale) / 2;
  // Drawn in dots of the canvas: lines and letters grow with it, so that they look alike on every picture.
  const line = Math.max(width, height) / 400;
  return (
    <div class="photo-stage">
      <canvas ref={canvas} width={width} height={height} aria-hidden="true" />
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="group"
        aria-label="Your picture, with a square on the grey card and one on the skin"
        onClick={tap}
      >
        {targets.map((target) => {
          const at = { x: (places[target].x / 100) * width, y: (places[target].y / 100) * height };
          const edge = `M${at.x - half} ${at.y - half}h${2 * half}v${2 * half}h${-2 * half}z`;
          return (
            <g
              key={target}
              class={`photo-square ${target}${placed[target] ? '' : ' is-open'}`}
              tabindex={0}
              role="button"
              aria-label={squareLabel(photoWords[target], places[target], placed[target])}
              onKeyDown={key(target)}
              onFocus={() => onPick(target)}
            >
              <path class="under" d={edge} stroke-width={line * 3} />
              <path d={edge} stroke-width={line * 1.2} />
              <text
                x={at.x}
                y={at.y - half - line * 4}
                text-anchor="middle"
                font-size={line * 14}
                stroke-width={line * 3}
              >
                {placed[target] ? target : `${target}?`}
              </text>
            </g>
          );
        })}
      </svg>
    </div>
  );
}
