import {
  checkCallSign,
  checkIdentity,
  type Identity,
  type IdentityField,
  parseIdentity,
} from 'seahail/identity';
import { checkAssigned } from 'seahail/identity/administrations';
import { announce } from '../frame/announce.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { said } from '../frame/language.ts';
import { findings, sentence } from '../frame/ledger.ts';
import { anatomy } from './anatomy.ts';
import { formName, inShort, linesOf } from './lines.ts';

const USES: Readonly<Record<IdentityField['use'], string>> = {
  own: 'be the own number of that set',
  individual: 'be called as one station',
  group: 'be called as a group',
  distressed: 'be named as the vessel in distress',
};

const form = byId<HTMLFormElement>('question');
const finding = bindFinding(form, answer);
bindShare(finding);

function answer(question: Question): void {
  const part = form.querySelector<HTMLElement>('[data-when]');
  if (part !== null) part.hidden = question['use'] !== 'own';
  answerSign(question['sign'] ?? '');

  const number = byId('number');
  number.removeAttribute('aria-invalid');
  if ((question['number'] ?? '').trim() === '') {
    announce('Type a number.');
    fill(byId('answer'));
    return;
  }
  const result = parseIdentity(question['number']);
  if (!result.ok) {
    number.setAttribute('aria-invalid', 'true');
    const offered = result.issues.some((issue) => issue.suggestion !== undefined);
    announce(`${countOfDigits(question['number'] ?? '')}${offered ? ' It may be meant as one below.' : ''}`);
    fill(
      byId('answer'),
      offered
        ? h(
            'p',
            {},
            'Numbers are never corrected for you: the corrected one may belong to someone else. Check, then choose.',
          )
        : null,
      findings(result.issues, choose, (suggestion) => `, ${nameOf(suggestion)}`),
    );
    return;
  }
  const identity = result.value;
  const use = useAnswer(identity, question);
  announce(use === null ? inShort(identity) : `${inShort(identity)} ${use.verdict}`);
  fill(
    byId('answer'),
    use?.said,
    anatomy(identity),
    findings([...result.notices, ...checkAssigned(identity)]),
    linesOf(identity),
  );
}

/** What is wrong with the number of digits, if that is what is wrong. */
function countOfDigits(text: string): string {
  const digits = text.replace(/[\s.-]/g, '');
  const missing = 9 - digits.length;
  if (!/^\d+$/.test(digits) || missing === 0) return 'Not an identity.';
  const [count, verb] =
    Math.abs(missing) === 1 ? ['One digit', 'is'] : [`${Math.abs(missing)} digits`, 'are'];
  return `${count} ${missing > 0 ? `${verb} missing` : 'too many'}: an identity has nine.`;
}

/** What kind of identity a reading would be: a group is not to be taken for a ship. */
function nameOf(suggestion: string): string {
  const read = parseIdentity(suggestion);
  return read.ok ? formName(read.value) : 'still no identity';
}

function choose(suggestion: string): void {
  finding.set({ number: suggestion });
  byId('number').focus();
}

/** Whether it may be used as asked: in one sentence, and why. */
function useAnswer(
  identity: Identity,
  question: Question,
): { readonly verdict: string; readonly said: HTMLElement } | null {
  const use = question['use'] as IdentityField['use'] | '' | undefined;
  if (use === undefined || use === '') return null;
  const notices = checkIdentity(identity, {
    use,
    station: (question['set'] ?? 'fixed') as NonNullable<IdentityField['station']>,
  });
  const fits = notices.every(({ grade }) => grade !== 'error');
  const said = h(
    'div',
    { class: 'verdict' },
    h('p', {}, h('b', {}, fits ? 'Yes, it can be used that way.' : 'No, it cannot be used that way.')),
    findings(notices),
    use === 'own'
      ? h(
          'p',
          {},
          'Many radios accept their own number only once; after that a dealer must change it. The licence says which number is yours.',
        )
      : null,
  );
  return { verdict: `It may ${fits ? '' : 'not '}${USES[use]}.`, said };
}

function answerSign(sign: string): void {
  const notices = sign.trim() === '' ? [] : checkCallSign(sign);
  fill(
    byId('sign-answer'),
    sign.trim() === ''
      ? null
      : h(
          'p',
          {},
          notices.length === 0
            ? 'A shape that ships are given. Only a licence can confirm it.'
            : said(notices[0] ?? {}, sentence),
        ),
    notices.length === 0 ? null : h('p', { class: 'clause' }, notices[0]?.clause ?? ''),
  );
}
