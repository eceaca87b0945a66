/**
 * Our own line icons on a 24-unit square, drawn with one stroke weight; a path that ends in `solid` is filled
 * instead.
 */
export type IconPaths = readonly string[];

export const searchIcon: IconPaths = ['M16.5 10.5a6 6 0 1 1-12 0a6 6 0 1 1 12 0', 'M15 15l5.5 5.5'];
export const menuIcon: IconPaths = ['M4 7h16M4 12h16M4 17h10'];
export const themeIcon: IconPaths = [
  'M19.5 12a7.5 7.5 0 1 1-15 0a7.5 7.5 0 1 1 15 0',
  'M12 4.5a7.5 7.5 0 0 1 0 15z solid',
];
export const printIcon: IconPaths = ['M7 9V4h10v5M7 17H4V9h16v8h-3', 'M7 14h10v6H7z'];
export const linkIcon: IconPaths = [
  'M10 14a4 4 0 0 0 6 .4l3-3a4 4 0 0 0-5.7-5.7l-1.2 1.2',
  'M14 10a4 4 0 0 0-6-.4l-3 3a4 4 0 0 0 5.7 5.7l1.2-1.2',
];
export const cautionIcon: IconPaths = ['M12 4l9 16H3z', 'M12 10v4.5M12 17.3v.1'];
export const stopIcon: IconPaths = ['M8.5 3.5h7l5 5v7l-5 5h-7l-5-5v-7z', 'M12 8v5M12 15.9v.1'];
export const crossIcon: IconPaths = ['M6 6l12 12M18 6L6 18'];
export const undoIcon: IconPaths = ['M8 5L4 9l4 4', 'M4 9h10a5.5 5.5 0 0 1 0 11H9'];
export const nextIcon: IconPaths = ['M5 12h14M13 6l6 6-6 6'];
export const upIcon: IconPaths = ['M12 19V5M6 11l6-6 6 6'];
export const downIcon: IconPaths = ['M12 5v14M6 13l6 6 6-6'];
export const saveIcon: IconPaths = ['M12 4v11M7.5 11l4.5 4.5 4.5-4.5M4.5 20h15'];
export const leftIcon: IconPaths = ['M19 12H5M11 6l-6 6 6 6'];
export const rightIcon: IconPaths = ['M5 12h14M13 6l6 6-6 6'];
