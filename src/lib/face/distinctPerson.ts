import { drawFrom, seedFrom } from '../quantities/seed.ts';
import { clamp } from './spot.ts';
import type { Bones } from './bones.ts';
import type { Form } from './form.ts';
import { practiceBones } from './practiceBones.ts';
import { practiceForm } from './practiceForm.ts';

/** A person as drawn, before anything is disturbed. */
export type Person = Readonly<{ bones: Bones; form: Form; age: number }>;

/** How many neighbours are kept apart: as many as stand on one contact sheet. */
export const sheetOfFaces = 24;
/** Two faces of a sheet differ in at least so many of the eight things that make an outline. */
const leastDifferences = 4;
/**
 * A face that still resembles another after so many deals is kept: it has happened for none of the seeds
 * offered.
 */
const mostDeals = 40;

/** From here on two faces look different: a millimetre across, or a fourteenth of the whole range. */
const visible = { mm: 1, share: 0.07 } as const;

/**
 * In how many of lids, brow bone, nose width, lips, jaw, age, scar, vitiligo two people differ to the eye.
 */
export function visibleDifferences(one: Person, other: Person): number {
  const isApart = (measure: (person: Person) => number, by: number) =>
    Math.abs(measure(one) - measure(other)) > by;
  return [
    one.form.lid !== other.form.lid,
    isApart(({ form }) => form.browBone, visible.share),
    isApart(({ bones }) => bones.noseWidthMm, visible.mm),
    isApart(({ form }) => form.upperLipMm + form.lowerLipMm, visible.mm),
    isApart(({ form }) => 2 * form.jawMm, visible.mm),
    isApart(({ age }) => age, visible.share),
    (one.form.scar === undefined) !== (other.form.scar === undefined),
    (one.form.vitiligo === undefined) !== (other.form.vitiligo === undefined),
  ].filter(Boolean).length;
}

function deal(seed: number, times: number): Person {
  const age = clamp(drawFrom(seedFrom('age', seed))() * 1.1 - 0.1, 0, 1);
  const bones = practiceBones(drawFrom(seedFrom('bones', seed)));
  return {
    bones,
    age,
    form: practiceForm(
      drawFrom(times === 0 ? seedFrom('form', seed) : seedFrom('form', seed, times)),
      bones,
      age,
    ),
  };
}

/**
 * The person behind a seed. Within each row of 24 seeds nobody looks like an earlier one: only what is drawn
 * is dealt again, never bones or age, so that no mark and no answer depends on the neighbours.
 */
export function distinctPerson(seed: number): Person {
  const met: Person[] = [];
  for (let each = seed - (seed % sheetOfFaces); ; each++) {
    let person = deal(each, 0);
    for (
      let times = 1;
      times < mostDeals && met.some((other) => visibleDifferences(person, other) < leastDifferences);
      times++
    )
      person = deal(each, times);
    if (each >= seed) return person;
    met.push(person);
  }
}
