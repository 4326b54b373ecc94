// Every entry point of the package, by name.
import * as audio from '../../../src/audio/index.ts';
import * as burst from '../../../src/burst/index.ts';
import * as call from '../../../src/call/index.ts';
import * as channel from '../../../src/channel/index.ts';
import * as directory from '../../../src/directory/index.ts';
import * as administrations from '../../../src/identity/administrations.ts';
import * as identity from '../../../src/identity/index.ts';
import { english } from '../../../src/locale/en.ts';
import * as network from '../../../src/network/index.ts';
import * as position from '../../../src/position/index.ts';
import * as plot from '../../../src/position/plot/index.ts';
import * as report from '../../../src/report/index.ts';
import * as result from '../../../src/result/index.ts';
import * as sentence from '../../../src/sentence/index.ts';
import * as speech from '../../../src/speech/index.ts';
import * as station from '../../../src/station/index.ts';

export const doors: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  audio,
  burst,
  call,
  channel,
  directory,
  administrations,
  identity,
  network,
  position,
  plot,
  report,
  result,
  sentence,
  speech,
  station,
};

/** Every exported function, as `door.name`. */
export const functions: Readonly<Record<string, (...given: unknown[]) => unknown>> = Object.fromEntries(
  Object.entries(doors).flatMap(([door, exports]) =>
    Object.entries(exports)
      .filter(([, value]) => typeof value === 'function')
      .map(([name, value]) => [`${door}.${name}`, value as (...given: unknown[]) => unknown]),
  ),
);

/** Every code that an issue or notice may carry. */
export const codes: ReadonlySet<string> = new Set(Object.keys(english.codes));
