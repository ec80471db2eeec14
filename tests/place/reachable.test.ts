import { describe, expect, it } from 'vitest';
import { isReachable } from '../../src/site/reachable.ts';

// Ranges as RFC 1918, 3927, 4193, 4291 and 6761 give them.
describe('an address that a note leads to', () => {
  it.each([
    'http://localhost:4321/',
    'http://127.0.0.1/',
    'http://10.4.0.9/',
    'http://172.16.0.1/',
    'http://172.31.255.1/pasture/',
    'http://192.168.1.20:8080/',
    'http://169.254.3.4/',
    'http://[::1]/',
    'http://[fd12::7]/',
    'http://[fe80::1]/',
    'http://office-pc/',
    'http://office-pc.local/',
    'file:///C:/pasture/place/index.html',
  ])('opens for nobody else: %s', (address) => expect(isReachable(new URL(address))).toBe(false));
  it.each([
    'https://office.example/pasture/',
    'http://172.32.0.1/',
    'http://172.15.0.1/',
    'http://192.169.0.1/',
    'http://11.0.0.1/',
    'https://10.example.org/',
    'http://[2001:db8::1]/',
  ])('opens for others: %s', (address) => expect(isReachable(new URL(address))).toBe(true));
});
