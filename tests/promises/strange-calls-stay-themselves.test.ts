import { attack } from './attacks/strange-calls-stay-themselves.ts';
import { holds } from './support/holds.ts';

holds('strange calls stay themselves in sentences', attack, 3000);
