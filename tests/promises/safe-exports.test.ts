import { attack } from './attacks/safe-exports.ts';
import { holds } from './support/holds.ts';

holds('exports say nothing but what they should', attack, 300);
