import type { IconPaths } from './icons.ts';

// Apart from the other icons, so that a figure does not load them.
export const tickIcon: IconPaths = ['M4.5 12.5l5 5L20 7'];
export const pencilIcon: IconPaths = ['M4 20l1.2-4.5L16.5 4.2l3.3 3.3L8.5 18.8 4 20zM14.2 6.5l3.3 3.3'];
