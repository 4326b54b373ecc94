import type { NatureOfDistress, SpokenStation } from '../call/index.ts';
import type { ReportedPosition, TimeOfDay } from '../position/index.ts';
import type { CodedText } from '../result/index.ts';
import { type Plain, plain } from './texts.ts';

/** Situations by kind, with their facts. */
export interface Situations {
  /** Own vessel is in grave and imminent danger. */
  readonly mayday: {
    readonly nature?: NatureOfDistress | null | undefined;
    readonly position?: ReportedPosition | null | undefined;
    /** UTC of the position. */
    readonly time?: TimeOfDay | null | undefined;
    /** Kind of assistance required, e.g. `'I require a pump'`. */
    readonly assistance?: string | null | undefined;
    readonly personsOnBoard?: number | null | undefined;
    /** Anything else that helps the rescue. */
    readonly information?: string | null | undefined;
  };
  /** Another vessel is in distress and cannot say so herself. */
  readonly 'mayday-relay': Situations['mayday'] & {
    /** `null` when the vessel is not known. */
    readonly distressed: SpokenStation | null;
    /** All stations unless stated. */
    readonly to?: SpokenStation | null | undefined;
  };
  /** A distress alert or message was heard and is acknowledged. */
  readonly 'received-mayday': {
    readonly distressed: SpokenStation;
    /** The alert was acknowledged by another station already; not unless stated. */
    readonly answered?: boolean | undefined;
  };
  /** A relay was heard from a coast station and is acknowledged. */
  readonly 'received-mayday-relay': {
    readonly from: SpokenStation;
  };
  /** An own alert was false. */
  readonly 'cancel-alert': {
    /** UTC at which the alert was sent. */
    readonly time: TimeOfDay | null;
  };
  /** A very urgent message about the safety of a vessel or a person. */
  readonly 'pan-pan': {
    /** All stations unless stated. */
    readonly to?: SpokenStation | null | undefined;
    /** What is wrong, and what help is needed. */
    readonly message?: string | null | undefined;
    readonly position?: ReportedPosition | null | undefined;
    /** UTC of the position. */
    readonly time?: TimeOfDay | null | undefined;
    /** A medical transport protected by the Geneva Conventions. */
    readonly medicalTransport?: boolean | undefined;
    /** 16 unless stated. */
    readonly channel?: string | null | undefined;
  };
  /** A warning for navigation or of the weather. */
  readonly securite: {
    /** All stations unless stated. */
    readonly to?: SpokenStation | null | undefined;
    readonly message?: string | null | undefined;
    /** Where the message follows, when not on 16. */
    readonly channel?: string | null | undefined;
    /** A selective call named the channel already, so that all is said there; not unless stated. */
    readonly announced?: boolean | undefined;
  };
  /** The caller speaks first, on the channel agreed. */
  readonly 'routine-call': {
    readonly to: SpokenStation;
    readonly channel: string | null;
    /** `to` is a group, whose members answer one by one; not unless stated. */
    readonly toGroup?: boolean | undefined;
  };
  /** The called station answers, on the channel agreed. */
  readonly 'routine-answer': {
    readonly to: SpokenStation;
    readonly channel: string | null;
    /** The group that was called; own station unless stated. */
    readonly group?: SpokenStation | null | undefined;
  };
  /** Is my transmission heard? */
  readonly 'radio-check': {
    readonly to: SpokenStation;
    readonly channel: string | null;
  };
}

/** The purpose of the voice message. */
export type Situation<Kind extends keyof Situations = keyof Situations> = {
  [K in Kind]: { readonly kind: K } & Situations[K];
}[Kind];

/** One thing to say. */
export type SpokenLine = SpokenScript['lines'][number];

/**
 * The words of a voice message. The words are English, those that radio operators everywhere listen for: in another
 * language show the gloss beside a line, never in its place. `translate` of `seahail/locale` takes each coded text.
 */
export interface SpokenScript {
  readonly title: string;
  readonly titleText: CodedText;
  /** VHF channel, `null` when none was named. */
  readonly channel: string | null;
  /** Empty when there is nothing to say; `caution` then says what to do. */
  readonly lines: readonly {
    /** The words; a missing fact is put in brackets, e.g. `[call sign]`. */
    readonly say: string;
    /** What the line does, e.g. `'Say your own name three times'`. */
    readonly gloss: CodedText;
    /** The speaker, when it is not the own station. */
    readonly who?: 'other';
    /** Instruction or caution for this line. */
    readonly note?: string;
    /** The same with the data it is made from. */
    readonly noteText?: CodedText;
  }[];
  /** The missing facts, which are put in brackets, each once. */
  readonly blanks: readonly string[];
  readonly caution: string;
  readonly cautionText: CodedText;
  readonly clause: string;
}

/** A script with its blanks gathered from its lines. */
export function script({
  title,
  channel,
  lines,
  caution,
  clause,
}: Pick<SpokenScript, 'channel' | 'lines' | 'clause'> & {
  readonly title: Plain;
  readonly caution: Plain | CodedText;
}): SpokenScript {
  const blanks = lines.flatMap(({ say }) =>
    [...say.matchAll(/\[([^[\]]+)\]/g)].map((match) => match[1] as string),
  );
  const [titleText, cautionText] = [plain(title), plain(caution)];
  return {
    title: titleText.message,
    titleText,
    channel,
    lines,
    blanks: [...new Set(blanks)],
    caution: cautionText.message,
    cautionText,
    clause,
  };
}

/** One thing to say, what it does, and an instruction for it. */
export function line(say: string, gloss: Plain | CodedText, note?: Plain | CodedText): SpokenLine {
  return { say, gloss: plain(gloss), ...(note !== undefined && noted(plain(note))) };
}

/** An instruction of a line. */
export function noted(noteText: CodedText): Pick<SpokenLine, 'note' | 'noteText'> {
  return { note: noteText.message, noteText };
}
