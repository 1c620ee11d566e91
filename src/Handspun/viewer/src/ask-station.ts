// Requests that change something at the station, and the sentence it gives when it declines.

export type Answer<T> = { readonly ok: true; readonly body: T } | { readonly ok: false; readonly sentence: string };

export async function askStation<T>(method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE', address: string, body?: unknown): Promise<Answer<T>> {
  try {
    const answer = await fetch(address, {
      method,
      headers: { 'content-type': 'application/json', accept: 'application/json' },
      body: body === undefined ? null : JSON.stringify(body),
    });
    const text = await answer.text();
    const told: unknown = text === '' ? null : JSON.parse(text);
    return answer.ok ? { ok: true, body: told as T } : { ok: false, sentence: sentenceOf(told, answer.status) };
  } catch {
    return { ok: false, sentence: 'The station did not answer. Check that it runs and that this screen is on its network, then try again.' };
  }
}

function sentenceOf(problem: unknown, status: number): string {
  if (typeof problem === 'object' && problem !== null) {
    const { detail, title } = problem as { detail?: unknown; title?: unknown };
    if (typeof detail === 'string' && detail !== '') return detail;
    if (typeof title === 'string' && title !== '') return title;
  }
  return `The station declined (${status}).`;
}
