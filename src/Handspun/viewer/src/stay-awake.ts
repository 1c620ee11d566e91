// Keeps the screen lit while it is looked at. Browsers grant this on the station itself and over a safe line only;
// elsewhere the screen's own setting holds.

export function stayAwake(): void {
  const ask = () => {
    if (document.visibilityState === 'visible') void navigator.wakeLock?.request('screen').catch(() => undefined);
  };
  document.addEventListener('visibilitychange', ask);
  ask();
}
