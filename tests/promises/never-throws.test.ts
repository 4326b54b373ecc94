import { attack } from './attacks/never-throws.ts';
import { holds } from './support/holds.ts';

holds('readers never throw, makers throw TypeError or RangeError', attack, 12_000);
