/** One write that is on disk: what it was about, and whose it was. */
export interface Written {
  readonly seq: number;
  readonly kind: string;
  readonly subjectKind: string;
  readonly subjectId: string;
  readonly entryId: string;
  readonly by: string | null;
  readonly device: string;
}

/** Who wants to know of writes: an open page far away, for one. */
export interface WrittenWatch {
  readonly watch: (onWritten: (written: Written) => void) => () => void;
  readonly tell: (written: Written) => void;
}

export function makeWrittenWatch(): WrittenWatch {
  const watchers = new Set<(written: Written) => void>();
  return {
    watch(onWritten) {
      watchers.add(onWritten);
      return () => watchers.delete(onWritten);
    },
    tell(written) {
      for (const onWritten of watchers) onWritten(written);
    },
  };
}
