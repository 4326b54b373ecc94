import { attack } from './attacks/always-an-answer.ts';
import { holds } from './support/holds.ts';

holds('what is worked out about motion comes to an end', attack, 800);
