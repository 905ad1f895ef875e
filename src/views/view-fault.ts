/** A view does not fit the resources, or a path is no FHIRPath. Never holds a value. */
export class ViewFault extends Error {
  override readonly name = 'ViewFault';
}
