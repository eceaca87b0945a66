/** What practice faces hold, by level. */
export const practiceFaceLevels = [
  'Symmetric',
  'One brow higher',
  'Head tilted',
  'Nose leans',
  'Near camera, old work',
] as const;
