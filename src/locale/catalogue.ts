import type { AudioTexts } from '../audio/internal.ts';
import type { BridgeTexts } from '../bridge/internal.ts';
import type { BurstTexts } from '../burst/internal.ts';
import type { CallTexts } from '../call/internal.ts';
import type { ChannelTexts, planTexts } from '../channel/internal.ts';
import type { DirectoryTexts } from '../directory/internal.ts';
import type { IdentityTexts } from '../identity/internal.ts';
import type { NetworkTexts } from '../network/internal.ts';
import type { PositionTexts } from '../position/internal.ts';
import type { CodeOf, givenTerms, ParamsOf, TemplateOf, Texts } from '../result/internal.ts';
import type { SentenceTexts } from '../sentence/internal.ts';
import type { SpeechTexts } from '../speech/internal.ts';
import type { StationTexts } from '../station/internal.ts';

/** The English texts of every module: what a complete catalogue has to say. */
type Modules = {
  readonly result: { readonly terms: typeof givenTerms };
  readonly identity: IdentityTexts;
  readonly directory: DirectoryTexts;
  readonly channel: ChannelTexts;
  readonly channelPlans: typeof planTexts;
  readonly position: PositionTexts;
  readonly call: CallTexts;
  readonly speech: SpeechTexts;
  readonly sentence: SentenceTexts;
  readonly network: NetworkTexts;
  readonly station: StationTexts;
  readonly burst: BurstTexts;
  readonly audio: AudioTexts;
  readonly bridge: BridgeTexts;
};

type EachModule<Part extends 'code' | 'flat'> = {
  [M in keyof Modules]: Part extends 'code' ? CodeOf<Modules[M]> : Translation<Modules[M]>;
};

type Together<T> = (T extends unknown ? (whole: T) => void : never) extends (whole: infer All) => void
  ? All
  : never;

/** The texts of one module in another language: for each code what English has, and every term. */
export type Translation<T extends Texts> = {
  readonly [Code in CodeOf<T>]: TemplateOf<T, Code> extends string
    ? string
    : readonly [text: string, expected: string];
} & { readonly [Term in keyof T['terms']]: string };

/** Every code that has a text. */
export type TextCode = EachModule<'code'>[keyof Modules];

/**
 * The params of each code: `TextParams['identity-digit-count']` is `{ readonly count: Param }`. They are data: digits,
 * limits, names of channels, words for terms.
 */
export type TextParams = {
  readonly [Code in TextCode]: {
    [M in keyof Modules]: Code extends CodeOf<Modules[M]> ? ParamsOf<Modules[M], Code> : never;
  }[keyof Modules];
};

/** A language: complete, so that a code without a text does not compile. */
export interface Catalogue {
  /** BCP 47 tag. */
  readonly lang: string;
  /** Who translated it, when, and what is still to be done before it is relied on. deviation: D-locale-1 */
  readonly translated: { readonly by: string; readonly on: string; readonly note: string };
  /**
   * Templates by code, and words by term. `{name}` is a param, `{name:group}` the term `group.value` or, without one,
   * `group.*`; `{name& or }` a list joined by " or "; `[…]` is left out where the first param in it has no value.
   */
  readonly texts: Together<EachModule<'flat'>[keyof Modules]>;
}
