import { german } from 'seahail/locale/de';
import { keep } from './keep.ts';

keep(german);
