// Says sentences aloud with the browser's own voice. The newest one matters: what was being said gives way.

export const hasVoice = 'speechSynthesis' in globalThis;

export function say(sentence: string): void {
  if (!hasVoice || sentence === '') return;
  speechSynthesis.cancel();
  const words = new SpeechSynthesisUtterance(sentence);
  words.lang = document.documentElement.lang;
  speechSynthesis.speak(words);
}
