/**
 * Runs before the first paint, so a chosen theme never flashes. Inline by need: its hash goes into the
 * content policy.
 * Storage can be denied; the page then follows the system's theme.
 */
export const themeScript =
  "document.documentElement.dataset.js='';try{var t=localStorage.getItem('tautline-theme');if(t==='dark'||t==='light')document.documentElement.dataset.theme=t}catch(e){}";
