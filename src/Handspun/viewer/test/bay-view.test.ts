import assert from 'node:assert/strict';
import { test } from 'node:test';
import { apply, nothingKnown, type Message } from '../src/bay-state';
import { agoWords, contactWords, nextWords, viewOf } from '../src/bay-view';
import { problemOf } from '../src/file-size';
import { bay, gauge, result, turning } from './sample';

const view = (...messages: Message[]) => viewOf(messages.reduce(apply, nothingKnown));

test('names that are written from right to left keep their places in the line', () => {
  const { about } = view({ kind: 'snapshot', bay: { ...bay, bike: '2009 \u05d0\u05dc\u05d3\u05e8 1200', job_title: '\u0637\u0631\u0642 <b>' } });
  assert.equal(about, 'Job 1042 · \u20682009 \u05d0\u05dc\u05d3\u05e8 1200\u2069 · \u2068\u0637\u0631\u0642 <b>\u2069');
});

test('several points in the bay each have an address, one only has none', () => {
  assert.deepEqual(view({ kind: 'snapshot', bay }).places, []);
  const beside = { gauge: 'left end', job: '1042', point: 'drive-side-runout', point_title: 'Drive-side shaft runout' };
  const { places } = view({ kind: 'snapshot', bay: { ...bay, at_work: [...bay.at_work, beside] } });
  assert.deepEqual(places.map(({ title, here }) => [title, here]), [['Pinion shaft runout', true], ['Drive-side shaft runout', false]]);
  assert.equal(places[1]?.address, '/bay?gauge=left%20end');
  assert.equal(view({ kind: 'snapshot', bay: { ...bay, at_work: [...bay.at_work, { ...beside, job: '1043' }] } }).places[1]?.title, 'Drive-side shaft runout, job 1043');
});

test('a waiting bay says what is measured and what it waits for', () => {
  const shown = view({ kind: 'snapshot', bay });
  assert.equal(shown.phase, 'Waiting for the shaft to turn');
  assert.equal(shown.point, 'Pinion shaft runout');
  assert.equal(shown.about, 'Job 1042 · 2009 Aldermoor Corvid 1200 · Whine from the cam chest');
  assert.equal(shown.value, '');
  assert.equal(shown.counted, '0 of 3 turns');
  assert.equal(shown.limit, 'Limit: at most 0.0050 in, not confirmed');
});

test('the step to the next point is told after a result, and can be taken back', () => {
  const next = { point: 'cam-end-play', point_title: 'Cam end play', at: '2026-03-14T09:00:08+00:00' };
  const measured = view({ kind: 'snapshot', bay: { ...bay, result, next } });
  assert.equal(measured.next?.title, 'Cam end play');
  assert.equal(measured.back, 'Stay at this point');
  assert.equal(view({ kind: 'snapshot', bay: { ...bay, before: 'Pinion shaft runout' } }).back, 'Back to Pinion shaft runout');
  assert.equal(view({ kind: 'snapshot', bay }).back, '');
  assert.equal(nextWords('Cam end play', 4200), 'Next: Cam end play, in 5 s. Any key: stay here.');
  assert.equal(nextWords('Cam end play', -300), 'Next: Cam end play, now. Any key: stay here.');
});

test('a gate stops the job where the verdict is not within, and says what to tell the customer', () => {
  const gate = { address: '/jobs/1042/steps/pinion-runout', if_over: 'It is outside the limit.', if_undecided: 'We cannot say yes or no.' };
  const stop = (verdict: 'within' | 'over' | 'undecided' | null) => view({ kind: 'snapshot', bay: { ...bay, gate, result: { ...result, verdict } } }).stop;
  assert.equal(stop('within'), null);
  assert.equal(stop(null), null);
  assert.deepEqual(stop('over'), { tell: gate.if_over, address: gate.address });
  assert.deepEqual(stop('undecided'), { tell: gate.if_undecided, address: gate.address });
  assert.equal(view({ kind: 'snapshot', bay: { ...bay, result: { ...result, verdict: 'over' } } }).stop, null);
});

test('photos that are too large are told before they are sent', () => {
  const mega = 1024 * 1024;
  assert.equal(problemOf([{ name: 'a.jpg', size: 25 * mega }], 25 * mega, 75 * mega), '');
  assert.match(problemOf([{ name: 'a.jpg', size: 200 * mega }], 25 * mega, 75 * mega), /a\.jpg has 200 MB, and 25 MB are the most/);
  assert.match(problemOf(Array.from({ length: 4 }, (_, i) => ({ name: `${i}.jpg`, size: 20 * mega })), 25 * mega, 75 * mega), /Together they have 80 MB/);
});

test('a waiting bay says what is wrong with its gauge', () => {
  const warnings = [{ code: 'gauge-never-checked', sentence: 'The gauge was never checked.' }];
  const shown = view({ kind: 'snapshot', bay }, { kind: 'progress', progress: { ...turning, phase: 'waiting', warnings } });
  assert.equal(shown.stage, 'waiting');
  assert.deepEqual(shown.warnings, ['The gauge was never checked.']);
});

test('a turning bay shows the runout so far, the turns and the speed', () => {
  const shown = view({ kind: 'snapshot', bay }, { kind: 'progress', progress: turning });
  assert.equal(shown.phase, 'Turning');
  assert.equal(shown.value, '0.0031');
  assert.equal(shown.uncertainty, '±\u00a00.0002\u00a0in');
  assert.equal(shown.counted, '1.2 of 3 turns');
  assert.equal(shown.speed, '25 turns a minute');
  assert.equal(shown.fraction, 1.2 / 3);
  assert.equal(shown.verdict, null);
});

test('a turning bay says how closely it reads and what could hide', () => {
  const shown = view({ kind: 'snapshot', bay }, { kind: 'progress', progress: turning });
  assert.equal(shown.sampling, '119 readings a turn; up to 0.0001\u00a0in could hide between two');
  assert.deepEqual(shown.warnings, []);
});

test('a shaft that turns too fast is warned about while it turns', () => {
  const warnings = [{ code: 'turning-too-fast', sentence: 'The shaft turns too fast.' }];
  const shown = view({ kind: 'snapshot', bay }, { kind: 'progress', progress: { ...turning, readings_per_turn: 7.6, hidden_peak_mm: null, warnings } });
  assert.equal(shown.sampling, '8 readings a turn');
  assert.deepEqual(shown.warnings, ['The shaft turns too fast.']);
});

test('what is not turned is counted in whole strokes, under its own name', () => {
  const words = { waiting: 'Waiting for the first push', running: 'Pushing and pulling', again: 'Once more', so_far: 'End play so far', counted: 'cycles' };
  const shown = view({ kind: 'snapshot', bay: { ...bay, kind: 'end-play', words } }, { kind: 'progress', progress: { ...turning, count: 2.7, turns_per_s: null } });
  assert.equal(shown.phase, 'Pushing and pulling');
  assert.equal(shown.valueLabel, 'End play so far');
  assert.equal(shown.counted, '2 of 3 cycles');
  assert.equal(shown.speed, '');
});

test('what is not turned takes no marks, says what to heed while it waits, and how far the strokes differ while it runs', () => {
  const pushed = { ...bay, kind: 'end-play', takes_marks: false, heed: ['Keep fingers out of the gears.'], setup: null };
  const waiting = view({ kind: 'snapshot', bay: pushed });
  assert.deepEqual([waiting.takesMarks, waiting.heed], [false, ['Keep fingers out of the gears.']]);
  const { readings_per_turn: _, hidden_peak_mm: __, ...running } = turning;
  const shown = view({ kind: 'snapshot', bay: pushed }, { kind: 'progress', progress: { ...running, spread_mm: 0.0021 } });
  assert.equal(shown.sampling, '0.0001\u00a0in from smallest to largest');
  assert.deepEqual(shown.heed, []);
});

test('a result brings its verdict, its sentence and its warnings', () => {
  const shown = view({ kind: 'snapshot', bay: { ...bay, result } });
  assert.equal(shown.phase, 'Turn again for a second record');
  assert.deepEqual(shown.verdict, { kind: 'within', word: 'Within the limit' });
  assert.equal(shown.sentence, result.sentence);
  assert.deepEqual(shown.warnings, ['Fewer turns than wanted were seen.']);
});

test('a spin without a result says what is missing and shows no number', () => {
  const missing = { ...result, status: 'incomplete' as const, value_mm: null, value_u95_mm: null, verdict: null, missing: 'The shaft stood still.' };
  const shown = view({ kind: 'snapshot', bay: { ...bay, result: missing } });
  assert.equal(shown.phase, 'Measure again');
  assert.equal(shown.sentence, 'The shaft stood still.');
  assert.equal(shown.value, '');
  assert.deepEqual(shown.verdict, { kind: 'none', word: 'No result' });
});

test('a gauge in trouble takes the headline and says what to do', () => {
  const lost = { ...gauge, state: 'lost' as const, sentence: 'Plug it in again.' };
  const shown = view({ kind: 'snapshot', bay }, { kind: 'gauge', gauge: lost });
  assert.equal(shown.phase, 'Gauge lost');
  assert.equal(shown.sentence, 'Plug it in again.');
});

test('lines that could not be read are told by their rate, and only when there are any', () => {
  const noisy = view({ kind: 'snapshot', bay }, { kind: 'gauge', gauge: { ...gauge, unreadable_per_s: 3.21 } });
  assert.equal(noisy.gauge?.unreadable, '3.2 unreadable lines a second');
  assert.equal(view({ kind: 'snapshot', bay }).gauge?.unreadable, '');
});

test('an idle bay lists its gauges', () => {
  const shown = view({ kind: 'snapshot', bay: { ...bay, phase: 'idle', job: null, point: null, progress: null } });
  assert.deepEqual(shown.gauges, ['The indicator sends readings.']);
});

test('a broken line is told by its age, a short pause is not', () => {
  assert.equal(contactWords(1900, 2000), '');
  assert.equal(contactWords(2100, 2000), 'No contact with the station for 2 s');
  assert.equal(contactWords(3400, 3500), '');
  assert.equal(contactWords(60_000, 3500), 'No contact with the station for 60 s');
  assert.equal(contactWords(240_000, 2000), 'No contact with the station for 4 min');
});

test('the age of a record is told in the unit that fits', () => {
  assert.equal(agoWords(-500), '0 s ago');
  assert.equal(agoWords(42_000), '42 s ago');
  assert.equal(agoWords(5 * 60_000), '5 min ago');
  assert.equal(agoWords(3 * 3_600_000), '3 h ago');
  assert.equal(agoWords(4 * 86_400_000), '4 days ago');
});
