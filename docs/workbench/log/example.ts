import network from '../../../examples/evening-watch/network.log';
import evening from '../../../examples/evening-watch/serial.log';

/** The invented evening of the examples. */
export const eveningLog: string = evening;

/** The same evening on the network. */
export const eveningNetworkLog: string = network;
