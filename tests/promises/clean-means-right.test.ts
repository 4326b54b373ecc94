import { attack } from './attacks/clean-means-right.ts';
import { holds } from './support/holds.ts';

holds('clean means right, in bits', attack, 96);
