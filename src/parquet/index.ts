export type { ParquetColumn, ParquetType } from './columns.js';
export { toParquet } from './to-parquet.js';
