import type { Receipt, SentKind } from '../../pipeline/index.js';
import { type Refusal, Refused } from '../problem-document.js';
import type { Route } from '../route.js';
import type { Reply } from '../send.js';
import { notKept } from './not-kept.js';

/** Takes a message: 202 when it is kept for good, 200 when it was kept before. */
export const receiveMessage = (kind: SentKind, path: string): Route => ({
  method: 'POST',
  path,
  answer: async ({ body, caller, note }, { service }) => {
    const receipt = await service.receive(kind, await body(), caller);
    note({ class: receipt.kind });
    switch (receipt.kind) {
      case 'accepted':
      case 'repeated':
        note({ caseId: receipt.receipt.caseId, state: receipt.view.state });
        return keptReply(receipt);
      case 'unreadable':
      case 'invalid':
      case 'conflict':
      case 'forbidden':
        throw new Refused(refusalOf(receipt));
    }
  },
});

type Kept = Extract<Receipt, { readonly kind: 'accepted' | 'repeated' }>;
type NotKept = Exclude<Receipt, Kept>;

const keptReply = ({ kind, receipt, view }: Kept): Reply => ({
  status: kind === 'accepted' ? 202 : 200,
  headers: { Location: `/cases/${receipt.caseId}` },
  body: { receipt, ...view },
});

function refusalOf(receipt: NotKept): Refusal {
  switch (receipt.kind) {
    case 'unreadable':
    case 'invalid':
    case 'conflict':
      return notKept(receipt);
    case 'forbidden':
      return {
        problem: 'source-mismatch',
        detail: 'The API key belongs to another source. Nothing was stored.',
        errors: [receipt.problem],
      };
  }
}
