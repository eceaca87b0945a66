import { fiveWaysIn } from './fiveWays.ts';

fiveWaysIn('chromium');
