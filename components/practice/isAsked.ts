import { isBeingMended } from '#words/beingMended.ts';

/** False while a skill is being mended: it is not asked, not marked and never due. */
export const isAsked = (skill: string): boolean => !isBeingMended('skills', skill);
