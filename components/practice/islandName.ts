/** The file of a skill's island in `islands/`, without its ending: `level-reference` is in `LevelReference`. */
export const islandName = (id: string): string =>
  id.replace(/(?:^|-)(\w)/g, (_, letter: string) => letter.toUpperCase());
