/** What can be wrong where tablets and phones reach the workshop over its network. */
export const reachProblems = {
  'device-not-paired': {
    says: 'This device is not paired with the workshop, or no longer.',
    mend: 'On the workshop’s computer open Workshop and press “Pair a device”, then type the code here.',
  },
  'person-locked': {
    says: 'Whoever signs this has not entered their PIN on this device.',
    mend: 'Choose your name at the top of the page and type your PIN.',
  },
  'only-at-the-computer': {
    says: 'This is done at the workshop’s own computer only.',
    mend: 'Open Gramwright there.',
  },
  'only-on-a-device': {
    says: 'This is done on a paired tablet or phone, and here is the workshop’s own computer.',
    mend: 'Open the workshop’s address on the device.',
  },
  'site-foreign': {
    says: 'The browser says that a page of another site asked for this ({found}); only pages of this program are answered.',
    mend: 'Open the program itself, by its own address.',
  },
  'network-not-here': {
    says: 'Only the running program answers a network.',
    mend: 'Start it with gramwright start.',
  },
  'network-not-on': {
    says: 'Tablets and phones cannot reach the workshop now: its network is turned off.',
    mend: 'Turn it on first, under Workshop.',
  },
  'network-port-taken': {
    says: 'Port {found}, by which the devices know the workshop, is taken by another program.',
    mend: 'Close the other one. Or start once with gramwright start --network-port {allowed}; the devices then have to be paired anew by the new address.',
  },
  'network-port-not-allowed': {
    says: 'This user may not listen on port {found}.',
    mend: 'Choose a port above 1023, such as gramwright start --network-port 4443.',
  },
  'network-keys-torn': {
    says: 'The workshop’s certificate in {where} is damaged, and no device would believe it.',
    mend: 'Move that file away and turn the network on again: a new one is made, and every device has to trust it anew.',
  },
  'authority-not-made': {
    says: 'There is no certificate yet.',
    mend: 'Turn the network on under Workshop: it is made then.',
  },
  'pairing-closed': {
    says: 'There is no code to pair a device by at this moment: none was asked for, it was used, or its ten minutes are over.',
    mend: 'On the workshop’s computer open Workshop and press “Pair a device”.',
  },
  'pairing-locked': {
    says: 'Too many wrong codes were typed, and the code is void.',
    mend: 'On the workshop’s computer press “Pair a device” again. If nobody here typed them, ask who is on your network.',
  },
  'pairing-wrong': {
    says: 'This is not the code on the workshop’s page.',
    mend: 'Look at it again: {allowed, plural, one {# more try is} other {# more tries are}} left.',
  },
  'device-name-taken': {
    says: 'A device called {found} is paired already, and entries say on which device they were made.',
    mend: 'Give this one another name.',
  },
  'pin-not-set': {
    says: 'This person has no PIN that can be checked here.',
    mend: 'Set one on the workshop’s computer, under Workshop, People. After the workshop was moved to another computer each PIN is set anew.',
  },
  'pin-wrong': { says: 'This is not the PIN.', mend: 'Type it again.' },
  'pin-wrong-wait': {
    says: 'This is not the PIN.',
    mend: 'The next try is taken at {allowed}.',
  },
  'pin-wait': {
    says: 'The PIN was wrong {found} times; it is not looked at before {allowed}.',
    mend: 'Wait, or set a new PIN on the workshop’s computer.',
  },
  'pin-locked': {
    says: 'The PIN was wrong {found} times, and it is not looked at any more on this device.',
    mend: 'Set a new PIN on the workshop’s computer, under Workshop, People.',
  },
  'pin-too-plain': {
    says: 'One digit over and over, or digits in a row, is what everybody tries first.',
    mend: 'Choose four to eight other digits.',
  },
} as const;
