import { createHash, createHmac } from 'node:crypto';

/** @returns SHA-256 of the bytes, 64 lower-case hexadecimal digits */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/**
 * A stable opaque id: UUID version 8 (RFC 9562) of the first 16 bytes of
 * HMAC-SHA-256(secret, system + '|' + value). Keyed, so that an id in an URL or a server log
 * cannot be guessed back to the number it was made of.
 *
 * @param secret the site secret, at least 32 characters
 * @returns lower-case canonical form, 36 characters
 */
export function keyedUuid(secret: string, system: string, value: string): string {
  const bytes = createHmac('sha256', secret).update(`${system}|${value}`).digest().subarray(0, 16);
  bytes.writeUInt8((bytes.readUInt8(6) & 0x0f) | 0x80, 6);
  bytes.writeUInt8((bytes.readUInt8(8) & 0x3f) | 0x80, 8);
  const hex = bytes.toString('hex');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20),
  ].join('-');
}
