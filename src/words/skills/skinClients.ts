/** Whose skin a problem reads, by their work. */
export const skinClients = [
  'ferry pilot',
  'baker',
  'choir leader',
  'cyclist',
  'violinist',
  'bell-ringer',
  'potter',
  'net mender',
] as const;
