import { type FormSchema, failure, type Result } from '../result/index.ts';
import { formSchema, requireOptions } from '../result/internal.ts';
import type { ChannelPlan } from './channel.ts';
import { findChannel } from './find-channel.ts';
import { type WorkingPurpose, wantPurpose } from './purpose.ts';
import { barTo } from './working-channel.ts';

/**
 * A schema for a channel of a plan, for libraries that take Standard Schema v1.
 *
 * @param plan - the plan of the waters
 * @param options - `purpose`: refuses what {@link checkWorkingChannel} rules out for it
 * @returns the schema; its output is the designator as the plan writes it, for {@link findChannel}
 * @throws RangeError when the purpose is none of them
 *
 * Source: Standard Schema v1.
 *
 * @see {@link findChannel}
 *
 * @example
 * ```ts
 * import { channelSchema } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 *
 * const field = channelSchema(internationalPlan, { purpose: 'intership-non-commercial' })['~standard'];
 * console.log(field.validate('ch 6')); // { value: '06' }
 * console.log(field.validate('70').issues?.[0]?.code); // channel-calls-only
 * ```
 */
export function channelSchema(
  plan: ChannelPlan,
  options: { readonly purpose?: WorkingPurpose | undefined } = {},
): FormSchema<string> {
  const { purpose } = requireOptions('channelSchema', options, ['purpose']);
  if (purpose !== undefined) wantPurpose(purpose);
  const read = (value: unknown): Result<string> => {
    const found = findChannel(plan, value as string);
    if (!found.ok) return found;
    const bar = purpose === undefined ? undefined : barTo(found.value, purpose);
    return bar === undefined ? { ...found, value: found.value.designator } : failure(bar);
  };
  return formSchema('channelSchema', read, { type: 'string' });
}
