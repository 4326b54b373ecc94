// Compiled by tsc, never run: what the types promise.
import type { StandardJSONSchemaV1, StandardSchemaV1 } from '@standard-schema/spec';
import {
  type Identity,
  type IdentityKind,
  identitySchema,
  type Mmsi,
  mmsi,
  parseIdentity,
} from '../../src/identity/index.ts';
import type { FormSchema } from '../../src/result/index.ts';

type Equal<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
const holds = <_ extends true>(): void => {};

// Our copy of the interface and the published one take each other's place, also with types filled in.
declare const copied: FormSchema<Mmsi>;
export const toPublished: StandardSchemaV1<string, Mmsi> = copied;
export const schemaIsPublished: StandardSchemaV1<string, Mmsi> = identitySchema({ accept: ['ship'] });
export const schemaIsJson: StandardJSONSchemaV1<string, Mmsi> = identitySchema();
holds<Equal<StandardSchemaV1.InferInput<FormSchema<Mmsi>>, string>>();
holds<Equal<StandardSchemaV1.InferOutput<FormSchema<Mmsi>>, Mmsi>>();

// Validation is known to be synchronous, no await needed.
const outcome = identitySchema()['~standard'].validate('232878000');
export const value: Mmsi | undefined = outcome.issues === undefined ? outcome.value : undefined;

// An identity reads as text, but text is no identity without being read.
export const text: string = mmsi('232878000');
// @ts-expect-error a plain string was not read
export const unread: Mmsi = '232878000';
// @ts-expect-error a number loses leading zeros
mmsi(232878000);
// @ts-expect-error no such kind
identitySchema({ accept: ['yacht'] });

// A switch over the kinds is complete.
export function holder(identity: Identity): string {
  switch (identity.kind) {
    case 'ship':
    case 'ship-group':
    case 'coast':
    case 'coast-all-national':
    case 'sar-aircraft':
    case 'sar-aircraft-all-national':
    case 'craft':
    case 'aton':
    case 'handheld':
      return identity.mid;
    case 'coast-all':
      return 'all';
    case 'ais-sart':
    case 'mob':
    case 'epirb-ais':
      return identity.manufacturer;
    case 'amrd-b':
      return identity.serial;
  }
}

const result = parseIdentity('232878000');
if (result.ok && result.value.kind === 'aton') {
  holds<Equal<typeof result.value.categoryHint, 'physical' | 'virtual' | 'mobile' | undefined>>();
}
holds<Equal<Identity['kind'], IdentityKind>>();
