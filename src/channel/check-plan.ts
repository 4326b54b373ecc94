import type { Issue } from '../result/index.ts';
import { givenInWords, type TermOf } from '../result/internal.ts';
import type { Channel, ChannelPlan, ChannelUse, Fitness } from './channel.ts';
import { parseDesignator } from './designator.ts';
import { plainText } from './plain-text.ts';
import { type planCheckTexts, planIssue } from './texts.ts';

/** More findings than a person can use at once are not listed. */
const MOST_ISSUES = 20;

type Path = readonly (string | number)[];
/** What a field must hold: the words it may be one of, or the name of the rule. */
type Expected = TermOf<typeof planCheckTexts, 'plan-rule'> | readonly string[];
/** What a field must hold: one of some words, or what a rule says and asks. */
type Rule = readonly string[] | readonly [expected: Expected, holds: (value: unknown) => boolean];

/**
 * What keeps a value from being a channel plan: at most twenty findings, none for a plan that every function can use.
 * Nothing is thrown, whatever the value is.
 */
export function planIssues(value: unknown): Issue[] {
  if (!isRecord(value)) return [issue([], 'plan', value)];
  const issues = fieldIssues(value, PLAN, []);
  if (!Array.isArray(value['channels'])) return issues;
  const names = new Map<string, number>();
  value['channels'].forEach((channel: unknown, place) => {
    if (issues.length < MOST_ISSUES) issues.push(...channelIssues(channel, place, names));
  });
  if (issues.length > 0) return issues.slice(0, MOST_ISSUES);
  const plan = value as unknown as ChannelPlan;
  return plan.callingChannels
    .filter((name) => !names.has(asLookedUp(name)))
    .map((name) => issue(['callingChannels'], 'calling', name));
}

function channelIssues(value: unknown, place: number, names: Map<string, number>): Issue[] {
  const at = ['channels', place];
  if (!isRecord(value)) return [issue(at, 'channel', value)];
  const issues = fieldIssues(value, CHANNEL, at);
  if (issues.length > 0) return issues;
  const channel = value as unknown as Channel;
  for (const name of [channel.designator, ...channel.aliases]) {
    const asked = asLookedUp(name);
    const holder = names.get(asked) ?? place;
    if (holder !== place) issues.push(nameTwice(place, holder, name));
    names.set(asked, holder);
  }
  const wrong = CONSISTENT.find(([, , holds]) => !holds(channel));
  if (wrong !== undefined) issues.push(issue([...at, wrong[0]], wrong[1], channel[wrong[0]]));
  return issues;
}

/** What a look-up takes a name for: '6' and 'ch 6' are 06, other names any case and spacing. */
function asLookedUp(name: string): string {
  const read = parseDesignator(name);
  return read.ok ? read.value.text : (plainText(name) ?? name);
}

function fieldIssues(
  record: Readonly<Record<string, unknown>>,
  rules: Readonly<Record<string, Rule>>,
  at: Path,
): Issue[] {
  return Object.entries(rules).flatMap(([field, rule]) => {
    const given = Object.hasOwn(record, field) ? record[field] : undefined;
    const [expected, holds] = isWords(rule) ? [rule, isOneOf(given, rule)] : [rule[0], rule[1](given)];
    return holds ? [] : [issue([...at, field], expected, given)];
  });
}

function isWords(rule: Rule): rule is readonly string[] {
  return typeof rule[1] !== 'function';
}

function issue(at: Path, expected: Expected, given: unknown): Issue {
  const place = at
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${step}`))
    .join('')
    .slice(1);
  const more = { at, received: givenInWords(given), clause: 'common practice' };
  if (typeof expected !== 'string')
    return planIssue('channel-plan-word', { place, accepted: expected }, more);
  return planIssue('channel-plan-malformed', { ...(place !== '' && { place }), rule: expected }, more);
}

function nameTwice(place: number, holder: number, name: string): Issue {
  return planIssue(
    'channel-plan-name-twice',
    { place: `channels[${place}].designator`, holder: `channels[${holder}]` },
    { at: ['channels', place, 'designator'], received: givenInWords(name), clause: 'common practice' },
  );
}

/** Whether it is an object with fields, which a list is not. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const isText = (value: unknown): boolean => typeof value === 'string' && value.trim() !== '';
const isWatts = (value: unknown): boolean => Number.isFinite(value) && (value as number) > 0;
const isOneOf = (value: unknown, words: readonly string[]): boolean => words.some((word) => word === value);
const isListOf = (value: unknown, holds: (item: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(holds);

const TEXT: Rule = ['text', isText];
const TEXT_OR_NULL: Rule = ['text-or-null', (value) => value === null || isText(value)];
const TEXTS: Rule = ['texts', (value) => isListOf(value, isText)];
const TRUTH: Rule = ['truth', (value) => typeof value === 'boolean'];
const WATTS: Rule = ['watts', (value) => value === null || isWatts(value)];
const KHZ: Rule = [
  'khz',
  (value) => value === null || (Number.isInteger(value) && (value as number) > 0 && (value as number) < 1e6),
];
// A call sign or a frequency in full is longer than any name of a channel; plain-text.ts reads no longer one.
const NAME: Rule = ['name', isName];
function isName(value: unknown): boolean {
  return isText(value) && plainText(value as string) !== undefined;
}

const FITNESS: readonly Fitness[] = ['preferred', 'allowed', 'restricted', 'prohibited'];
const USES: { readonly [use in ChannelUse]: true } = {
  ais: true,
  'aircraft-support': true,
  asm: true,
  'autonomous-devices': true,
  calling: true,
  'coast-guard': true,
  'coast-guard-liaison': true,
  commercial: true,
  'distress-safety-calling': true,
  dredging: true,
  dsc: true,
  'environmental-broadcast': true,
  fishing: true,
  government: true,
  intership: true,
  marina: true,
  'nautical-information': true,
  'navigation-safety': true,
  'non-commercial': true,
  'on-board': true,
  pilotage: true,
  'pollution-control': true,
  'port-operations': true,
  'public-correspondence': true,
  safety: true,
  'safety-broadcast': true,
  'search-and-rescue': true,
  'ship-movement': true,
  'ship-to-coast': true,
  towing: true,
  vdes: true,
  'vessel-traffic': true,
  'weather-broadcast': true,
};

const PLAN: { readonly [field in keyof ChannelPlan]: Rule } = {
  kind: ['channel-plan'],
  name: TEXT,
  edition: TEXT,
  sources: TEXTS,
  cautions: TEXTS,
  callingChannels: TEXTS,
  rules: TEXTS,
  channels: ['channels', (value) => Array.isArray(value)],
};

const isUse = (value: unknown): boolean => typeof value === 'string' && Object.hasOwn(USES, value);
const isLimit = (value: unknown): boolean =>
  isRecord(value) &&
  isWatts(value['watts']) &&
  isOneOf(value['measure'], ['output', 'radiated']) &&
  isText(value['when']);
const isEvidence = (value: unknown): boolean =>
  isRecord(value) && isOneOf(value['basis'], ['source', 'memory']) && isText(value['source']);

const CHANNEL: { readonly [field in keyof Channel]: Rule } = {
  kind: ['channel'],
  plan: TEXT,
  designator: NAME,
  aliases: ['names', (value) => isListOf(value, isName)],
  m1084: [
    'm1084',
    (value) => value === null || (typeof value === 'string' && /^(?:[12]0)?\d\d$/.test(value)),
  ],
  shipKHz: KHZ,
  coastKHz: KHZ,
  mode: ['simplex', 'duplex', 'coast-broadcast'],
  service: ['voice', 'distress', 'dsc', 'ais', 'asm', 'vdes', 'data', 'weather'],
  uses: ['uses', (value) => isListOf(value, isUse)],
  note: TEXT,
  region: TEXT_OR_NULL,
  transmitters: ['ships', 'ships-and-coast', 'coast'],
  receiveOnly: TRUTH,
  users: ['all', 'commercial', 'non-commercial', 'authority'],
  powerLimitW: WATTS,
  powerRule: TEXT_OR_NULL,
  automaticPowerReduction: TRUTH,
  conditionalPowerLimits: ['limits', (value) => isListOf(value, isLimit)],
  coastPowerLimitW: WATTS,
  dataMessages: ['data', (value) => value === null || isOneOf(value, ['permitted', 'prohibited'])],
  intership: [
    'intership',
    (value) =>
      isRecord(value) && isOneOf(value['nonCommercial'], FITNESS) && isOneOf(value['commercial'], FITNESS),
  ],
  caution: TEXT_OR_NULL,
  assignable: TRUTH,
  notAssignableReason: TEXT_OR_NULL,
  selectiveCallRule: TEXT_OR_NULL,
  evidence: [
    'evidence',
    (value) => isRecord(value) && ['frequency', 'use', 'power'].every((field) => isEvidence(value[field])),
  ],
};

/** What the fields of one channel say of each other. */
const CONSISTENT: readonly (readonly [
  field: keyof Channel,
  expected: Expected,
  holds: (channel: Channel) => boolean,
])[] = [
  ['shipKHz', 'frequency', hasFrequency],
  [
    'mode',
    'mode',
    ({ mode, shipKHz, coastKHz }) => {
      const hasTwo = shipKHz !== null && coastKHz !== null && shipKHz !== coastKHz;
      return hasTwo === (mode === 'duplex');
    },
  ],
  ['receiveOnly', 'receive-only', ({ receiveOnly, shipKHz }) => receiveOnly === (shipKHz === null)],
  [
    'transmitters',
    'transmitters',
    ({ transmitters, shipKHz, coastKHz }) =>
      transmitters === (shipKHz === null ? 'coast' : coastKHz === null ? 'ships' : 'ships-and-coast'),
  ],
  [
    'notAssignableReason',
    'reason',
    ({ assignable, notAssignableReason }) => assignable === (notAssignableReason === null),
  ],
];

function hasFrequency({ shipKHz, coastKHz }: Channel): boolean {
  return shipKHz !== null || coastKHz !== null;
}
