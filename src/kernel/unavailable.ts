/** The store cannot serve now. Nothing was acknowledged; the same call again is safe. */
export class StoreUnavailable extends Error {
  override readonly name = 'StoreUnavailable';
}
