import { attack } from './attacks/distress-needs-a-word.ts';
import { holds } from './support/holds.ts';

holds('distress becomes sound only with an explicit word', attack, 150);
