import { byId } from './dom.ts';
import { bindLanguage } from './language.ts';

/** What a page was asked, by the names of its form's fields. Kept after the `#` of the address, so that a finding can be shared. */
export type Question = Readonly<Record<string, string>>;

/** Longer texts are left out of the address: not every program that carries links takes them. */
const MOST = 6000;

/** A form that is tied to the address of its page. */
export interface Finding {
  set(changes: Question): void;
  /** Whether the address holds everything that the form holds. */
  isWhole(): boolean;
}

/**
 * Ties a form to the address of the page: the form and the address always hold the same.
 *
 * Fields are left out of the address while they hold what is usual: what the page began with, or what `usualFor` says
 * for the question. When another question has another usual value, a field that held the old one takes the new one.
 * Nothing after `#` is sent to a server.
 */
export function bindFinding(
  form: HTMLFormElement,
  answer: (question: Question) => void,
  usualFor: (question: Question) => Question = () => ({}),
): Finding {
  const begun = read(form);
  const usualOf = (question: Question): Question => ({ ...begun, ...usualFor(question) });
  let usual = usualOf(begun);
  let asked = '';

  function fromAddress(): void {
    const given = addressed();
    usual = usualOf({ ...begun, ...given });
    write(form, { ...usual, ...given });
    ask();
  }

  function ask(): void {
    const held = read(form);
    const now = usualOf(held);
    const still = Object.entries(now).filter(([name]) => held[name] === usual[name]);
    write(form, { ...held, ...Object.fromEntries(still) });
    usual = now;
    const question = read(form);
    const address = new URLSearchParams(
      Object.entries(question).filter(([name, value]) => value !== usual[name] && value.length <= MOST),
    );
    const hash = address.toString();
    asked = hash;
    if (hash !== location.hash.slice(1))
      history.replaceState(null, '', hash === '' ? location.pathname : `#${hash}`);
    // What was said of the last link is not true of this one.
    byId('share-told').textContent = '';
    answer(question);
  }

  function addressed(): Question {
    const given = new URLSearchParams(location.hash.slice(1));
    return Object.fromEntries([...given].filter(([name]) => names().includes(name)));
  }

  function names(): readonly string[] {
    return Object.keys(begun);
  }

  form.addEventListener('submit', (event) => event.preventDefault());
  // Fields may stand elsewhere on the page and belong to the form all the same.
  document.addEventListener('input', ({ target }) => {
    if (target instanceof Element && 'form' in target && target.form === form) ask();
  });
  window.addEventListener('hashchange', () => {
    if (location.hash.slice(1) !== asked) fromAddress();
  });
  bindLanguage(() => answer(read(form)));
  fromAddress();
  return {
    set(changes) {
      write(form, { ...read(form), ...changes });
      ask();
    },
    isWhole() {
      const kept = { ...usual, ...addressed() };
      return Object.entries(read(form)).every(([name, value]) => value === kept[name]);
    },
  };
}

function read(form: HTMLFormElement): Record<string, string> {
  const question: Record<string, string> = {};
  for (const field of fieldsOf(form)) {
    if (field instanceof HTMLInputElement && field.type === 'checkbox')
      question[field.name] = field.checked ? 'yes' : '';
    else question[field.name] = field.value;
  }
  return question;
}

function write(form: HTMLFormElement, question: Question): void {
  for (const field of fieldsOf(form)) {
    const value = question[field.name] ?? '';
    if (field instanceof HTMLInputElement && field.type === 'checkbox') field.checked = value === 'yes';
    else if (field.value !== value) field.value = value;
  }
}

/** Every named field but those marked `data-unkept`: consents and files are never carried by a link. */
function fieldsOf(form: HTMLFormElement): (HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement)[] {
  return [...form.elements].filter(
    (field): field is HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement =>
      (field instanceof HTMLInputElement ||
        field instanceof HTMLSelectElement ||
        field instanceof HTMLTextAreaElement) &&
      field.name !== '' &&
      field.type !== 'file' &&
      field.dataset['unkept'] === undefined,
  );
}

/** The button that copies the address of the finding; `unlinkable` says why no address can hold it, or `null`. */
export function bindShare({ isWhole }: Finding, unlinkable: () => string | null = () => null): void {
  byId('share').addEventListener('click', () => {
    const told = byId('share-told');
    const reason = unlinkable() ?? (isWhole() ? null : TOO_LONG);
    if (reason !== null) {
      told.textContent = reason;
      return;
    }
    if (navigator.clipboard === undefined) {
      told.textContent = 'Copy the address of this page: it holds the finding.';
      return;
    }
    navigator.clipboard.writeText(location.href).then(
      () => {
        told.textContent = 'Link copied. It opens this result.';
      },
      () => {
        told.textContent =
          'The browser did not allow copying. Copy the address of this page: it holds the finding.';
      },
    );
  });
}

const TOO_LONG = `Not copied: a text of more than ${MOST} characters is too long for a link. Send the text itself, or a part of it.`;
