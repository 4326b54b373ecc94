import { attack } from './attacks/positions-hold.ts';
import { holds } from './support/holds.ts';

holds('a ship is inside what her report says', attack, 300);
