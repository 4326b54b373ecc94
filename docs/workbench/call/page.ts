import { modulate, writeWav } from 'seahail/audio';
import { type Burst, decodeBits, encodeCall } from 'seahail/burst';
import { type Call, checkCall, describeCall } from 'seahail/call';
import { writeSentences } from 'seahail/sentence';
import { announce } from '../frame/announce.ts';
import { inBlanks } from '../frame/blanks.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { cautionBox, findings, ledger, sentence } from '../frame/ledger.ts';
import { inventedName } from '../frame/names.ts';
import { planOf } from '../frame/plans.ts';
import { throughSoundPath, withNoise } from '../frame/samples.ts';
import { saveFile } from '../frame/save.ts';
import { heardCard, receptionOf } from '../sound/heard.ts';
import { listenThrough } from '../sound/listen.ts';
import { bitDrawing, bitsWith, damagedWords } from './bits.ts';
import { cautionsFor } from './cautions.ts';
import { alertTimeFrom, blanksOf, composeFrom, hasRoutine, usualFor } from './compose.ts';
import { wordsToSpeak } from './words.ts';

/** What a sound card is likely to run at, and what the receiver is given. */
const [MADE_AT, HEARD_AT] = [44_100, 48_000];

const offAir = byId<HTMLInputElement>('off-air');
let made: { readonly call: Call; readonly burst: Burst; readonly distress: boolean } | null = null;
let asked = '';

const form = byId<HTMLFormElement>('question');
// Damage belongs to one call: what a person changes in it makes another.
form.addEventListener('input', () => {
  byId<HTMLInputElement>('damaged').value = '';
});
const finding = bindFinding(form, answer, usualFor);
bindShare(finding);
offAir.addEventListener('change', allowSound);
byId('play').addEventListener('click', () => play());
byId('save').addEventListener('click', () => {
  const samples = soundOf(HEARD_AT);
  if (samples !== null)
    saveFile(
      `${made?.call.kind ?? 'call'}.wav`,
      new Uint8Array(writeWav(samples, { sampleRate: HEARD_AT })),
      'audio/wav',
    );
});
byId('decode').addEventListener('click', () => {
  void readBack();
});

function answer(question: Question): void {
  const blanks = blanksOf[question['kind'] ?? ''] ?? [];
  for (const part of form.querySelectorAll<HTMLElement>('[data-for]')) {
    part.hidden = !blanks.includes(part.dataset['for'] ?? '');
  }
  for (const option of byId<HTMLSelectElement>('category').options)
    option.disabled = option.value === 'routine' && !hasRoutine(question);
  const result = composeFrom(question);
  byId('answer').hidden = !result.ok;
  const about = JSON.stringify(result);
  if (about !== asked) {
    // A word once given counts for one call only.
    offAir.checked = false;
    fill(byId('heard'));
  }
  asked = about;
  if (!result.ok) {
    made = null;
    announce('Not a call yet.');
    fill(byId('cautions'));
    fill(
      byId('issues'),
      findings(inBlanks(form, result.issues), (suggestion) => {
        const [blank] = result.issues.find((issue) => issue.suggestion === suggestion)?.at ?? [];
        if (typeof blank === 'string') finding.set({ [blank]: suggestion });
      }),
    );
    return;
  }
  inBlanks(form, []);
  const call = result.value;
  const description = describeCall(call, { directory: inventedName });
  made = { call, burst: encodeCall(call), distress: call.kind.startsWith('distress-') };
  announce(sentence(description.sentence));
  fill(byId('cautions'), cautionBox(cautionsFor(call)));
  fill(byId('issues'));
  fill(
    byId('fields'),
    ledger(
      description.rows.map(({ label, value, symbols, clause }) => ({
        what: label,
        answer: [value, ' ', h('span', { class: 'wire symbols' }, (symbols ?? []).join(' '))],
        clause,
      })),
    ),
  );
  fill(byId('notices'), noticesOf(call, question));
  fill(byId('words'), wordsToSpeak(call, alertTimeFrom(question)));
  fill(byId('wire'), wire(call));
  showWords(made.burst, damagedWords(question['damaged'] ?? '', made.burst));
  byId('consent').hidden = !made.distress;
  allowSound();
}

/** The words on the air, and what a set reads from them when some are damaged. */
function showWords(burst: Burst, damaged: readonly number[]): void {
  fill(
    byId('air'),
    bitDrawing(burst, damaged, (words) => finding.set({ damaged: words.join('.') })),
  );
  if (damaged.length === 0) {
    fill(byId('again'));
    return;
  }
  const read = decodeBits(bitsWith(burst, damaged));
  fill(
    byId('again'),
    read.ok ? receptionOf(read.value) : [h('p', {}, 'No call is read.'), findings(read.issues)],
  );
}

function noticesOf(call: Call, question: Question): HTMLElement {
  const plan = question['plan'];
  const notices = checkCall(call, plan === '' ? {} : { plan: planOf(plan) });
  return (
    findings(notices) ??
    h(
      'p',
      {},
      call.kind === 'distress-self-cancel'
        ? 'No reason, if an alert was false: cancel it at once on the radio that sent it, and by voice on channel 16.'
        : call.kind.startsWith('distress-')
          ? 'Everything, unless somebody is in grave and imminent danger. That its form agrees with the tables is no leave to send it.'
          : 'No objection found. That is not permission to send: the licence and the operator decide.',
    )
  );
}

function wire(call: Call): readonly HTMLElement[] {
  const block = (title: string, direction: 'received' | 'commanded'): HTMLElement =>
    h(
      'div',
      {},
      h('h3', {}, title),
      h(
        'pre',
        { class: 'lines', tabindex: 0, 'aria-label': title },
        writeSentences(call, { direction }).sentences.join('\n'),
      ),
    );
  const received = block('As a radio reports it', 'received');
  if (call.kind.startsWith('distress-')) {
    return [received, h('p', {}, 'No sentence that would order a radio to send this is shown here.')];
  }
  return [received, block('As a plotter would tell a radio to send it', 'commanded')];
}

/** Distress needs the word that the sound stays off the air, every other call does not. */
function allowSound(): void {
  const allowed = made !== null && (!made.distress || offAir.checked);
  for (const id of ['play', 'save', 'decode']) byId<HTMLButtonElement>(id).disabled = !allowed;
}

function soundOf(sampleRate: number): Float32Array | null {
  if (made === null) return null;
  return modulate(made.burst, {
    sampleRate,
    leadInSeconds: 0.1,
    tailSeconds: 0.1,
    allowDistress: made.distress && offAir.checked,
  });
}

let playing: AudioContext | null = null;

/** Plays the sound, or ends it while it plays; the button says which. */
function play(): void {
  const button = byId<HTMLButtonElement>('play');
  if (playing !== null) {
    void playing.close();
    ended();
    return;
  }
  const samples = soundOf(HEARD_AT);
  if (samples === null) return;
  const context = new AudioContext();
  const buffer = context.createBuffer(1, samples.length, HEARD_AT);
  buffer.copyToChannel(Float32Array.from(samples), 0);
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.connect(context.destination);
  const label = button.textContent;
  source.onended = () => {
    void context.close();
    if (playing === context) ended();
  };
  playing = context;
  ended = () => {
    playing = null;
    button.textContent = label;
  };
  button.textContent = 'Playing: press to stop';
  source.start();
}

/** Puts the button back as it was. */
let ended = (): void => undefined;

async function readBack(): Promise<void> {
  const samples = soundOf(MADE_AT);
  if (samples === null) return;
  const noise = byId<HTMLSelectElement>('noise').value;
  fill(byId('heard'), h('p', {}, 'Listening.'));
  const sent = noise === '' ? Float32Array.from(samples) : withNoise(samples, MADE_AT, Number(noise));
  const before = asked;
  const { heard, issues } = await listenThrough(await throughSoundPath(sent, MADE_AT, HEARD_AT), HEARD_AT);
  if (asked !== before) return;
  fill(
    byId('heard'),
    heard.length === 0
      ? h('p', {}, 'No call was heard in it.')
      : heard.map((each) => heardCard(each, HEARD_AT)),
    findings(issues),
  );
}
