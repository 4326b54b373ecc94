/**
 * The documents that the station's behaviour follows. ITU-R M.493-16, M.541-11, RR 2024 and MSC.1/Circ.1657 were read in
 * restatements and are in part from memory, 47 CFR part 80 (2025) itself; docs/deviations.md lists what is in doubt.
 */
export const clause = {
  procedures: 'ITU-R M.493-16, automated procedures',
  alarms: 'ITU-R M.493-16, alarms',
  identity: 'ITU-R M.493-16, self-identification',
  tuning: 'ITU-R M.493-16, automatic channel switching',
  position: 'ITU-R M.493-16, position and its age; 47 CFR 80.1073(b)(6), 80.1085(c)',
  errorCheck: 'ITU-R M.493-16, calls received with errors',
  address: 'ITU-R M.493-16 tables A1-4.1 to A1-4.9',
  reasons: 'ITU-R M.493-16 table A1-3, second telecommand',
  equipment: 'ITU-R M.493-16, classes of equipment',
  calling: 'ITU-R M.541-11, routine calls; Japan, Operation Regulations Art. 58-5',
  answering: 'ITU-R M.541-11, acknowledgement of routine calls; Japan, Operation Regulations Art. 58-6',
  enquiry: 'ITU-R M.541-11, position requests, test calls and polling',
  announcement: 'ITU-R M.541-11, urgency and safety calls; RR 2024 Art. 33',
  alert: 'ITU-R M.541-11 Annex 3 §1.4.1; RR 2024 No. 32.13',
  alertAct: 'Japan MPT Notification 567 of 1990, distress key',
  acknowledgement: 'ITU-R M.541-11 Annex 3 §1.5; RR 2024 Nos. 32.27 and 32.28; 47 CFR 80.103(c), 80.1121(d)',
  falseAlert: 'RR 2024 Nos. 32.53B to 32.53E; 47 CFR 80.335(a)',
  heardAlert: 'ITU-R M.541-11 Annex 3; 47 CFR 80.1121',
  coastDuty: 'RR 2024 Nos. 32.27 and 32.46; 47 CFR 80.1119(a)',
  coastRelay: 'ITU-R M.541-11 Annex 3 §1.5; 47 CFR 80.1121(e)',
  relay: 'RR 2024 Nos. 32.16 to 32.19H; MSC.1/Circ.1657; 47 CFR 80.1117(a), 80.1121(b)',
  flow: 'MSC.1/Circ.1657; 47 CFR 80.1121',
  channelUse: 'ITU-R M.822 and M.541-11, use of the calling channel',
  log: 'RR 2024, ship-station log; 47 CFR 80.409',
  busyLimit: 'ETSI EN 300 338, unverified',
  ownChoice: 'choice of this library',
} as const;
