/** A rule across the fields of a message about a case, or between it and the case. */
export interface BeyondLaterSchema {
  readonly message: 'event' | 'examination' | 'withdrawal' | 'booking';
  readonly rule: string;
  readonly kind: 'fields' | 'case';
  readonly asks: string;
}

/** All that the service refuses although the JSON Schema accepts it; bytes as for a case. */
export const WHAT_LATER_SCHEMAS_CANNOT_SAY: readonly BeyondLaterSchema[] = [
  {
    message: 'event',
    rule: 'part-of-another-kind',
    kind: 'fields',
    asks: 'A part is there with its kinds alone, as the table below says.',
  },
  {
    message: 'event',
    rule: 'part-missing',
    kind: 'fields',
    asks: 'An operation, a decision of a meeting and a status have their part.',
  },
  {
    message: 'event',
    rule: 'kind-denied',
    kind: 'fields',
    asks: 'Who is readmitted or comes to the emergency ward is said to be.',
  },
  { message: 'event', rule: 'own-cause', kind: 'fields', asks: 'No event caused itself.' },
  {
    message: 'event',
    rule: 'day-of-time',
    kind: 'fields',
    asks: 'The time falls on the day, in some offset from -12:00 to +14:00.',
  },
  {
    message: 'event',
    rule: 'sent-before-it-happened',
    kind: 'fields',
    asks: 'A message follows all that it tells.',
  },
  {
    message: 'event',
    rule: 'course-before-onset',
    kind: 'fields',
    asks: 'Intervention and end follow the onset.',
  },
  {
    message: 'event',
    rule: 'status-of-the-future',
    kind: 'fields',
    asks: 'A status covers no day after the one on which it was learnt.',
  },
  {
    message: 'event',
    rule: 'intervention-denied',
    kind: 'fields',
    asks: 'Without an intervention there is no time, anaesthesia or haemostasis of one.',
  },
  {
    message: 'event',
    rule: 'CC-11',
    kind: 'fields',
    asks: 'Both gradings say V or neither; endoscopic intervention is AGREE IIIa or higher.',
  },
  {
    message: 'event',
    rule: 'grade-of-death',
    kind: 'fields',
    asks: 'V is the grade of who died, and of nobody else.',
  },
  {
    message: 'event',
    rule: 'nodes-positive',
    kind: 'fields',
    asks: 'No more nodes are positive than were examined.',
  },
  {
    message: 'event',
    rule: 'node-category',
    kind: 'fields',
    asks: 'The pN fits the number of positive nodes; pN1c has none.',
  },
  {
    message: 'event',
    rule: 'residue-category',
    kind: 'fields',
    asks: 'Where carcinoma was left the pT is not pT0.',
  },
  {
    message: 'event',
    rule: 'decision-reason',
    kind: 'fields',
    asks: 'A reason against surgery goes with that decision.',
  },
  {
    message: 'event',
    rule: 'patient-differs',
    kind: 'case',
    asks: 'The patient is that of the case.',
  },
  {
    message: 'event',
    rule: 'before-procedure',
    kind: 'case',
    asks: 'The event follows the procedure; a death may fall into it.',
  },
  {
    message: 'examination',
    rule: 'day-of-time',
    kind: 'fields',
    asks: 'The time falls on the day, in some offset from -12:00 to +14:00.',
  },
  {
    message: 'examination',
    rule: 'sent-before-it-happened',
    kind: 'fields',
    asks: 'A message follows the examination.',
  },
  {
    message: 'examination',
    rule: 'next-before-examination',
    kind: 'fields',
    asks: 'The next examination follows this one.',
  },
  {
    message: 'examination',
    rule: 'part-of-another-route',
    kind: 'fields',
    asks: 'Bowel preparation is told of the lower route, mucosa and Barrett of the upper.',
  },
  {
    message: 'examination',
    rule: 'organ-of-another-route',
    kind: 'fields',
    asks: 'New lesions lie on the route.',
  },
  { message: 'examination', rule: 'CC-12', kind: 'fields', asks: 'The site is part of the organ.' },
  {
    message: 'examination',
    rule: 'scar-not-seen',
    kind: 'fields',
    asks: 'A scar that was not seen has no finding, size, biopsy or treatment.',
  },
  {
    message: 'examination',
    rule: 'passage-not-dilated',
    kind: 'fields',
    asks: 'Who did not dilate has no diameter.',
  },
  {
    message: 'examination',
    rule: 'barrett-denied',
    kind: 'fields',
    asks: 'Barrett mucosa that is not there has no extent and is not ablated.',
  },
  {
    message: 'examination',
    rule: 'stop-reason',
    kind: 'fields',
    asks: 'The step stop has a reason, no other has.',
  },
  {
    message: 'examination',
    rule: 'next-day',
    kind: 'fields',
    asks: 'The step sooner may have a day, no other has.',
  },
  {
    message: 'examination',
    rule: 'patient-differs',
    kind: 'case',
    asks: 'The patient is that of the case.',
  },
  {
    message: 'examination',
    rule: 'before-procedure',
    kind: 'case',
    asks: 'The examination follows the procedure.',
  },
  {
    message: 'examination',
    rule: 'route-of-another-organ',
    kind: 'case',
    asks: 'The route leads to the organ; a colonoscopy may follow a duodenal lesion.',
  },
  {
    message: 'examination',
    rule: 'scar-of-another-route',
    kind: 'case',
    asks: 'That colonoscopy sees no scar.',
  },
  {
    message: 'examination',
    rule: 'no-scar',
    kind: 'case',
    asks: 'What was never started left no scar.',
  },
  {
    message: 'withdrawal',
    rule: 'replaced-by-itself',
    kind: 'fields',
    asks: 'Another case replaces this one.',
  },
  {
    message: 'withdrawal',
    rule: 'replacement',
    kind: 'fields',
    asks: 'entered-twice has a replacement, wrong-patient may have one, other reasons none.',
  },
  {
    message: 'withdrawal',
    rule: 'patient-differs',
    kind: 'case',
    asks: 'The patient is the one the case was sent with, even if the wrong one.',
  },
  {
    message: 'withdrawal',
    rule: 'before-procedure',
    kind: 'case',
    asks: 'A case is taken back after its procedure.',
  },
  {
    message: 'booking',
    rule: 'booked-without-time',
    kind: 'fields',
    asks: 'What is booked or moved has a begin and an end.',
  },
  {
    message: 'booking',
    rule: 'half-a-time',
    kind: 'fields',
    asks: 'A begin has an end, and an end a begin.',
  },
  {
    message: 'booking',
    rule: 'ends-before-start',
    kind: 'fields',
    asks: 'An appointment ends after it starts.',
  },
  {
    message: 'booking',
    rule: 'longer-than-a-day',
    kind: 'fields',
    asks: 'An appointment ends at most 24 hours after it starts.',
  },
  {
    message: 'booking',
    rule: 'reason-of-another-status',
    kind: 'fields',
    asks: 'A cancelled appointment may have a reason, no other has.',
  },
  {
    message: 'booking',
    rule: 'missed-before-start',
    kind: 'fields',
    asks: 'Who did not attend is told after the appointment began.',
  },
  {
    message: 'booking',
    rule: 'repeated-follow-up',
    kind: 'fields',
    asks: 'alsoFor names each follow-up once.',
  },
  {
    message: 'booking',
    rule: 'before-procedure',
    kind: 'case',
    asks: 'The appointment follows the procedure.',
  },
];
