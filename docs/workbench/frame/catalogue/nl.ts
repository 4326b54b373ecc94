import { dutch } from 'seahail/locale/nl';
import { keep } from './keep.ts';

keep(dutch);
