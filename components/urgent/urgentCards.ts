import { getCollection } from 'astro:content';

/** The urgent cards, in their order. */
export const urgentCards = (await getCollection('urgent')).toSorted((a, b) => a.data.order - b.data.order);
