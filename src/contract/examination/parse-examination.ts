import type { Checked } from '../../kernel/index.js';
import { type Message, parseMessage } from '../parse-message.js';
import { EXAMINATION_CHECKS } from './cross-checks.js';
import { type ExaminationFields, examinationSchema } from './examination.js';

/** An examination that has passed every check of the contract. */
export type ExaminationMessage = Message<ExaminationFields>;

/** Reads the bytes of an `examination` message; see `parseMessage`. */
export function parseExamination(bytes: Uint8Array): Checked<ExaminationMessage> {
  return parseMessage<ExaminationFields>(examinationSchema, EXAMINATION_CHECKS, bytes);
}
