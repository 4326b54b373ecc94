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
import { findings, sentence } from '../frame/ledger.ts';
import { anatomy } from './anatomy.ts';
import { inShort, linesOf } from './lines.ts';

const form = byId<HTMLFormElement>('question');
const finding = bindFinding(form, answer);
bindShare(finding);

function answer(question: Question): void {
  const part = form.querySelector<HTMLElement>('[data-when]');
  if (part !== null) part.hidden = question['use'] !== 'own';
  answerSign(question['sign'] ?? '');

  const result = parseIdentity(question['number']);
  if (!result.ok) {
    announce(
      result.issues.some((issue) => issue.suggestion !== undefined)
        ? 'No identity as it stands, but it may be meant as one.'
        : 'No identity.',
    );
    fill(
      byId('answer'),
      h(
        'p',
        {},
        'A number is never mended by itself: somebody else may answer to the mended one. Ask, then press the reading that was meant.',
      ),
      findings(result.issues, choose),
    );
    return;
  }
  const identity = result.value;
  const use = useAnswer(identity, question);
  announce(inShort(identity));
  fill(
    byId('answer'),
    anatomy(identity),
    use,
    findings([...result.notices, ...checkAssigned(identity)]),
    linesOf(identity),
  );
}

function choose(suggestion: string): void {
  finding.set({ number: suggestion });
  byId('number').focus();
}

function useAnswer(identity: Identity, question: Question): HTMLElement | null {
  const use = question['use'];
  if (use === undefined || use === '') return null;
  const result = checkIdentity(identity, {
    use: use as IdentityField['use'],
    station: (question['set'] ?? 'fixed') as NonNullable<IdentityField['station']>,
  });
  const said = result.ok ? result.notices : result.issues;
  return h(
    'div',
    { class: 'verdict' },
    h('p', {}, h('b', {}, result.ok ? 'It may be used so.' : 'It may not be used so.')),
    findings(said),
    use === 'own'
      ? h(
          'p',
          {},
          'Many sets take an own number once and then only from the dealer. The licence says which number is yours.',
        )
      : null,
  );
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
            : sentence(notices[0]?.message ?? ''),
        ),
    notices.length === 0 ? null : h('p', { class: 'clause' }, notices[0]?.clause ?? ''),
  );
}
