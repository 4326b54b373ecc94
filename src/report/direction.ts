/**
 * Which way a `DSC` sentence travels. `'received'`: from the radio, which heard the call; field 2 is the
 * caller. `'commanded'`: to the radio, which is to place the call; field 2 is the called station.
 *
 * The sentence itself does not say which: wiring does.
 */
export type Direction = 'received' | 'commanded';
