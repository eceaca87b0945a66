import { type CollectionEntry, getCollection } from 'astro:content';
import { type StrandId, strands } from '#words/course.ts';

type Lesson = CollectionEntry<'lessons'>;

/** Strands that have lessons, in teaching order. */
export async function strandsWithLessons() {
  const lessons = await getCollection('lessons');
  return strands.filter(({ id }) => lessons.some((lesson) => lesson.data.strand === id));
}

/** The lessons of one strand in their order. */
export async function lessonsOf(strand: StrandId): Promise<readonly Lesson[]> {
  const lessons = await getCollection('lessons', (lesson) => lesson.data.strand === strand);
  return lessons.toSorted((a, b) => a.data.order - b.data.order);
}

/** A strand's number never changes, whether or not the strands before it have lessons yet. */
export function strandNumber(strand: StrandId): number {
  return strands.findIndex(({ id }) => id === strand) + 1;
}

/** content/lessons/<strand>/<lesson>.mdx is read at /lessons/<strand>/<lesson>/. */
export function lessonPath({ id }: Lesson): string {
  return `/lessons/${id}/`;
}
