import { type CallFields, emptyFields } from './fields.ts';

/** The fields with all their names: what is missing, or of another type, is not carried. */
export function whole(fields: unknown): CallFields {
  const given = typeof fields === 'object' && fields !== null ? (fields as Partial<CallFields>) : {};
  if (NAMES.every((name) => fits(name, given[name]))) return given as CallFields;
  return Object.fromEntries(
    NAMES.map((name) => [name, fits(name, given[name]) ? given[name] : emptyFields[name]]),
  ) as unknown as CallFields;
}

const NAMES = /* @__PURE__ */ Object.keys(emptyFields) as readonly (keyof CallFields)[];

function fits(name: keyof CallFields, value: unknown): boolean {
  switch (name) {
    case 'format':
    case 'category':
    case 'telecommand1':
    case 'telecommand2':
    case 'nature':
    case 'subsequent':
    case 'end':
      return value === null || typeof value === 'number';
    case 'header':
      return typeof value === 'boolean';
    case 'rest':
      return Array.isArray(value);
    case 'expansion':
      return Array.isArray(value) && value.every((set) => Array.isArray(set?.symbols));
    default:
      return value === null || Array.isArray(value);
  }
}
