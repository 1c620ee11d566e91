// Messages as a station sends them, for the tests to vary.

import type { Bay, GaugeState, Progress, Result } from '../src/wire';

export const gauge: GaugeState = { gauge: 'dial', state: 'reading', sentence: 'The indicator sends readings.', unreadable_per_s: 0 };

export const progress: Progress = {
  capture: 'c7',
  job: '1042',
  point: 'pinion-runout',
  gauge: 'dial',
  phase: 'waiting',
  started: null,
  now: 12,
  readings: 0,
  count: 0,
  wanted: 3,
  value_mm: null,
  value_u95_mm: null,
  sentence: 'Turn the wheel by hand.',
  warnings: [],
};

export const turning: Progress = {
  ...progress,
  phase: 'running',
  started: 13,
  now: 15,
  count: 1.2,
  turns_per_s: 0.42,
  readings_per_turn: 119.4,
  hidden_peak_mm: 0.00003,
  readings: 90,
  value_mm: 0.0791,
  value_u95_mm: 0.0042,
  sentence: 'Keep turning: 1.2 of 3 turns.',
};

export const result: Result = {
  record: 'r1',
  job: '1042',
  point: 'pinion-runout',
  capture: 'c7',
  gauge: 'dial',
  at: '2026-11-25T10:00:00Z',
  status: 'ok',
  ended: 'enough',
  kind: 'runout',
  value_title: 'Total indicated runout',
  value_mm: 0.0791,
  value_u95_mm: 0.0042,
  turns: 3.1,
  verdict: 'within',
  limit: { lower_mm: null, upper_mm: 0.127, source: null, confirmed: false, confirmed_by: null },
  warnings: [{ code: 'few-turns', sentence: 'Fewer turns than wanted were seen.' }],
  missing: null,
  sentence: '0.0031 in ± 0.0002 in: within the limit of 0.0050 in.',
};

export const bay: Bay = {
  phase: 'waiting',
  unit: 'in',
  job: '1042',
  job_title: 'Whine from the cam chest',
  bike: '2009 Aldermoor Corvid 1200',
  point: 'pinion-runout',
  point_title: 'Pinion shaft runout',
  gauge: 'dial',
  capture: 'c7',
  wanted: 3,
  kind: 'runout',
  words: {
    waiting: 'Waiting for the shaft to turn',
    running: 'Turning',
    again: 'Turn again for a second record',
    so_far: 'Runout so far',
    counted: 'turns',
  },
  limit: result.limit,
  progress,
  trace: { t: [11, 12], mm: [-0.3, -0.3] },
  result: null,
  at_work: [{ gauge: 'dial', job: '1042', point: 'pinion-runout', point_title: 'Pinion shaft runout' }],
  gauges: [gauge],
  cautions: [],
  cautions_read: true,
};
