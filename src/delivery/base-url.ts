import { BlockList, isIP, isIPv6 } from 'node:net';
import { type Checked, failed, passed } from '../kernel/index.js';
import { ADDRESS_RANGES, type AddressKind } from './address-ranges.table.js';

/** What the operator allows beyond the safe default. */
export interface TargetPermissions {
  /** Unencrypted HTTP to a host that is not loopback. */
  readonly allowHttp: boolean;
  /** Hosts, as they stand in the URL, that may lie in a private, link-local or reserved range. */
  readonly allowedHosts: readonly string[];
}

const RANGES = ADDRESS_RANGES.map(({ network, prefix, family, kind }) => {
  const list = new BlockList();
  list.addSubnet(network, prefix, family);
  return { list, family, kind };
});

/**
 * Which kind of range an address lies in. An IPv4 address written as IPv6 (RFC 4291, 2.5.5.2)
 * is judged as IPv4.
 *
 * @param address IPv4 or IPv6, without brackets
 */
export function addressKind(address: string): AddressKind | 'public' {
  const plain = mappedIpv4(address) ?? address;
  const family = isIPv6(plain) ? 'ipv6' : 'ipv4';
  const range = RANGES.find((row) => row.family === family && row.list.check(plain, family));
  return range?.kind ?? 'public';
}

/**
 * Checks the configured base URL of a target, as far as that can be told without the network.
 *
 * @returns the URL without a trailing slash, or all that is wrong with it
 */
export function checkBaseUrl(text: string, allowed: TargetPermissions): Checked<string> {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url === undefined || (url.protocol !== 'https:' && url.protocol !== 'http:')) {
    return failed([problem('target-url', 'is no http or https URL', 'https://host/path')]);
  }
  const problems = [];
  if (url.username !== '' || url.password !== '') {
    problems.push(problem('target-credentials', 'holds credentials', 'a URL without user'));
  }
  if (url.search !== '' || url.hash !== '') {
    problems.push(
      problem('target-query', 'holds a query or fragment', 'a URL that ends in a path'),
    );
  }
  const host = hostOf(url);
  const loopback = isLoopback(host);
  if (url.protocol === 'http:' && !loopback && !allowed.allowHttp) {
    problems.push(problem('target-plain-http', 'is not encrypted', 'https, or an explicit permit'));
  }
  if (isIP(host) !== 0 && !loopback && !mayUse([host], host, allowed)) {
    problems.push(problem('target-address', 'names a private or reserved address', ADDRESS_RULE));
  }
  return problems.length > 0 ? failed(problems) : passed(url.href.replace(/\/+$/, ''));
}

/**
 * Whether a target may be called, now that its host name has been resolved.
 *
 * @param addresses all addresses of the host
 * @param host as it stands in the URL
 */
export function mayUse(
  addresses: readonly string[],
  host: string,
  allowed: TargetPermissions,
): boolean {
  if (allowed.allowedHosts.includes(host)) return true;
  return addresses.every((address) => {
    const kind = addressKind(address);
    return kind === 'public' || (kind === 'loopback' && isLoopback(host));
  });
}

/** @returns the host of the URL, an IPv6 address without its brackets */
export function hostOf(url: URL): string {
  return url.hostname.replace(/^\[|\]$/g, '');
}

const ADDRESS_RULE = 'a public address, loopback, or a host that is listed as allowed';

function isLoopback(host: string): boolean {
  return host === 'localhost' || (isIP(host) !== 0 && addressKind(host) === 'loopback');
}

function mappedIpv4(address: string): string | undefined {
  const hex = /^::ffff:([0-9a-f]{1,4}):([0-9a-f]{1,4})$/i.exec(address);
  const dotted = /^::ffff:(\d{1,3}(?:\.\d{1,3}){3})$/i.exec(address)?.[1];
  if (dotted !== undefined || hex === null) return dotted;
  const [high, low] = [Number.parseInt(hex[1] ?? '', 16), Number.parseInt(hex[2] ?? '', 16)];
  return [high >> 8, high & 255, low >> 8, low & 255].join('.');
}

const problem = (rule: string, says: string, expected: string) => ({
  rule,
  pointer: '',
  message: `The base URL of the FHIR server ${says}.`,
  expected,
});
