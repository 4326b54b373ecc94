import { attack } from './attacks/wrong-check-is-said.ts';
import { holds } from './support/holds.ts';

holds('a wrong error check is said, with both values', attack, 120);
