/** Reads a file as base64; the browser's own reader does the work. */
export const readBase64 = (file: Blob): Promise<string> =>
  new Promise((read, failed) => {
    const reader = new FileReader();
    reader.onload = () => read(String(reader.result).replace(/^[^,]*,/, ''));
    reader.onerror = () => failed(reader.error ?? new Error('the file could not be read'));
    reader.readAsDataURL(file);
  });
