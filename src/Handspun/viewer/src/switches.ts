// Switches of this screen alone, such as whether it sounds: kept in the browser, not at the station.

export class Switch {
  readonly #button: HTMLButtonElement;
  readonly #key: string;

  constructor(button: HTMLButtonElement, turnedOn: () => void) {
    this.#button = button;
    this.#key = `handspun.${button.dataset['switch'] ?? ''}`;
    this.#show(kept(this.#key));
    button.addEventListener('click', () => {
      this.#show(!this.isOn);
      keep(this.#key, this.isOn);
      if (this.isOn) turnedOn();
    });
  }

  get isOn(): boolean {
    return this.#button.getAttribute('aria-pressed') === 'true';
  }

  #show(on: boolean): void {
    this.#button.setAttribute('aria-pressed', String(on));
  }
}

function kept(key: string): boolean {
  try {
    return localStorage.getItem(key) === 'on';
  } catch {
    return false;
  }
}

function keep(key: string, on: boolean): void {
  try {
    localStorage.setItem(key, on ? 'on' : 'off');
  } catch {
    // A browser that keeps nothing: the switch holds until the page is left.
  }
}
