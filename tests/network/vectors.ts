import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { bytesOf } from './support.ts';

/** One message of shared/network/messages.json. */
export interface Message {
  readonly id: string;
  readonly pgn: number;
  readonly payload: string;
  readonly values: Record<string, unknown>;
  readonly says: Record<string, unknown>;
}

export const { constructed, recorded } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../shared/network/messages.json'), 'utf8'),
) as { constructed: { messages: Message[] }; recorded: { messages: Message[] } };

/** The message of that name. */
export function messageOf(id: string): Message {
  const message = constructed.messages.find((row) => row.id === id);
  if (message === undefined) throw new Error(`no message ${id}`);
  return message;
}

/** Its payload. */
export function payloadOf(id: string): Uint8Array {
  return bytesOf(messageOf(id).payload);
}
