import { faceSvgText } from '#components/pictures/faceSvgText.ts';
import { drawFace } from '#components/pictures/face/drawFace.ts';
import { people } from '#components/pictures/face/people.ts';
import type { APIRoute, GetStaticPaths } from 'astro';

const inks = ['light', 'dark'] as const;

/** The invented people as files, one for each theme: /faces/01-light.svg to /faces/24-dark.svg. */
export const getStaticPaths = (() =>
  people.flatMap(({ face }, i) =>
    inks.map((ink) => ({
      params: { name: `${String(i + 1).padStart(2, '0')}-${ink}` },
      props: { text: faceSvgText(drawFace(face, 'whole', i + 1), ink) },
    })),
  )) satisfies GetStaticPaths;

export const GET: APIRoute<{ text: string }> = ({ props: { text } }) =>
  new Response(text, { headers: { 'Content-Type': 'image/svg+xml' } });
