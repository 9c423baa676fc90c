/** What can be wrong with folders, backups and what is brought back from them. */
export const keepingProblems = {
  'folder-not-writable': {
    says: 'The folder {where} cannot be written.',
    mend: 'Give yourself the right to write there, or choose another with --folder.',
  },
  'folder-is-a-file': {
    says: '{where} cannot be a folder: a file stands in the way.',
    mend: 'Choose another folder with --folder.',
  },
  'file-missing': {
    says: 'There is no workshop file at {where}.',
    mend: 'Name its folder with --folder, or make one with gramwright start.',
  },
  'backup-folder-missing': {
    says: 'The backup folder {where} is not there.',
    mend: 'Plug the stick in or make the folder, or choose another under Workshop.',
  },
  'backup-folder-no-folder': {
    says: 'The backup folder {where} is a file.',
    mend: 'Choose a folder under Workshop.',
  },
  'backup-folder-not-whole': {
    says: 'The backup folder \u201c{where}\u201d does not say where it begins.',
    mend: 'Give its whole path, such as /home/ada/Backups.',
  },
  'backup-folder-not-writable': {
    says: 'The backup folder {where} cannot be written.',
    mend: 'Give yourself the right to write there, or choose another under Workshop.',
  },
  'backup-not-sound': {
    says: 'The backup written to {where} was looked through and is not sound ({found}). It was not kept.',
    mend: 'Run gramwright check-up, and check the disk.',
  },
  'backup-missing': { says: 'There is no backup at {where}.', mend: 'Check its name and folder.' },
  'backup-is-the-file': {
    says: '{where} is the workshop file itself, not a backup of it.',
    mend: 'Choose a backup.',
  },
  'backup-torn': {
    says: 'The backup {where} is damaged ({found}). Nothing was changed.',
    mend: 'Choose another backup.',
  },
} as const;
