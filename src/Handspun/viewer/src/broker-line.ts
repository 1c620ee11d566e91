// One line to the station's broker: opened, subscribed, kept alive, and said to be closed. It does not open itself again.

import { connect, kinds, PacketReader, ping, publishedIn, shortAt, subscribe, unsubscribe } from './mqtt-packets';

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

export class BrokerLine {
  readonly #events: LineEvents;
  readonly #socket: WebSocket;
  readonly #packets = new PacketReader();
  #upkeep: ReturnType<typeof setInterval> | undefined;
  #newestId = 0;
  #isClosed = false;

  constructor(address: string, events: LineEvents) {
    this.#events = events;
    this.#socket = new WebSocket(address, 'mqtt');
    this.#socket.binaryType = 'arraybuffer';
    this.#socket.onopen = () => this.#socket.send(connect(`bay-${crypto.getRandomValues(new Uint32Array(2)).join('-')}`, keepAliveSeconds) as BufferSource);
    this.#socket.onmessage = ({ data }) => this.#take(new Uint8Array(data as ArrayBuffer));
    this.#socket.onclose = () => this.close();
  }

  /** Subscribes, and tells which answer means that it stands. */
  subscribe(topics: readonly string[]): number {
    this.#send(subscribe(++this.#newestId, topics));
    return this.#newestId;
  }

  unsubscribe(topic: string): void {
    this.#send(unsubscribe(++this.#newestId, topic));
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

  #send(bytes: Uint8Array): void {
    if (this.#socket.readyState === WebSocket.OPEN) this.#socket.send(bytes as BufferSource);
  }

  #take(bytes: Uint8Array): void {
    try {
      for (const packet of this.#packets.push(bytes)) {
        if (packet.kind === kinds.connectAnswer && packet.body[1] !== 0) return this.close();
        this.#events.heard(packet.kind === kinds.publish);
        if (packet.kind === kinds.connectAnswer) this.#open();
        else if (packet.kind === kinds.subscribeAnswer) this.#events.subscribed(shortAt(packet.body, 0));
        else if (packet.kind === kinds.publish) this.#tell(publishedIn(packet));
      }
    } catch {
      this.close();   // what came is not MQTT
    }
  }

  #open(): void {
    this.#upkeep = setInterval(() => this.#send(ping), keepAliveSeconds * 1000);
    this.#events.opened();
  }

  #tell(message: ReturnType<typeof publishedIn>): void {
    if (message !== null) this.#events.message(message.topic, message.payload);
  }
}
