// The line to the station: live messages over MQTT, and a snapshot whenever the line is (re)made or the state is stale.

import type { MqttClient } from 'mqtt';
import type { Message } from './bay-state';
import type { Bay, GaugeState, Progress, Readings, Result } from './wire';

export interface ContactEvents {
  readonly message: (message: Message) => void;
  readonly readings: (gauge: string, readings: Readings) => void;
  /** Something about the line changed; ask `connected` and `heardAt`. */
  readonly changed: () => void;
}

const root = 'handspun/v1/';
const standingTopics = ['gauges/+/state', 'gauges/+/readings', 'captures/+/progress'];
const askAgainMs = 1000;
const snapshotPatienceMs = 5000;

type Held = () => void;

export class Contact {
  readonly #events: ContactEvents;
  #client: MqttClient | null = null;
  #resultTopic = '';
  #asking = false;
  #askAfterwards = false;
  #held: Held[] | null = null;
  /** When the station was last heard, by `performance.now()`. */
  heardAt = performance.now();
  connected = false;
  /** How far the station's wall clock is ahead of this screen's, in milliseconds. */
  aheadMs = 0;

  constructor(events: ContactEvents) {
    this.#events = events;
  }

  async start(): Promise<void> {
    void this.ask();
    const { default: mqtt } = await import('mqtt');
    const scheme = location.protocol === 'https:' ? 'wss' : 'ws';
    const client = mqtt.connect(`${scheme}://${location.host}/mqtt`, {
      clientId: `bay-${crypto.getRandomValues(new Uint32Array(2)).join('-')}`,
      clean: true,
      keepalive: 5,
      connectTimeout: 4000,
      reconnectPeriod: 1000,
      resubscribe: false,
      queueQoSZero: false,
      timerVariant: 'native',
    });
    this.#client = client;
    client.on('connect', () => {
      this.connected = true;
      this.#resultTopic = '';
      this.#hold();
      client.subscribe(standingTopics.map((topic) => root + topic), () => this.askAnew());
      this.#events.changed();
    });
    client.on('close', () => {
      this.connected = false;
      this.#events.changed();
    });
    client.on('error', () => this.#events.changed());
    client.on('packetreceive', () => this.#heard());
    client.on('message', (topic, payload) => this.#take(topic, payload));
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible' && !client.connected) client.reconnect();
    });
  }

  /** Asks for a snapshot that is taken after this moment, also when one is on its way. */
  askAnew(): void {
    this.#askAfterwards = this.#asking;
    void this.ask();
  }

  /** Asks for a snapshot; what arrives meanwhile is held back and told after it. */
  async ask(): Promise<void> {
    if (this.#asking) return;
    this.#asking = true;
    this.#hold();
    try {
      const answer = await fetch(`/api/v1/bay${location.search}`, {
        headers: { accept: 'application/json' },
        cache: 'no-store',
        signal: AbortSignal.timeout(snapshotPatienceMs),
      });
      if (!answer.ok) throw new Error(`The station answered ${answer.status}.`);
      const stationTime = Date.parse(answer.headers.get('date') ?? '');
      if (Number.isFinite(stationTime)) this.aheadMs = stationTime - Date.now();
      this.#snapshot((await answer.json()) as Bay);
    } catch {
      // The next snapshot will hold what these would have told.
      this.#held = [];
      setTimeout(() => void this.ask(), askAgainMs);
    } finally {
      this.#asking = false;
      if (this.#askAfterwards) this.askAnew();
    }
  }

  #snapshot(bay: Bay): void {
    this.#heard();
    this.#events.message({ kind: 'snapshot', bay });
    this.#follow(bay);
    const held = this.#held ?? [];
    this.#held = null;
    for (const tell of held) tell();
    this.#events.changed();
  }

  #follow(bay: Bay): void {
    const topic = bay.job && bay.point ? `${root}jobs/${bay.job}/points/${bay.point}/result` : '';
    if (topic === this.#resultTopic || !this.#client?.connected) return;
    if (this.#resultTopic) this.#client.unsubscribe(this.#resultTopic);
    if (topic) this.#client.subscribe(topic);
    this.#resultTopic = topic;
  }

  #hold(): void {
    this.#held ??= [];
  }

  #heard(): void {
    this.heardAt = performance.now();
  }

  #take(topic: string, payload: Uint8Array): void {
    if (!topic.startsWith(root) || payload.length === 0) return;
    const tell = meaning(topic.slice(root.length), payload, this.#events);
    if (tell === null) return;
    if (this.#held) this.#held.push(tell);
    else tell();
  }
}

/** What a message on a topic asks to be told; null for topics and payloads that mean nothing here. */
function meaning(topic: string, payload: Uint8Array, events: ContactEvents): Held | null {
  let body: unknown;
  try {
    body = JSON.parse(new TextDecoder().decode(payload));
  } catch {
    return null;
  }
  if (typeof body !== 'object' || body === null) return null;
  const [kind, name, leaf] = topic.split('/');
  if (kind === 'gauges' && name && leaf === 'readings') return () => events.readings(name, body as Readings);
  if (kind === 'gauges' && leaf === 'state') return () => events.message({ kind: 'gauge', gauge: body as GaugeState });
  if (kind === 'captures' && leaf === 'progress') return () => events.message({ kind: 'progress', progress: body as Progress });
  if (kind === 'jobs' && topic.endsWith('/result')) return () => events.message({ kind: 'result', result: body as Result });
  return null;
}
