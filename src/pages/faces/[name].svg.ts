import { faceSvgText } from '#components/pictures/faceSvgText.ts';
import { drawFace } from '#components/pictures/face/drawFace.ts';
import { people } from '#components/pictures/face/people.ts';
import { stripFaces } from '#words/faceStrip.ts';
import type { APIRoute, GetStaticPaths } from 'astro';

const inks = ['light', 'dark'] as const;

/**
 * The invented people of the strip as files, one for each theme: /faces/02-light.svg and so on. A face takes
 * longer than any page, so each is drawn once.
 */
export const getStaticPaths = (() =>
  stripFaces.flatMap((name) => {
    const seed = Number(name);
    const person = people[seed - 1];
    if (!person)
      throw new Error(`There is no face ${name}: the faces are numbered from 01 to ${people.length}.`);
    const picture = drawFace(person.face, 'whole', seed);
    return inks.map((ink) => ({
      params: { name: `${name}-${ink}` },
      props: { text: faceSvgText(picture, ink) },
    }));
  })) satisfies GetStaticPaths;

export const GET: APIRoute<{ text: string }> = ({ props: { text } }) =>
  new Response(text, { headers: { 'Content-Type': 'image/svg+xml' } });
