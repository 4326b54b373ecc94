/** One message of the network of IEC 61162-3, put together from its frames but not yet understood. */
export interface NetworkMessage {
  readonly kind: 'network-message';
  /** Parameter group number. */
  readonly pgn: number;
  /** 0 (highest) to 7. */
  readonly priority: number;
  /** Address of the sender. */
  readonly source: number;
  /** Address it is for; 255 for everyone. */
  readonly destination: number;
  /** The bytes, two hexadecimal digits each. */
  readonly payload: string;
  /** For people: parameter group, sender and payload in one line. */
  readonly raw: string;
}
