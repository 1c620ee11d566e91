// A pedal is a key like any other: it presses the button that stands for it at this stage.

const idle = new Set(['Tab', 'Shift', 'Control', 'Alt', 'Meta', 'AltGraph', 'Escape', 'CapsLock', 'NumLock', 'ScrollLock']);

/** Whether a key that goes down is the pedal, and not typing, moving about or pressing what has the focus. */
export function isPedal(event: Pick<KeyboardEvent, 'key' | 'repeat' | 'ctrlKey' | 'altKey' | 'metaKey'>, onControl: boolean): boolean {
  return !onControl && !event.repeat && !event.ctrlKey && !event.altKey && !event.metaKey && !idle.has(event.key) && !/^F\d+$/.test(event.key);
}

export function listenToPedal(): void {
  document.addEventListener('keydown', (event) => {
    const onControl = event.target instanceof Element && event.target.closest('a, button, input, select, textarea') !== null;
    if (!isPedal(event, onControl)) return;
    const button = [...document.querySelectorAll<HTMLButtonElement>('button[data-pedal]')].find((one) => one.offsetParent !== null && !one.disabled);
    if (!button) return;
    event.preventDefault();
    button.click();
  });
}
