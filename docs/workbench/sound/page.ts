import { type HeardBurst, readWav } from 'seahail/audio';
import type { Issue } from 'seahail/result';
import { announce } from '../frame/announce.ts';
import { byId, fill } from '../frame/dom.ts';
import { bindDrop } from '../frame/drop.ts';
import { bindLanguage } from '../frame/language.ts';
import { leadOn } from '../frame/lead-on.ts';
import { findings, ledger } from '../frame/ledger.ts';
import { inventedMinute } from './example.ts';
import { heardCard } from './heard.ts';
import { type Listener, listen, listenThrough } from './listen.ts';
import { type Microphone, openMicrophone } from './microphone.ts';
import { waveform } from './waveform.ts';

/** Samples of one channel and what is known of them. */
interface Sound {
  readonly name: string;
  /** Samples of each channel. */
  readonly channels: readonly Float32Array<ArrayBuffer>[];
  readonly sampleRate: number;
  readonly notices: readonly Issue[];
}

const [record, stop] = [byId<HTMLButtonElement>('record'), byId<HTMLButtonElement>('stop')];
const progress = byId<HTMLProgressElement>('progress');
let microphone: Microphone | null = null;
let listener: Listener | null = null;
/** Counts the questions, so that a late answer to an old one is not shown. */
let round = 0;

bindLanguage(() => {});
bindDrop(byId('drop'), byId<HTMLInputElement>('file'), (file) => {
  void hearFile(file);
});
byId('example').addEventListener('click', () => {
  const sampleRate = 48_000;
  void hear({ name: 'Invented minute', channels: [inventedMinute(sampleRate)], sampleRate, notices: [] });
});
record.addEventListener('click', () => {
  void startRecording();
});
stop.addEventListener('click', () => {
  void stopRecording();
});

async function hearFile(file: File): Promise<void> {
  await stopRecording();
  clear();
  try {
    const sound = await soundOf(file);
    if (sound !== null) await hear(sound);
  } catch {
    announce(`${file.name} holds no sound that this browser can read.`);
  }
}

async function soundOf(file: File): Promise<Sound | null> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const wav = readWav(bytes);
  if (wav.ok) {
    const { sampleRate, channelCount } = wav.value;
    const channels = Array.from({ length: channelCount }, (_, channel) => {
      const one = readWav(bytes, { channel });
      return Float32Array.from(one.ok ? one.value.samples : []);
    });
    return { name: file.name, channels, sampleRate, notices: wav.notices };
  }
  // What is no WAV file, or one in a codec, the browser may be able to read.
  if (!['audio-wav-not-wav', 'audio-wav-format'].includes(wav.issues[0].code)) {
    announce(`${file.name} is a WAV file that cannot be read.`);
    fill(byId('issues'), findings(wav.issues));
    return null;
  }
  const sampleRate = 48_000;
  const decoded = await new OfflineAudioContext(1, 1, sampleRate).decodeAudioData(bytes.buffer);
  const channels = Array.from({ length: decoded.numberOfChannels }, (_, channel) =>
    decoded.getChannelData(channel),
  );
  return { name: file.name, channels, sampleRate, notices: [] };
}

async function hear({ name, channels, sampleRate, notices }: Sound): Promise<void> {
  await stopRecording();
  clear();
  const mine = ++round;
  const seconds = (channels[0]?.length ?? 0) / sampleRate;
  const many = channels.length > 1 ? `, ${channels.length} channels` : '';
  fill(
    byId('about'),
    ledger([
      { what: 'Sound', answer: `${name}, ${seconds.toFixed(1)} s at ${sampleRate} samples a second${many}` },
    ]),
    findings(notices),
  );
  announce('Listening.');
  progress.value = 0;
  byId('progress-line').hidden = false;
  const heard: Heard[] = [];
  const issues: Issue[] = [];
  for (const [channel, samples] of channels.entries()) {
    const found = await listenThrough(samples, sampleRate, (done) => {
      progress.value = (channel + done) / channels.length;
    });
    if (mine !== round) return;
    issues.push(...found.issues);
    for (const burst of found.heard)
      if (!heard.some((other) => other.channel !== channel && isSame(other, burst, sampleRate)))
        keep(heard, { ...burst, channel });
  }
  byId('progress-line').hidden = true;
  const drawn = channels[heard[0]?.channel ?? 0];
  if (drawn !== undefined) byId('about').append(waveform(drawn, sampleRate, heard));
  const unread = issues.some(({ code }) => UNREADABLE.includes(code));
  announce(heard.length > 0 ? `${plural(heard.length)} heard.` : unread ? NOT_READ : 'No call was heard.');
  fill(
    byId('heard'),
    heard.map((each) =>
      heardCard(each, sampleRate, leadOn(each.reception.call), many === '' ? null : each.channel + 1),
    ),
  );
  fill(byId('issues'), findings(issues.map((issue) => withTime(issue, sampleRate))));
}

const UNREADABLE = ['audio-burst-unreadable', 'audio-burst-overtaken'];
const NOT_READ = 'Something began like a call and could not be read.';

/** People look for a time in a sound, not for the number of a sample. */
function withTime(issue: Issue, sampleRate: number): Issue {
  const [where, sample] = issue.at;
  if (!UNREADABLE.includes(issue.code) || where !== 'sample') return issue;
  const why = issue.message.slice(issue.message.indexOf('. ') + 2);
  const at = (Number(sample) / sampleRate).toFixed(1);
  return { ...issue, message: `At ${at} s something began like a call and could not be read. ${why}` };
}

interface Heard extends HeardBurst {
  readonly channel: number;
}

/** The calls of one attempt are one call to a person: the surest report of it, from where the first began to the end of the last. */
function keep(heard: Heard[], burst: Heard): void {
  const at = heard.findIndex(({ channel, event }) => channel === burst.channel && event === burst.event);
  const before = heard[at];
  if (before === undefined) heard.push(burst);
  else heard[at] = { ...surer(before, burst), startSample: before.startSample, endSample: burst.endSample };
}

const VERDICTS = ['doubtful', 'repaired', 'clean'];

function surer(one: Heard, other: Heard): Heard {
  const rank = ({ reception }: Heard): number => VERDICTS.indexOf(reception.quality.verdict);
  return rank(other) >= rank(one) ? other : one;
}

/** Whether two channels gave the same call at the same instant. */
function isSame(one: HeardBurst, other: HeardBurst, sampleRate: number): boolean {
  return (
    Math.abs(one.startSample - other.startSample) < 0.01 * sampleRate &&
    one.reception.information.join() === other.reception.information.join()
  );
}

async function startRecording(): Promise<void> {
  clear();
  round++;
  const kept: Heard[] = [];
  let told = 0;
  record.disabled = true;
  try {
    microphone = await openMicrophone((samples) => {
      const now = performance.now();
      if (now - told > 200) {
        told = now;
        showLevel(samples);
      }
      listener?.push(samples);
    });
  } catch {
    record.disabled = false;
    announce('No microphone: allow it in the browser settings, or plug one in.');
    return;
  }
  const { sampleRate } = microphone;
  listener = listen(sampleRate, {
    onHeard: (heard: HeardBurst) => {
      keep(kept, { ...heard, channel: 0 });
      announce(`${plural(kept.length)} heard so far.`);
      const latestFirst = kept.toReversed();
      fill(
        byId('heard'),
        latestFirst.map((each) => heardCard(each, sampleRate, leadOn(each.reception.call))),
      );
    },
    onIssue: (issue: Issue) => byId('issues').append(findings([withTime(issue, sampleRate)]) ?? ''),
  });
  stop.disabled = false;
  stop.focus();
  byId('level-line').hidden = false;
  announce('Listening through the microphone.');
  fill(byId('about'), ledger([{ what: 'Sound', answer: `the microphone, ${sampleRate} samples a second` }]));
}

async function stopRecording(): Promise<void> {
  if (microphone === null) return;
  microphone.close();
  microphone = null;
  stop.disabled = true;
  record.disabled = false;
  byId('level-line').hidden = true;
  await listener?.end();
  listener = null;
  const count = byId('heard').childElementCount;
  announce(
    count === 0
      ? 'The microphone is closed. No call was heard.'
      : `The microphone is closed. ${plural(count)} heard.`,
  );
}

function showLevel(samples: Float32Array): void {
  let peak = 0;
  for (const sample of samples) peak = Math.max(peak, Math.abs(sample));
  const dB = peak === 0 ? -60 : Math.max(-60, 20 * Math.log10(peak));
  byId<HTMLMeterElement>('level').value = dB;
  byId('level-words').textContent = dB > -0.1 ? 'too loud' : dB < -45 ? 'very quiet' : 'good';
}

function clear(): void {
  for (const id of ['about', 'heard', 'issues']) fill(byId(id));
  byId('progress-line').hidden = true;
}

function plural(count: number): string {
  return count === 1 ? 'One call' : `${count} calls`;
}

// The sound path may be put to sleep by the browser when the page is left.
window.addEventListener('pagehide', () => {
  microphone?.close();
});
