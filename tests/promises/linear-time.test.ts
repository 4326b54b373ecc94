import { attack } from './attacks/linear-time.ts';
import { holds } from './support/holds.ts';

holds('eight times the input is at most ten times the work', attack, 4800);
