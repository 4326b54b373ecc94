import { attack } from './attacks/no-transmission-without-a-person.ts';
import { holds } from './support/holds.ts';

holds('nothing is transmitted without a person or a clean call for this station', attack, 10_000);
