import { createHash, generateKeyPair, randomBytes, X509Certificate } from 'node:crypto';
import type { asn1 as Asn1, pki as Pki } from 'node-forge';
import { PRIVATE_BLOCKS } from './own-addresses.ts';

/** A certificate with its key, as PEM (RFC 7468). */
export interface KeyedCertificate {
  readonly certificate: string;
  readonly key: string;
}

const DAY_MS = 86_400_000;
/** A tablet's clock may be behind: what was signed this moment must not lie in its future (common practice, no source). */
const EARLIER_MS = DAY_MS;
const AUTHORITY_DAYS = 3653;
/**
 * Apple's devices take a server's certificate of at most 825 days (Apple Support, 103769); of 398 from the authorities
 * that they bring along (CA/Browser Forum, Baseline Requirements, 6.3.2, from memory). The shorter one holds for both.
 */
export const SERVER_DAYS = 397;

const makeKeyPair = (): Promise<{ publicKey: string; privateKey: string }> =>
  new Promise((made, failed) => {
    generateKeyPair(
      'rsa',
      {
        modulusLength: 2048,
        publicKeyEncoding: { type: 'spki', format: 'pem' },
        privateKeyEncoding: { type: 'pkcs8', format: 'pem' },
      },
      (error, publicKey, privateKey) => (error ? failed(error) : made({ publicKey, privateKey })),
    );
  });

/** The signing library is loaded when a certificate is made, which is once a year: it would slow each start down. */
const loadForge = async () => (await import('node-forge')).default;
type Forge = Awaited<ReturnType<typeof loadForge>>;

/** Positive and not nought, 127 random bits (RFC 5280, 4.1.2.2). */
function newSerial(): string {
  const bytes = randomBytes(16);
  bytes[0] = ((bytes[0] ?? 0) & 0x7f) | 0x40;
  return bytes.toString('hex');
}

interface Draft {
  readonly publicKey: string;
  readonly subject: string;
  readonly days: number;
  readonly now: string;
}

function draftOf(forge: Forge, { publicKey, subject, days, now }: Draft): Pki.Certificate {
  const draft = forge.pki.createCertificate();
  const from = Date.parse(now) - EARLIER_MS;
  draft.publicKey = forge.pki.publicKeyFromPem(publicKey);
  draft.serialNumber = newSerial();
  draft.validity.notBefore = new Date(from);
  draft.validity.notAfter = new Date(from + days * DAY_MS);
  draft.setSubject([
    { name: 'commonName', value: subject },
    { name: 'organizationName', value: 'Gramwright' },
  ]);
  return draft;
}

const maskOf = (bits: number): number[] =>
  [0, 8, 16, 24].map((before) => 256 - 2 ** (8 - Math.min(8, Math.max(0, bits - before))));

/**
 * Names that the authority may sign (RFC 5280, 4.2.1.10): `.local` and private addresses. Whoever stole its key could
 * stand in for no shop and no bank.
 */
function nameConstraints(forge: Forge): object {
  const { asn1 } = forge;
  const { CONTEXT_SPECIFIC, UNIVERSAL } = asn1.Class;
  const make = (type: Asn1.Class, tag: number, isHolder: boolean, value: string | Asn1.Asn1[]) =>
    asn1.create(type, tag, isHolder, value as string);
  const subtree = (name: Asn1.Asn1) => make(UNIVERSAL, asn1.Type.SEQUENCE, true, [name]);
  const addresses = PRIVATE_BLOCKS.map(([first, bits]) =>
    make(CONTEXT_SPECIFIC, 7, false, String.fromCharCode(...first.split('.').map(Number), ...maskOf(bits))),
  );
  const names = [make(CONTEXT_SPECIFIC, 2, false, 'local'), ...addresses];
  const permitted = make(CONTEXT_SPECIFIC, 0, true, names.map(subtree));
  return { id: '2.5.29.30', critical: true, value: make(UNIVERSAL, asn1.Type.SEQUENCE, true, [permitted]) };
}

const pemOf = (forge: Forge, draft: Pki.Certificate): string =>
  forge.pki.certificateToPem(draft).replaceAll('\r\n', '\n');

/** The workshop's own authority: signs the certificate of this one computer, and nothing below another authority. */
export async function makeAuthority(subject: string, now: string): Promise<KeyedCertificate> {
  const forge = await loadForge();
  const { publicKey, privateKey } = await makeKeyPair();
  const draft = draftOf(forge, { publicKey, subject, days: AUTHORITY_DAYS, now });
  draft.setIssuer(draft.subject.attributes);
  draft.setExtensions([
    { name: 'basicConstraints', cA: true, pathLenConstraint: 0, critical: true },
    { name: 'keyUsage', keyCertSign: true, cRLSign: true, critical: true },
    // For web servers only: a computer that trusts it takes no program for signed by it.
    { name: 'extKeyUsage', serverAuth: true },
    { name: 'subjectKeyIdentifier' },
    nameConstraints(forge),
  ]);
  draft.sign(forge.pki.privateKeyFromPem(privateKey), forge.md.sha256.create());
  return { certificate: pemOf(forge, draft), key: privateKey };
}

export interface ServerNames {
  readonly addresses: readonly string[];
  readonly names: readonly string[];
}

/** The certificate that this computer shows, by every address and name that devices may know it by. */
export async function makeServerCertificate(
  authority: KeyedCertificate,
  { addresses, names }: ServerNames,
  now: string,
): Promise<KeyedCertificate> {
  const forge = await loadForge();
  const { publicKey, privateKey } = await makeKeyPair();
  const issuer = forge.pki.certificateFromPem(authority.certificate);
  const subject = names[0] ?? addresses[0] ?? 'gramwright';
  const draft = draftOf(forge, { publicKey, subject, days: SERVER_DAYS, now });
  draft.setIssuer(issuer.subject.attributes);
  draft.setExtensions([
    { name: 'basicConstraints', cA: false, critical: true },
    { name: 'keyUsage', digitalSignature: true, keyEncipherment: true, critical: true },
    { name: 'extKeyUsage', serverAuth: true },
    {
      name: 'subjectAltName',
      altNames: [...names.map((value) => ({ type: 2, value })), ...addresses.map((ip) => ({ type: 7, ip }))],
    },
    { name: 'subjectKeyIdentifier' },
    { name: 'authorityKeyIdentifier', keyIdentifier: issuer.generateSubjectKeyIdentifier().getBytes() },
  ]);
  draft.sign(forge.pki.privateKeyFromPem(authority.key), forge.md.sha256.create());
  return { certificate: pemOf(forge, draft), key: privateKey };
}

/** What a person compares before they trust it: pairs of hex digits, as devices show them. */
export const fingerprintOf = (certificate: string): string => new X509Certificate(certificate).fingerprint256;

export const endOf = (certificate: string): string =>
  new Date(new X509Certificate(certificate).validTo).toISOString();

/** Tells authorities apart in a device's list. */
export const shortMark = (text: string): string =>
  createHash('sha256').update(text).digest('hex').slice(0, 6).toUpperCase();
