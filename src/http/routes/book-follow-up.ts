import type { BookingReceipt } from '../../pipeline/index.js';
import { type Refusal, Refused } from '../problem-document.js';
import type { Route } from '../route.js';
import { idOf, NO_SUCH_FOLLOW_UP } from './follow-up-id.js';
import { notKept } from './not-kept.js';

/** Takes what a scheduler says of an appointment: 202 when it is kept for good, 200 when it was. */
export const bookFollowUp: Route = {
  method: 'POST',
  path: '/follow-ups/:id/booking',
  answer: async (asked, { service }) => {
    const id = idOf(asked, NO_SUCH_FOLLOW_UP);
    const receipt = await service.receiveBooking(id, await asked.body(), asked.caller);
    asked.note({ class: receipt.kind });
    switch (receipt.kind) {
      case 'accepted':
      case 'repeated':
        return {
          status: receipt.kind === 'accepted' ? 202 : 200,
          headers: { Location: `/follow-ups/${id}` },
          body: { kept: receipt.kept },
        };
      case 'unreadable':
      case 'invalid':
      case 'conflict':
      case 'not-found':
        throw new Refused(refusalOf(receipt));
    }
  },
};

type NotKept = Exclude<BookingReceipt, { readonly kind: 'accepted' | 'repeated' }>;

function refusalOf(receipt: NotKept): Refusal {
  switch (receipt.kind) {
    case 'unreadable':
    case 'invalid':
    case 'conflict':
      return notKept(receipt);
    case 'not-found':
      return NO_SUCH_FOLLOW_UP;
  }
}
