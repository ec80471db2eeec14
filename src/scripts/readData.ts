import { folder } from '../site/folder.ts';
import { href } from '../site/href.ts';

/**
 * What a file of data of this site holds.
 * @throws Error also for a page in its place: from a host without it, or from a network that wants a sign-in first
 */
export async function readData<T>(path: string): Promise<T> {
  const opened = folder();
  if (opened) return opened.read(path.replace(/^\//, '')) as Promise<T>;
  const response = await fetch(href(path));
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response.json() as Promise<T>;
}
