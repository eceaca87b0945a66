/** Our own line icons on a 24-unit square, drawn with one stroke weight. `solid` is filled instead. */
export const iconPaths = {
  search: ['M16.5 10.5a6 6 0 1 1-12 0a6 6 0 1 1 12 0', 'M15 15l5.5 5.5'],
  menu: ['M4 7h16M4 12h16M4 17h10'],
  theme: ['M19.5 12a7.5 7.5 0 1 1-15 0a7.5 7.5 0 1 1 15 0', 'M12 4.5a7.5 7.5 0 0 1 0 15z solid'],
  print: ['M7 9V4h10v5M7 17H4V9h16v8h-3', 'M7 14h10v6H7z'],
  link: ['M10 14a4 4 0 0 0 6 .4l3-3a4 4 0 0 0-5.7-5.7l-1.2 1.2', 'M14 10a4 4 0 0 0-6-.4l-3 3a4 4 0 0 0 5.7 5.7l1.2-1.2'],
  save: ['M12 4v11M7.5 11l4.5 4.5 4.5-4.5M4.5 20h15'],
  ruler: ['M3 8.5h18v7H3zM6.5 8.5v3M10 8.5v4.5M13.5 8.5v3M17 8.5v4.5'],
  midline: ['M12 3v18', 'M3 9.5h18', 'M4.8 9.5a1.3 1.3 0 1 1-2.6 0a1.3 1.3 0 1 1 2.6 0', 'M21.8 9.5a1.3 1.3 0 1 1-2.6 0a1.3 1.3 0 1 1 2.6 0'],
  pencil: ['M4 20l1.2-4.5L16.5 4.2l3.3 3.3L8.5 18.8 4 20zM14.2 6.5l3.3 3.3'],
  caution: ['M12 4l9 16H3z', 'M12 10v4.5M12 17.3v.1'],
  ask: ['M4 5h16v11h-8l-4.5 4V16H4z', 'M10 9.2a2 2 0 1 1 2.6 1.9c-.5.2-.6.5-.6 1M12 13.9v.1'],
  tick: ['M4.5 12.5l5 5L20 7'],
  cross: ['M6 6l12 12M18 6L6 18'],
  book: ['M12 6c-2-1.5-5-2-8-2v14c3 0 6 .5 8 2 2-1.5 5-2 8-2V4c-3 0-6 .5-8 2zM12 6v14'],
  undo: ['M8 5L4 9l4 4', 'M4 9h10a5.5 5.5 0 0 1 0 11H9'],
  plus: ['M12 5v14M5 12h14'],
  minus: ['M5 12h14'],
  next: ['M5 12h14M13 6l6 6-6 6'],
  up: ['M12 19V5M6 11l6-6 6 6'],
  down: ['M12 5v14M6 13l6 6 6-6'],
  left: ['M19 12H5M11 6l-6 6 6 6'],
  right: ['M5 12h14M13 6l6 6-6 6'],
} as const;

export type IconName = keyof typeof iconPaths;
