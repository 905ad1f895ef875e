/**
 * Why a case is withdrawn. `entered-twice`: the same lesion stands under another case too;
 * `entered-in-error`: there was no such dissection; `patient-request`: the patient objects.
 */
export const WITHDRAWAL_REASONS = [
  'wrong-patient',
  'entered-twice',
  'entered-in-error',
  'patient-request',
] as const;
