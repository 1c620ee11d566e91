// The line to the station: live messages over MQTT, and a snapshot whenever the line is (re)made or the state is stale.

import type { Message } from './bay-state';
import { BrokerLine, keepAliveSeconds } from './broker-line';
import type { Bay, GaugeState, Progress, Readings, Result } from './wire';

export interface ContactEvents {
  readonly message: (message: Message) => void;
  readonly readings: (gauge: string, readings: Readings) => void;
  /** Something about the line changed; ask `connected` and `heardAt`. */
  readonly changed: () => void;
}

const root = 'handspun/v1/';
const standingTopics = ['gauges/+/state', 'gauges/+/readings', 'captures/+/progress'];

/** How often the line is looked at. */
const lookMs = 500;
const snapshotPatienceMs = 2000;
/** Browsers open six lines to one address; those that hang on a network that is gone may not take them all. */
const mostUnderWay = 4;
/** Silence after which the line may be gone: soon where live messages came, later where only the broker's pulse is due. */
const quietMs = { live: 1000, pulse: keepAliveSeconds * 1000 + 500 };
/** Silence that is said on the screen: more than a look and an answer beyond the above. */
const sayAfterMs = 1000;
/** How long an attempt to reach the broker may hang: shorter where the station answered since. */
const hungMs = { alone: 4000, answered: 1000 };
const openAgainMs = 500;

type Held = () => void;

export class Contact {
  readonly #events: ContactEvents;
  #line: BrokerLine | null = null;
  #standing = 0;
  #resultTopic = '';
  #asked = 0;
  #answered = 0;
  readonly #underWay = new Map<number, AbortController>();
  #held: Held[] | null = null;
  #lineHeardAt = performance.now();
  #openedAt = 0;
  #answeredAt = 0;
  #isLive = false;
  /** When the station was last heard, by `performance.now()`. */
  heardAt = performance.now();
  connected = false;
  /** How far the station's wall clock is ahead of this screen's, in milliseconds. */
  aheadMs = 0;

  constructor(events: ContactEvents) {
    this.#events = events;
  }

  /** How long the station may be silent before that has to be said. */
  get patienceMs(): number {
    return this.#quietMs + sayAfterMs;
  }

  start(): void {
    this.askAnew();
    this.#open();
    setInterval(() => this.#look(), lookMs);
    // A phone that wakes up or finds its network again need not wait for the next look.
    addEventListener('online', () => this.#look());
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && this.#look());
  }

  /** Asks for a snapshot, unless one is on its way. */
  ask(): void {
    if (this.#underWay.size === 0) this.askAnew();
  }

  /** Asks for a snapshot that is taken after this moment; what arrives meanwhile is held back and told after it. */
  askAnew(): void {
    if (this.#underWay.size < mostUnderWay) void this.#fetch(++this.#asked);
  }

  get #quietMs(): number {
    return this.connected && !this.#isLive ? quietMs.pulse : quietMs.live;
  }

  /** Where the line may be gone, snapshots tell how it stands until it is there again: the first one that gets through. */
  #look(): void {
    const now = performance.now();
    const silent = now - this.#lineHeardAt;
    const isWell = this.connected && silent < this.#quietMs;
    if (!isWell || (this.#answered !== this.#asked && this.#underWay.size === 0)) this.askAnew();
    const since = now - this.#openedAt;
    const hasHung = this.connected ? silent > keepAliveSeconds * 2000 : since > (this.#answeredAt > this.#openedAt ? hungMs.answered : hungMs.alone);
    if (hasHung) this.#line?.close();
  }

  #open(): void {
    this.#openedAt = performance.now();
    const scheme = location.protocol === 'https:' ? 'wss' : 'ws';
    const line = new BrokerLine(`${scheme}://${location.host}/mqtt`, {
      opened: () => {
        this.connected = true;
        this.#resultTopic = '';
        this.#hold();
        this.#standing = line.subscribe(standingTopics.map((topic) => root + topic));
        this.#events.changed();
      },
      subscribed: (id) => id === this.#standing && this.askAnew(),
      heard: (isMessage) => {
        this.#isLive = isMessage;
        this.#lineHeardAt = performance.now();
        this.#heard();
      },
      message: (topic, payload) => this.#take(topic, payload),
      closed: () => {
        this.connected = false;
        this.#events.changed();
        setTimeout(() => this.#open(), openAgainMs);
      },
    });
    this.#line = line;
  }

  async #fetch(number: number): Promise<void> {
    const givingUp = new AbortController();
    this.#underWay.set(number, givingUp);
    this.#hold();
    const patience = setTimeout(() => givingUp.abort(), snapshotPatienceMs);
    const bay = await snapshot(givingUp.signal, (ahead) => {
      this.aheadMs = ahead;
    });
    clearTimeout(patience);
    this.#underWay.delete(number);
    if (bay !== null && number > this.#answered) {
      this.#answered = number;
      this.#answeredAt = performance.now();
      this.#letGoBefore(number);
      this.#snapshot(bay);
    } else if (this.#underWay.size === 0 && this.#answered !== this.#asked) {
      this.#held = [];   // the next snapshot will hold what these would have told
    }
  }

  /** Snapshots that were asked for earlier and hang tell nothing new: what comes live need not wait for them. */
  #letGoBefore(number: number): void {
    for (const [earlier, givingUp] of this.#underWay) {
      if (earlier > number) continue;
      this.#underWay.delete(earlier);
      givingUp.abort();
    }
  }

  #snapshot(bay: Bay): void {
    this.#heard();
    this.#events.message({ kind: 'snapshot', bay });
    this.#follow(bay);
    const held = this.#held ?? [];
    this.#held = this.#underWay.size > 0 ? [...held] : null;   // a snapshot that is still to come may be older than these
    for (const tell of held) tell();
    this.#events.changed();
  }

  #follow(bay: Bay): void {
    const topic = bay.job && bay.point ? `${root}jobs/${bay.job}/points/${bay.point}/result` : '';
    if (topic === this.#resultTopic || !this.connected) return;
    if (this.#resultTopic) this.#line?.unsubscribe(this.#resultTopic);
    if (topic) this.#line?.subscribe([topic]);
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

/** A snapshot of the bay; null where none came. */
async function snapshot(signal: AbortSignal, tellAhead: (milliseconds: number) => void): Promise<Bay | null> {
  try {
    const answer = await fetch(`/api/v1/bay${location.search}`, {
      headers: { accept: 'application/json' },
      cache: 'no-store',
      signal,
    });
    if (answer.status === 401) location.reload();   // unpaired meanwhile: the station says what to do
    if (!answer.ok) return null;
    const stationTime = Date.parse(answer.headers.get('date') ?? '');
    if (Number.isFinite(stationTime)) tellAhead(stationTime - Date.now());
    return (await answer.json()) as Bay;
  } catch {
    return null;
  }
}
