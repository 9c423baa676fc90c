/** Devices of the workshop that reach its computer over the network, and the secrets of people. */
export interface ReachTables {
  device: DeviceTable;
  device_seen: DeviceSeenTable;
  person_pin: PersonPinTable;
  unlocked: UnlockedTable;
  pin_try: PinTryTable;
}

/** A tablet or phone that was paired. Thing. */
export interface DeviceTable {
  id: string;
  name: string;
  /** SHA-256 of the 256 random bits that its cookie holds. */
  token_hash: string;
  paired_at: string;
  is_dropped: number;
  version: number;
}

/** When a device asked last, to the minute: no entry of the chain, which would grow with every look at a page. */
export interface DeviceSeenTable {
  device_id: string;
  at: string;
}

/** What a person's PIN is known by; never exported. Thing. */
export interface PersonPinTable {
  person_id: string;
  salt: string;
  hash: string;
  /** Of the key outside the file that belongs to the hash: with another key the PIN cannot be checked any more. */
  key_name: string;
  version: number;
}

/** Who has entered their PIN on which device, and not locked it since. Thing. */
export interface UnlockedTable {
  device_id: string;
  person_id: string;
  at: string;
}

/** Wrong PINs in a row: counted before each is looked at, so that many at once count as many. */
export interface PinTryTable {
  device_id: string;
  person_id: string;
  wrong: number;
  last_at: string;
}
