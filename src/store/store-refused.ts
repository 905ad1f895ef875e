/**
 * The store cannot be used as it is set up, and waiting will not help. The message is one or two
 * sentences for whoever runs the service: what is wrong, where, and what to do.
 */
export class StoreRefused extends Error {
  override readonly name = 'StoreRefused';
}
