export { parseIdentity } from './parse.ts';
