/** How a device comes to trust the workshop's computer: on the pairing page, on the hint page, and in the guide of docs/. */
export const reachGuide = {
  title: 'Trust the workshop’s computer',
  check:
    'Before you say yes: the device shows the certificate’s SHA-256 fingerprint, or lets you look at it under details. Compare it with the one on the Workshop page of the computer. If they differ, stop: it is another certificate.',
  hint: {
    why: 'A tablet or phone believes an address only once it knows who vouches for it. For your own network that is a certificate which your own computer made. It is good for private addresses and names ending in .local, and for nothing else.',
    get: 'Fetch the certificate',
    notThis:
      'It should be the one below. But only what the device itself shows of the certificate counts, and only beside the computer’s own page: a page such as this one could be anybody’s.',
    goOn: 'When the device trusts it, go on to:',
    notHere: 'There is nothing here. Press “Pair a device” on the Workshop page of the computer first.',
  },
  devices: [
    {
      id: 'android',
      name: 'Android tablet or phone',
      steps: [
        'Fetch the certificate with the button above. It lands in Downloads as gramwright-workshop.crt.',
        'Open Settings, then Security and privacy, More security settings, Encryption and credentials. On some devices it is found fastest by searching the settings for “certificate”.',
        'Tap Install a certificate, then CA certificate. Android warns that somebody could read along; that is so for whoever has the certificate’s key, and the key never leaves your computer. Tap Install anyway.',
        'Choose gramwright-workshop.crt from Downloads.',
        'Look at it under Trusted credentials, User, and compare the fingerprint.',
        'Open the workshop’s address in Chrome. Firefox for Android does not look at this list unless it is told to.',
      ],
    },
    {
      id: 'ipad',
      name: 'iPad or iPhone',
      steps: [
        'Open this page in Safari and fetch the certificate with the button above. Tap Allow: it is called a profile there.',
        'Open Settings, tap Profile Downloaded near the top (or General, then VPN and Device Management), and tap the profile.',
        'Tap More Details, then the certificate, and compare the fingerprint. Then tap Install and enter the device’s passcode.',
        'Go to Settings, General, About, and at the very end Certificate Trust Settings. Turn the switch beside the workshop’s certificate on. Without this second step Safari goes on warning.',
        'Open the workshop’s address in Safari.',
      ],
    },
    {
      id: 'windows',
      name: 'Windows',
      steps: [
        'Fetch the certificate with the button above and open the file.',
        'To compare the fingerprint, open a command window, type certutil -dump and a space, drag the file into the window and press Enter. The line Cert Hash(sha256) is the fingerprint.',
        'On the tab General press Install Certificate, choose Current User, and Next.',
        'Choose “Place all certificates in the following store”, press Browse, and choose Trusted Root Certification Authorities. Next, Finish, and Yes.',
        'Close the browser wholly and open the workshop’s address in Edge or Chrome.',
      ],
    },
    {
      id: 'mac',
      name: 'Mac',
      steps: [
        'Fetch the certificate and open the file: Keychain Access asks where to. Choose login.',
        'Find it in the list, double-click it, compare the SHA-256 fingerprint at the end, open Trust, and choose Always Trust beside “When using this certificate”. Close the window and enter your password.',
      ],
    },
    {
      id: 'linux',
      name: 'Linux',
      steps: [
        'Chrome: Settings, Privacy and security, Security, Manage certificates, then import it under Custom or Authorities, trusted for web sites.',
        'Firefox, on any computer: Settings, Privacy and Security, View Certificates, Authorities, Import, trusted for web sites.',
      ],
    },
  ],
} as const;
