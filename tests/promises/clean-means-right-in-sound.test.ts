import { attack } from './attacks/clean-means-right-in-sound.ts';
import { holds } from './support/holds.ts';

holds('clean means right, in sound', attack, 26);
