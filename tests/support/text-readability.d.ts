declare module 'text-readability' {
  const readability: { lexiconCount(text: string): number; sentenceCount(text: string): number; syllableCount(text: string): number };
  export default readability;
}
