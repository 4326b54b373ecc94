/** What other modules of this library use of this one and the package does not publish. */
export { want } from './compose/arguments.ts';
export { awayFromVhf, isMfHf, ON_THE_BAND } from './element/mf-hf.ts';
export { isMooredVesselAlarm } from './element/moored-vessel.ts';
export { isAshore } from './element/station-identity.ts';
export { PARITY_MARKS } from './element/telephone-number.ts';
export type { DraftFields } from './fields.ts';
export { allFields, type FieldName, fieldForms, POSITION_HEADER } from './fields.ts';
export { fillWhatIsUnsaid } from './fill-unsaid.ts';
export { stationNamed } from './station-names.ts';
