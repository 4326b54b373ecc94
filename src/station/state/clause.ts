/**
 * The documents that the machine leans on, written once. Which of them were read and which are remembered
 * is told by the timer table and by docs/deviations.md.
 */
export const clause = {
  procedures: 'ITU-R M.493, automated procedures',
  alarms: 'ITU-R M.493, alarms',
  identity: 'ITU-R M.493, self-identification',
  tuning: 'ITU-R M.493, automatic channel switching',
  position: 'ITU-R M.493, position and its age',
  errorCheck: 'ITU-R M.493, calls received with errors',
  address: 'ITU-R M.493, tables of calls',
  reasons: 'ITU-R M.493, second telecommand',
  equipment: 'ITU-R M.493, classes of equipment',
  calling: 'ITU-R M.541, operating procedures, routine calls',
  answering: 'ITU-R M.541, operating procedures, acknowledgement of routine calls',
  enquiry: 'ITU-R M.541, position requests, test calls and polling',
  announcement: 'ITU-R M.541, urgency and safety calls',
  alert: 'ITU-R M.541, transmission of a distress alert',
  alertAct: 'Japan MPT Notification 567 of 1990, distress key',
  acknowledgement: 'ITU-R M.541, acknowledgement of a distress alert',
  falseAlert: 'ITU-R M.541, cancellation of an inadvertent distress alert; 47 CFR 80.335',
  heardAlert: 'ITU-R M.541, reception of a distress alert; 47 CFR 80.1121',
  coastDuty: 'ITU-R M.541, co-ordination of distress traffic, from memory',
  coastRelay: 'ITU-R M.541 Annex 3, relay by a coast station, from memory',
  relay: 'IMO COMSAR/Circ.25 and its successor of 2022; 47 CFR 80.1121',
  channelUse: 'ITU-R M.822 and M.541, use of the calling channel',
  log: 'Radio Regulations, ship-station log; 47 CFR 80.409',
  ownChoice: 'choice of this library',
} as const;
