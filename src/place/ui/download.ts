/** Gives a text to the person as a file. */
export function download(name: string, text: string | Uint8Array<ArrayBuffer>, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // Some browsers read it only after the click has ended.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
