import { attack } from './attacks/cut-anywhere.ts';
import { holds } from './support/holds.ts';

holds('streams may be cut anywhere', attack, 120);
