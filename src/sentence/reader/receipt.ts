/** When something was received, and by whose clock: only instants of one clock can be compared. */
export interface Receipt {
  readonly at: number | null;
  readonly clock: 'caller' | 'tag' | 'stream' | 'none';
}
