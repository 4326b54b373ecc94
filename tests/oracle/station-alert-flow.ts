/** The answers to the questions of the flow chart. */
export interface Situation {
  /** A coast station or rescue co-ordination centre acknowledged, by DSC or voice. */
  readonly acknowledged: boolean;
  readonly ableToAssist: boolean;
  /** Distress communication in progress on channel 16. */
  readonly traffic: boolean;
  /** The DSC alert continues. */
  readonly alertContinues: boolean;
}

/** The boxes of the flow chart that do something. */
export type Box =
  | 'listen on 16 for 5 minutes'
  | 'acknowledge by voice'
  | 'inform the coast station'
  | 'log and reset';

/**
 * What a ship that receives a VHF alert does, box by box.
 *
 * A literal reading of the flow chart of MSC.1/Circ.1657 (the chart of its predecessor for MF seen in a national handbook, with channel 16
 * in the place of 2182 kHz for VHF from memory).
 */
export function alertFlow(situation: Situation): readonly Box[] {
  const boxes: Box[] = ['listen on 16 for 5 minutes'];
  let isAbleAsked = false;
  if (situation.acknowledged) isAbleAsked = true;
  else if (situation.traffic) isAbleAsked = true;
  else if (situation.alertContinues) {
    boxes.push('inform the coast station');
    isAbleAsked = true;
  }
  if (isAbleAsked && situation.ableToAssist) boxes.push('acknowledge by voice');
  boxes.push('log and reset');
  return boxes;
}
