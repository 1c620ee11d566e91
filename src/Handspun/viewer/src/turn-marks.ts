import type { TurnsAt } from './bay-state';

export interface TurnMark {
  readonly turn: number;
  readonly t: number;
}

/** The moments at which whole turns were completed, by straight lines between what was reported. */
export function turnMarks(turnsAt: readonly TurnsAt[]): TurnMark[] {
  const marks: TurnMark[] = [];
  for (let i = 1; i < turnsAt.length; i++) {
    const from = turnsAt[i - 1]!;
    const to = turnsAt[i]!;
    for (let turn = Math.floor(from.turns) + 1; turn <= to.turns; turn++) {
      marks.push({ turn, t: from.t + ((turn - from.turns) / (to.turns - from.turns)) * (to.t - from.t) });
    }
  }
  return marks;
}
