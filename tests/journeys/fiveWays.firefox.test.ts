import { fiveWaysIn } from './fiveWays.ts';

fiveWaysIn('firefox');
