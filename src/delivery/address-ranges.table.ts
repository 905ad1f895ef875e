/** A range of network addresses that a target may lie in only if it is listed. */
export interface AddressRange {
  readonly network: string;
  readonly prefix: number;
  readonly family: 'ipv4' | 'ipv6';
  readonly kind: AddressKind;
  readonly source: string;
}

export type AddressKind = 'loopback' | 'private' | 'link-local' | 'unspecified' | 'reserved';

const v4 = (network: string, prefix: number, kind: AddressKind, source: string): AddressRange => ({
  network,
  prefix,
  family: 'ipv4',
  kind,
  source,
});

const v6 = (network: string, prefix: number, kind: AddressKind, source: string): AddressRange => ({
  network,
  prefix,
  family: 'ipv6',
  kind,
  source,
});

/** The first row that holds the address decides; an address in no row is public. */
export const ADDRESS_RANGES: readonly AddressRange[] = [
  v4('127.0.0.0', 8, 'loopback', 'RFC 1122, 3.2.1.3'),
  v4('0.0.0.0', 8, 'unspecified', 'RFC 1122, 3.2.1.3'),
  v4('10.0.0.0', 8, 'private', 'RFC 1918, 3'),
  v4('172.16.0.0', 12, 'private', 'RFC 1918, 3'),
  v4('192.168.0.0', 16, 'private', 'RFC 1918, 3'),
  v4('100.64.0.0', 10, 'private', 'RFC 6598, 7 (shared address space)'),
  v4('169.254.0.0', 16, 'link-local', 'RFC 3927, 2.1; cloud metadata services answer here'),
  v4('192.0.0.0', 24, 'reserved', 'RFC 6890, 2.2.2'),
  v4('192.0.2.0', 24, 'reserved', 'RFC 5737, 3 (documentation)'),
  v4('198.18.0.0', 15, 'reserved', 'RFC 2544, appendix C (benchmarks)'),
  v4('198.51.100.0', 24, 'reserved', 'RFC 5737, 3 (documentation)'),
  v4('203.0.113.0', 24, 'reserved', 'RFC 5737, 3 (documentation)'),
  v4('224.0.0.0', 4, 'reserved', 'RFC 5771, 3 (multicast)'),
  v4('240.0.0.0', 4, 'reserved', 'RFC 1112, 4 (reserved, broadcast)'),
  v6('::1', 128, 'loopback', 'RFC 4291, 2.5.3'),
  v6('::', 128, 'unspecified', 'RFC 4291, 2.5.2'),
  v6('fc00::', 7, 'private', 'RFC 4193, 3.1; a cloud metadata service answers in fd00::/8'),
  v6('fe80::', 10, 'link-local', 'RFC 4291, 2.5.6'),
  v6('64:ff9b::', 96, 'reserved', 'RFC 6052, 2.1 (an IPv4 address may hide inside)'),
  v6('2002::', 16, 'reserved', 'RFC 3056, 2 (an IPv4 address may hide inside)'),
  v6('2001:db8::', 32, 'reserved', 'RFC 3849, 2 (documentation)'),
  v6('ff00::', 8, 'reserved', 'RFC 4291, 2.7 (multicast)'),
];
