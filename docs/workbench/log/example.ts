import evening from '../../../examples/evening-watch/serial.log';

/** The invented evening of the examples. */
export const eveningLog: string = evening;
