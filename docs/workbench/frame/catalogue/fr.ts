import { french } from 'seahail/locale/fr';
import { keep } from './keep.ts';

keep(french);
