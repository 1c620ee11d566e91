// The bay screen: puts what is known on the page, at most once a frame.

import { askStation } from './ask-station';
import { apply, nothingKnown, stageOf, type BayState, type Message } from './bay-state';
import { onPlace, showPlace } from './bay-place';
import { agoWords, contactWords, nextWords, viewOf, type BayView } from './bay-view';
import { Contact } from './contact';
import { dialPicture } from './dial';
import { limitScale } from './limit-scale';
import { momentBetween, spoken } from './moments';
import { list, part, put, set } from './page-parts';
import { listenToPedal } from './pedal';
import { stayAwake } from './stay-awake';
import { Switch } from './switches';
import { allowTones, sound } from './tones';
import { Trace } from './trace';
import { gapSeconds, TraceMemory } from './trace-memory';
import { traceWindow } from './trace-window';
import { turnMarks } from './turn-marks';
import { digits } from './units';
import { hasVoice, say } from './voice';
import type { Bay } from './wire';

const screen = part('bay');
const memory = new TraceMemory();
let state: BayState = nothingKnown;
let trace: Trace | null = null;
let dirty = false;
let newestCameAt = 0;
let shown: BayView = viewOf(nothingKnown);

const tones = new Switch(part('bay-tones') as HTMLButtonElement, () => {
  allowTones();
  sound('enough');
});
const voice = new Switch(part('bay-voice') as HTMLButtonElement, () => say('I will say what I find.'));

const contact = new Contact({
  message: take,
  readings: (gauge, batch) => {
    if (gauge !== state.bay?.gauge) return;
    memory.push(batch.t, batch.mm, batch.t0);
    newestCameAt = performance.now();
    redraw();
  },
  changed: redraw,
});

function take(message: Message): void {
  const gaugeBefore = state.bay?.gauge;
  state = apply(state, message);
  if (message.kind === 'snapshot') {
    if (gaugeBefore !== state.bay?.gauge) memory.clear();
    const before = memory.newest;
    memory.push(message.bay.trace?.t ?? [], message.bay.trace?.mm ?? []);
    if (memory.newest !== before) newestCameAt = performance.now();
  }
  if (state.stale || message.kind === 'result') contact.ask();
  redraw();
}

function redraw(): void {
  if (dirty) return;
  dirty = true;
  requestAnimationFrame(() => {
    dirty = false;
    show();
  });
}

function show(): void {
  const view = viewOf(state);
  const silentFor = performance.now() - contact.heardAt;
  const lost = contactWords(silentFor, contact.patienceMs);

  tell(view);
  set(screen, 'stage', view.stage);
  set(screen, 'contact', lost ? 'lost' : 'live');
  set(screen, 'verdict', view.verdict?.kind ?? '');
  set(screen, 'gauge', view.gauge === null ? 'none' : view.gauge.trouble ? 'trouble' : 'well');
  set(screen, 'figure', view.value ? 'yes' : 'no');
  put('bay-contact', lost ? `${lost}. What stands here is that old.` : '');
  put('bay-point', view.point);
  put('bay-about', view.about);
  put('bay-phase', view.phase);
  put('bay-tir', view.value);
  put('bay-unit', view.value ? view.unit : '');
  put('bay-tir-label', view.value ? view.valueLabel : '');
  put('bay-tir-u', view.uncertainty);
  put('bay-turns', view.counted);
  put('bay-speed', view.speed);
  put('bay-sampling', view.sampling);
  put('bay-sentence', view.sentence);
  showStop(view);
  showStep(view);
  put('bay-setup', view.setup);
  showPlace(state.bay, view.stage === 'waiting' || view.stage === 'result');
  list('bay-heed', view.heed);
  set(screen, 'marks', view.takesMarks ? 'yes' : 'no');
  put('bay-verdict', view.verdict?.word ?? '');
  put('bay-limit', view.limit);
  put('bay-recorded', view.recordedAt ? `Measured ${agoWords(Date.now() + contact.aheadMs - Date.parse(view.recordedAt))}` : '');
  list('bay-warnings', view.warnings);
  list('bay-cautions', view.cautions);
  list('bay-gauges', view.gauges);
  showPlaces(view);
  showDial(view);
  showGauge(view);
  showRule(view);
  showScale();
  for (const link of document.querySelectorAll<HTMLAnchorElement>('[data-to-job]')) link.href = view.jobAddress;
  drawTrace();
}

/** Tells what has just happened to whoever does not look. */
function tell(view: BayView): void {
  const moment = momentBetween(shown, view);
  shown = view;
  if (moment === null) return;
  if (tones.isOn) sound(moment);
  if (voice.isOn) say(spoken(moment, view));
}

function showDial({ dial }: BayView): void {
  const host = part('bay-dial');
  set(screen, 'dial', dial === null ? 'no' : 'yes');
  put('bay-dial-words', dial?.sentence ?? '');
  const key = dial === null ? '' : `${dial.degrees} ${dial.u95}`;
  if (host.dataset['key'] === key) return;
  host.dataset['key'] = key;
  host.innerHTML = dial === null ? '' : dialPicture(dial);
}

function showPlaces({ places }: BayView): void {
  const host = part('bay-places');
  const key = JSON.stringify(places);
  if (host.dataset['key'] === key) return;
  host.dataset['key'] = key;
  host.hidden = places.length === 0;
  host.replaceChildren(...places.map(({ title, address, here }) => {
    const link = Object.assign(document.createElement('a'), { href: address, textContent: title });
    if (here) link.setAttribute('aria-current', 'page');
    return link;
  }));
}

function showStop({ stop }: BayView): void {
  part('bay-stop').hidden = stop === null;
  put('bay-tell', stop?.tell ?? '');
  if (stop) part('bay-decide').setAttribute('href', stop.address);
}

function showStep({ next, back }: BayView): void {
  put('bay-next', next ? nextWords(next.title, Date.parse(next.at) - Date.now() - contact.aheadMs) : '');
  part('bay-back').hidden = back === '';
  put('bay-back', back);
}

function showGauge({ gauge, stage }: BayView): void {
  put('bay-gauge-title', gauge?.title ?? '');
  put('bay-gauge-detail', gauge?.trouble && stage === 'result' ? gauge.detail : '');
  put('bay-unreadable', gauge?.unreadable ?? '');
  const now = memory.newestMm;
  put('bay-reading', gauge && !gauge.trouble && Number.isFinite(now) ? digits(now, state.bay?.unit ?? 'in') : '');
}

function showRule({ wanted, fraction }: BayView): void {
  const rule = part('bay-rule');
  rule.style.setProperty('--fraction', String(fraction));
  if (rule.dataset['turns'] === String(wanted)) return;
  rule.dataset['turns'] = String(wanted);
  rule.style.setProperty('--turns', String(Math.max(1, wanted)));
  part('bay-rule-numbers').replaceChildren(
    ...Array.from({ length: wanted }, (_, i) => Object.assign(document.createElement('span'), { textContent: String(i + 1) })),
  );
}

function showScale(): void {
  const stage = stageOf(state);
  const measured = stage === 'result' ? state.result : stage === 'running' ? state.progress : null;
  const limit = (stage === 'result' ? state.result?.limit : null) ?? state.bay?.limit ?? null;
  const scale = limitScale(measured?.value_mm ?? null, measured?.value_u95_mm ?? null, limit);
  const host = part('bay-scale');
  host.hidden = scale === null;
  if (scale === null) return;
  for (const name of ['value', 'from', 'to'] as const) host.style.setProperty(`--${name}`, String(scale[name]));
  set(host, 'lower', scale.lower === null ? 'no' : 'yes');
  set(host, 'upper', scale.upper === null ? 'no' : 'yes');
  host.style.setProperty('--upper', String(scale.upper ?? 1));
  host.style.setProperty('--lower', String(scale.lower ?? 0));
}

function drawTrace(): void {
  const stage = stageOf(state);
  if (stage === 'unknown' || stage === 'idle' || stage === 'cautions') return;
  trace ??= new Trace(part('bay-trace'));
  trace.draw(memory, traceWindow(state, stage, gaugeClock()), state.bay?.takes_marks === false ? [] : turnMarks(state.turnsAt), state.bay?.unit ?? 'in');
}

/** The gauge's clock now: where readings stop coming, the trace moves on without them. */
function gaugeClock(): number {
  const since = (performance.now() - newestCameAt) / 1000;
  return memory.newest + (since > gapSeconds ? since : 0);
}

async function press(button: HTMLButtonElement): Promise<void> {
  const { method, address } = button.dataset;
  const measure = address === '/api/v1/bay/point' && method === 'POST';
  const body = measure ? { job: state.bay?.job, point: state.bay?.point, gauge: state.bay?.gauge, cautions_read: true } : undefined;
  button.disabled = true;
  const of = measure ? '' : `?gauge=${encodeURIComponent(state.bay?.gauge ?? '')}`;
  const answer = await askStation<Bay | null>(method === 'DELETE' ? 'DELETE' : 'POST', (address ?? '') + of, body);
  button.disabled = false;
  put('bay-answer', answer.ok ? '' : answer.sentence);
  contact.askAnew();
}

for (const button of document.querySelectorAll<HTMLButtonElement>('button[data-address]')) {
  button.addEventListener('click', () => void press(button));
}
onPlace(() => contact.askAnew());
setInterval(redraw, 500);
part('bay-voice').hidden = !hasVoice;
document.addEventListener('pointerdown', () => tones.isOn && allowTones());
listenToPedal();
stayAwake();
contact.start();
show();
