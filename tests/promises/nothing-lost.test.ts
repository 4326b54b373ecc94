import { attack } from './attacks/nothing-lost.ts';
import { holds } from './support/holds.ts';

holds('nothing received is lost, and all of it can be handled', attack, 4000);
