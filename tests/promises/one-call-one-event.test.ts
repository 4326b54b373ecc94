import { attack } from './attacks/one-call-one-event.ts';
import { holds } from './support/holds.ts';

holds('a call in two sentences is one event from reader to station', attack, 400);
