import { attack } from './attacks/no-automatic-distress.ts';
import { holds } from './support/holds.ts';

holds(
  'nothing is sent, answered or retuned without a person or a clean call for this station',
  attack,
  20_000,
);
