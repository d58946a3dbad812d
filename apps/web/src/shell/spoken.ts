/** Says a sentence to a screen reader, in the live region that stands in the page from its start. */
export function speak(sentence: string): void {
  const region = document.getElementById('spoken')
  if (region && region.textContent !== sentence) region.textContent = sentence
}
