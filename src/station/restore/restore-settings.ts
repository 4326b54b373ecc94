import { completeSettings, type StationSettings } from '../state/settings.ts';
import { settingsForm } from '../state/settings-form.ts';
import { isRecord } from './read-plain.ts';

/** Settings that a state of version 2 may lack. */
const LATER: readonly string[] = ['designated', 'watched'] satisfies readonly (keyof StationSettings)[];

/** Settings from stored data, whatever makes no sense replaced by the usual value. */
export function readSettings(
  stored: unknown,
  mend: (at: string, received: unknown) => void,
): StationSettings {
  const usual = completeSettings({});
  if (!isRecord(stored)) {
    mend('settings', stored);
    return usual;
  }
  const kept = Object.entries(settingsForm).flatMap(([key, fits]) => {
    // Stored before the setting existed: nothing is damaged.
    if (LATER.includes(key) && !Object.hasOwn(stored, key)) return [];
    const value = Object.hasOwn(stored, key) ? stored[key] : undefined;
    if (fits(value)) return [[key, value]];
    mend(`settings ${key}`, value);
    return [];
  });
  return completeSettings(Object.fromEntries(kept), usual);
}
