import { attack } from './attacks/network-reads-anything.ts';
import { holds } from './support/holds.ts';

holds('the network and AIS are read, whatever they bring', attack, 600);
