/** What this browser remembers between visits. Where storage is switched off it forgets, and the pages still work. */
export const kept = {
  read(key: string): string | null {
    try {
      return localStorage.getItem(`gramwright.${key}`);
    } catch {
      return null;
    }
  },
  write(key: string, value: string | null): void {
    try {
      if (value === null) localStorage.removeItem(`gramwright.${key}`);
      else localStorage.setItem(`gramwright.${key}`, value);
    } catch {
      // Storage is full or forbidden: the choice then lasts as long as the page.
    }
  },
};
