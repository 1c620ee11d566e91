import { test } from 'node:test';
import assert from 'node:assert/strict';
import { connect, kinds, PacketReader, publishedIn, shortAt, subscribe, unsubscribe, type Packet } from '../src/mqtt-packets';

// The bytes are spelled out after MQTT 3.1.1 (OASIS Standard, 29 October 2014); the section stands beside each.

test('a client asks to be let in (3.1: protocol name, level 4, clean session, keep alive, client identifier)', () => {
  assert.deepEqual([...connect('ab', 2)], [0x10, 14, 0, 4, 0x4d, 0x51, 0x54, 0x54, 4, 2, 0, 2, 0, 2, 0x61, 0x62]);
});

test('topics are asked for at QoS 0 and let go (3.8.3 and 3.10.3, figures 3.23 and 3.30: topics a/b and c/d, identifier 10)', () => {
  assert.deepEqual([...subscribe(10, ['a/b', 'c/d'])], [0x82, 14, 0, 10, 0, 3, 0x61, 0x2f, 0x62, 0, 0, 3, 0x63, 0x2f, 0x64, 0]);
  assert.deepEqual([...unsubscribe(10, 'a/b')], [0xa2, 7, 0, 10, 0, 3, 0x61, 0x2f, 0x62]);
});

test('a long packet names its length in several bytes (2.2.3: 321 is 65 + 2 x 128)', () => {
  assert.deepEqual([...subscribe(1, ['x'.repeat(316)]).subarray(0, 3)], [0x82, 193, 2]);
});

test('packets are found wherever the stream is cut', () => {
  const stream = [
    [0x20, 2, 0, 0],   // 3.2: let in
    [0x90, 3, 0, 7, 0],   // 3.9: subscription 7 taken
    [0x30, 7, 0, 3, 0x61, 0x2f, 0x62, 0x7b, 0x7d],   // 3.3: a/b at QoS 0
    [0x32, 9, 0, 3, 0x61, 0x2f, 0x62, 0, 10, 0x7b, 0x7d],   // 3.3: the same at QoS 1, identifier 10
    [0x31, 193, 2, 0, 1, 0x61, ...new Array<number>(318).fill(0x20)],   // 321 bytes, retained
    [0xd0, 0],   // 3.13
  ].flat();
  for (let cut = 0; cut <= stream.length; cut++) {
    const reader = new PacketReader();
    const found: Packet[] = [...reader.push(new Uint8Array(stream.slice(0, cut)))].concat([...reader.push(new Uint8Array(stream.slice(cut)))]);
    assert.deepEqual(found.map(({ kind }) => kind), [kinds.connectAnswer, kinds.subscribeAnswer, kinds.publish, kinds.publish, kinds.publish, kinds.pulse]);
    assert.equal(shortAt(found[1]!.body, 0), 7);
    for (const message of found.slice(2, 4)) assert.deepEqual(told(message), ['a/b', '{}']);
    assert.equal(publishedIn(found[4]!)?.payload.length, 318);
  }
});

test('what is no MQTT is refused, and a message cut short means nothing', () => {
  assert.throws(() => [...new PacketReader().push(new Uint8Array([0x30, 255, 255, 255, 255, 1]))], RangeError);   // 2.2.3: four bytes at most
  assert.equal(publishedIn({ kind: 3, flags: 0, body: new Uint8Array([0, 9, 0x61]) }), null);
});

function told(packet: Packet): readonly string[] {
  const message = publishedIn(packet)!;
  return [message.topic, new TextDecoder().decode(message.payload)];
}
