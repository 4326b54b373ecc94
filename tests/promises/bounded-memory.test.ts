import { attack } from './attacks/bounded-memory.ts';
import { holds } from './support/holds.ts';

holds('a stream four times as long holds no more', attack, 5000);
