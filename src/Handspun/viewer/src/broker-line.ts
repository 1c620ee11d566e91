// One line to the station's broker: opened, subscribed, kept alive, and said to be closed. It does not open itself again.

import { generate, parser, type Packet } from 'mqtt-packet';

export interface LineEvents {
  /** The broker has let this screen in. */
  readonly opened: () => void;
  /** The broker has taken a subscription. */
  readonly subscribed: (id: number) => void;
  /** Something came: a message of a topic, or only the line's own upkeep. */
  readonly heard: (isMessage: boolean) => void;
  readonly message: (topic: string, payload: Uint8Array) => void;
  readonly closed: () => void;
}

export const keepAliveSeconds = 2;

/** MQTT 3.1.1 (OASIS Standard, 29 October 2014), of which a screen only listens, at QoS 0. */
const mqtt = { protocolId: 'MQTT', protocolVersion: 4 } as const;

export class BrokerLine {
  readonly #events: LineEvents;
  readonly #socket: WebSocket;
  readonly #packets = parser(mqtt);
  #upkeep: ReturnType<typeof setInterval> | undefined;
  #newestId = 0;
  #isClosed = false;

  constructor(address: string, events: LineEvents) {
    this.#events = events;
    this.#socket = new WebSocket(address, 'mqtt');
    this.#socket.binaryType = 'arraybuffer';
    this.#packets.on('packet', (packet) => this.#take(packet));
    this.#packets.on('error', () => this.close());   // what came is not MQTT
    this.#socket.onopen = () => this.#send({
      cmd: 'connect', ...mqtt, clientId: `bay-${crypto.getRandomValues(new Uint32Array(2)).join('-')}`, clean: true, keepalive: keepAliveSeconds,
    });
    this.#socket.onmessage = ({ data }) => this.#packets.parse(Buffer.from(data as ArrayBuffer));
    this.#socket.onclose = () => this.close();
  }

  /** Subscribes, and tells which answer means that it stands. */
  subscribe(topics: readonly string[]): number {
    this.#send({ cmd: 'subscribe', messageId: ++this.#newestId, subscriptions: topics.map((topic) => ({ topic, qos: 0 })) });
    return this.#newestId;
  }

  unsubscribe(topic: string): void {
    this.#send({ cmd: 'unsubscribe', messageId: ++this.#newestId, unsubscriptions: [topic] });
  }

  /** Closes it, at once for this screen; the other end may hear of it later or never. */
  close(): void {
    if (this.#isClosed) return;
    this.#isClosed = true;
    clearInterval(this.#upkeep);
    this.#socket.onopen = this.#socket.onmessage = this.#socket.onclose = null;
    this.#socket.close();
    this.#events.closed();
  }

  #send(packet: Packet): void {
    if (this.#socket.readyState === WebSocket.OPEN) this.#socket.send(generate(packet, mqtt) as unknown as BufferSource);
  }

  #take(packet: Packet): void {
    if (this.#isClosed) return;
    if (packet.cmd === 'connack' && packet.returnCode !== 0) return this.close();
    this.#events.heard(packet.cmd === 'publish');
    if (packet.cmd === 'connack') this.#open();
    else if (packet.cmd === 'suback') this.#events.subscribed(packet.messageId ?? 0);
    else if (packet.cmd === 'publish') this.#events.message(packet.topic, typeof packet.payload === 'string' ? Buffer.from(packet.payload) : packet.payload);
  }

  #open(): void {
    this.#upkeep = setInterval(() => this.#send({ cmd: 'pingreq' }), keepAliveSeconds * 1000);
    this.#events.opened();
  }
}
