/** Field 3, `num_rows`, an I64 that is 0; field 4, `row_groups`, a list of nothing and no type. */
const UNTYPED = [0x16, 0x00, 0x19, 0x00] as const;
/** Of a list of structures. */
const EMPTY_STRUCTURES = 0x0c;

/**
 * The footer of a file without rows. The writer leaves open of what its empty list of row groups
 * is; readers that hold to the type, as that of Arrow in Rust, refuse such a file.
 *
 * Source: Apache Thrift, compact protocol (list header: size and type of the elements); Apache
 * Parquet, parquet.thrift, FileMetaData.
 *
 * @param footer of a file without rows; statistics of rows could hold those bytes by chance
 * @returns the same bytes where the list has its type
 */
export function withTypedEmptyList(footer: Uint8Array): Uint8Array {
  const at = footer.findLastIndex((_, i) => UNTYPED.every((byte, j) => footer[i + j] === byte));
  return at < 0 ? footer : footer.with(at + UNTYPED.length - 1, EMPTY_STRUCTURES);
}
