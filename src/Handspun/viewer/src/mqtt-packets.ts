// MQTT 3.1.1 (OASIS Standard, 29 October 2014): as many of its packets as a screen needs that only listens, at QoS 0.

/** The kinds of packet that a listener is sent (2.2.1). */
export const kinds = { connectAnswer: 2, publish: 3, subscribeAnswer: 9, pulse: 13 } as const;

export interface Packet {
  readonly kind: number;
  /** The lower half of the first byte. */
  readonly flags: number;
  readonly body: Uint8Array;
}

const text = new TextEncoder();
const words = new TextDecoder();

/** Asks to be let in, with nothing kept from before (3.1). */
export function connect(client: string, keepAliveSeconds: number): Uint8Array {
  const cleanSession = 0x02;
  return packet(0x10, [...string('MQTT'), 4, cleanSession, ...short(keepAliveSeconds), ...string(client)]);
}

/** Asks for the messages of some topics (3.8). */
export function subscribe(id: number, topics: readonly string[]): Uint8Array {
  return packet(0x82, [...short(id), ...topics.flatMap((topic) => [...string(topic), 0])]);
}

/** Asks for no more messages of a topic (3.10). */
export function unsubscribe(id: number, topic: string): Uint8Array {
  return packet(0xa2, [...short(id), ...string(topic)]);
}

/** Asks whether the line stands (3.12). */
export const ping = new Uint8Array([0xc0, 0]);

/** What was published (3.3); null where the packet is cut short. */
export function publishedIn({ flags, body }: Packet): { readonly topic: string; readonly payload: Uint8Array } | null {
  const length = shortAt(body, 0);
  const start = 2 + length + ((flags & 0x06) === 0 ? 0 : 2);   // above QoS 0 a packet identifier stands between
  return body.length < start ? null : { topic: words.decode(body.subarray(2, 2 + length)), payload: body.subarray(start) };
}

/** The 16 bits at a place, such as the identifier that begins an answer to a subscription (3.9.2). */
export function shortAt(bytes: Uint8Array, at: number): number {
  return ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
}

/** Takes packets out of a stream of bytes, wherever it is cut: a WebSocket's messages need not be packets (6). */
export class PacketReader {
  #pending = new Uint8Array(0);

  /** The packets that are whole with these bytes. */
  *push(bytes: Uint8Array): Generator<Packet> {
    let left: Uint8Array = bytes;
    if (this.#pending.length > 0) {
      left = new Uint8Array(this.#pending.length + bytes.length);
      left.set(this.#pending);
      left.set(bytes, this.#pending.length);
    }
    for (let cut = cutFirst(left); cut !== null; cut = cutFirst(left)) {
      left = cut.rest;
      yield cut.first;
    }
    this.#pending = left.slice();
  }
}

function cutFirst(bytes: Uint8Array): { readonly first: Packet; readonly rest: Uint8Array } | null {
  let length = 0;
  for (let at = 1; at <= 4; at++) {
    const digit = bytes[at];
    if (digit === undefined) return null;
    length += (digit & 0x7f) * 128 ** (at - 1);   // the least weighty first (2.2.3)
    if (digit < 0x80) {
      const end = at + 1 + length;
      return bytes.length < end ? null : { first: { kind: bytes[0]! >> 4, flags: bytes[0]! & 0x0f, body: bytes.subarray(at + 1, end) }, rest: bytes.subarray(end) };
    }
  }
  throw new RangeError('A packet names a length of more than four bytes.');
}

function packet(first: number, body: readonly number[]): Uint8Array {
  const length: number[] = [];
  for (let left = body.length; length.length === 0 || left > 0; left = Math.floor(left / 128)) length.push((left % 128) | (left >= 128 ? 0x80 : 0));
  return new Uint8Array([first, ...length, ...body]);
}

function string(of: string): readonly number[] {
  const bytes = text.encode(of);
  return [...short(bytes.length), ...bytes];
}

function short(value: number): readonly number[] {
  return [value >> 8, value & 0xff];
}
