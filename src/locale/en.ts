/**
 * The English texts, as the library itself uses them: for pages that show every code, and as a pattern for another
 * language.
 *
 * @packageDocumentation
 */
import { audioTexts, wavTexts } from '../audio/internal.ts';
import { bridgeTexts } from '../bridge/internal.ts';
import { burstTexts } from '../burst/internal.ts';
import { answerTexts, cautionTexts, checkTexts, describeTexts, receivedTexts } from '../call/internal.ts';
import { lookUpTexts, planCheckTexts, planTexts, workingTexts } from '../channel/internal.ts';
import { directoryTexts } from '../directory/internal.ts';
import { fieldTexts, parseTexts } from '../identity/internal.ts';
import { faultTexts as networkFaultTexts, networkTexts } from '../network/internal.ts';
import { boundsTexts, digitTexts, plotTexts, rangeTexts, writtenTexts } from '../position/internal.ts';
import type { Grade } from '../result/index.ts';
import { givenTerms, type Texts } from '../result/internal.ts';
import { faultTexts as sentenceFaultTexts, sentenceTexts, writingTexts } from '../sentence/internal.ts';
import { speechTexts } from '../speech/internal.ts';
import { adviceTexts, phaseTexts, setupTexts, stationTexts, timerTexts } from '../station/internal.ts';
import type { Catalogue } from './catalogue.ts';

const modules: Readonly<Record<string, readonly Texts[]>> = {
  result: [{ terms: givenTerms }],
  identity: [parseTexts, fieldTexts],
  directory: [directoryTexts],
  channel: [lookUpTexts, workingTexts, planCheckTexts, planTexts],
  position: [rangeTexts, writtenTexts, digitTexts, boundsTexts, plotTexts],
  call: [receivedTexts, checkTexts, cautionTexts, answerTexts, describeTexts],
  speech: [speechTexts],
  sentence: [sentenceTexts, writingTexts, sentenceFaultTexts],
  network: [networkTexts, networkFaultTexts],
  station: [stationTexts, adviceTexts, phaseTexts, timerTexts, setupTexts],
  burst: [burstTexts],
  audio: [audioTexts, wavTexts],
  bridge: [bridgeTexts],
};

/** The texts in English, with the grade of each code and the module it belongs to. */
export const english: Catalogue & {
  /** `null` for what is no issue, such as advice or what a station shows. */
  readonly codes: Readonly<Record<string, { readonly module: string; readonly grade: Grade | null }>>;
} = {
  lang: 'en',
  translated: { by: 'the authors', on: '2026-11-28', note: 'the original' },
  texts: Object.fromEntries(
    Object.values(modules)
      .flat()
      .flatMap((texts) => Object.values(texts).flatMap((group) => Object.entries(group))),
  ) as Catalogue['texts'],
  codes: Object.fromEntries(
    Object.entries(modules).flatMap(([module, tables]) =>
      tables
        .flatMap(({ terms: _, ...groups }) => Object.entries(groups))
        .flatMap(([group, texts]) =>
          Object.keys(texts).map((code) => [
            code,
            { module, grade: group === 'said' ? null : (group as Grade) },
          ]),
        ),
    ),
  ),
};
