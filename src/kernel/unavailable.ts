/** The store cannot serve now: its reader or writer may try again later. Nothing was kept. */
export class StoreUnavailable extends Error {
  override readonly name = 'StoreUnavailable';
}
